'use client';
/** Who belongs to a board or group, as what, who is here now; what whoever runs it can change. IO: HTTP. */
import { type ReactNode, useState } from 'react';
import { sentenceOf } from '#app/_api/client.ts';
import { type At, changeRole, removeMember } from '#app/_api/people.ts';
import type { PersonHere } from '#app/_live/board-live-types.ts';
import { Notice } from '#app/_ui/notice.tsx';
import type { MemberView } from '#server/core/contract/responses.ts';
import type { BoardRole, MemberRole } from '#server/core/contract/roles.ts';
import { may } from '#server/core/permissions/may.ts';
import { words } from '#words/shell.ts';
import { MemberRow } from './member-row.tsx';
import styles from './people.module.css';

interface MembersProps {
  at: At;
  people: readonly MemberView[];
  /** Who looks, and what they are there. */
  meId: string;
  role: BoardRole;
  here: readonly PersonHere[];
  onChanged(): void;
  /** Looking with somebody who is here; left out where there is nothing to look at. */
  onLookWith?(person: MemberView): void;
  /** What else can be done about somebody there. */
  more?(person: MemberView): ReactNode;
}

/** Owners and guardians are what they are by other means. */
const isListed = ({ role }: MemberView) => role !== 'owner' && role !== 'guardian';

function wordFor({ role }: MemberView, at: At): string {
  return role === 'owner' && 'groupId' in at ? words.people.groups.owner : words.people.role[role];
}

export function Members({ at, people, meId, role, here, onChanged, onLookWith, more }: MembersProps) {
  const [trouble, setTrouble] = useState<string | null>(null);
  const [end, change] =
    'boardId' in at
      ? (['member.end', 'member.role'] as const)
      : (['group.member.end', 'group.member.role'] as const);
  const trying = async (act: () => Promise<unknown>, then: () => void) => {
    setTrouble(null);
    try {
      await act();
      then();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
  };
  // Whoever left has nothing more to see here.
  const afterEnd = (own: boolean) => (own ? () => location.assign('/') : onChanged);
  return (
    <section className={styles.part}>
      <ul className={styles.list}>
        {people.map((person) => {
          const own = person.id === meId;
          const isHere = here.some(({ id }) => id === person.id);
          return (
            <MemberRow
              key={`${person.id} ${person.ward?.id ?? ''}`}
              person={person}
              roleWord={wordFor(person, at)}
              here={isHere}
              {...(onLookWith && isHere && !own ? { onLookWith: () => onLookWith(person) } : {})}
              own={own}
              mayEnd={person.role !== 'owner' && may(role, end, own ? 'own' : 'other')}
              mayChange={isListed(person) && !own && may(role, change)}
              mayLink={!own && may(role, 'return.link')}
              more={more?.(person)}
              onEnd={() => trying(() => removeMember(at, person.id), afterEnd(own))}
              onChange={(next: MemberRole) => trying(() => changeRole(at, person.id, next), onChanged)}
            />
          );
        })}
      </ul>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}
