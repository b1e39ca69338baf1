'use client';
/** Who belongs to the board, as what, who is here now; what whoever runs it can change. IO: HTTP. */
import { useState } from 'react';
import { removeMember, sentenceOf } from '#app/_api/client.ts';
import { changeRole } from '#app/_api/people.ts';
import type { PersonHere } from '#app/_live/board-live-types.ts';
import { Notice } from '#app/_ui/notice.tsx';
import type { BoardView, MemberView } from '#server/core/contract/responses.ts';
import type { MemberRole } from '#server/core/contract/roles.ts';
import { may } from '#server/core/permissions/may.ts';
import { MemberRow } from './member-row.tsx';
import styles from './people.module.css';

interface MembersProps {
  board: BoardView;
  here: readonly PersonHere[];
  onChanged(): void;
}

/** Owners and guardians are what they are by other means. */
const isListed = ({ role }: MemberView) => role !== 'owner' && role !== 'guardian';

export function Members({ board, here, onChanged }: MembersProps) {
  const [trouble, setTrouble] = useState<string | null>(null);
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
  const end = (person: MemberView, own: boolean) =>
    trying(() => removeMember(board.id, person.id), own ? () => location.assign('/') : onChanged);
  const change = (person: MemberView, role: MemberRole) =>
    trying(() => changeRole(board.id, person.id, role), onChanged);
  return (
    <section className={styles.part}>
      <ul className={styles.list}>
        {board.members.map((person) => {
          const own = person.id === board.me.id;
          return (
            <MemberRow
              key={`${person.id} ${person.ward?.id ?? ''}`}
              person={person}
              here={here.some(({ id }) => id === person.id)}
              own={own}
              mayEnd={person.role !== 'owner' && may(board.role, 'member.end', own ? 'own' : 'other')}
              mayChange={isListed(person) && !own && may(board.role, 'member.role')}
              mayLink={!own && may(board.role, 'return.link')}
              onEnd={() => end(person, own)}
              onChange={(role) => change(person, role)}
            />
          );
        })}
      </ul>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}
