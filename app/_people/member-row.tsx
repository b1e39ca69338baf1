'use client';
/** One person of a board or group: who they are, as what, and what those who run it can do about that. */
import { type ReactNode, useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import type { MemberView } from '#server/core/contract/responses.ts';
import { MEMBER_ROLES, MemberRole } from '#server/core/contract/roles.ts';
import { words } from '#words/shell.ts';
import { togetherWords } from '#words/together.ts';
import { Face } from './face.tsx';
import styles from './people.module.css';
import { ReturnLinkPart } from './return-link-part.tsx';

interface MemberRowProps {
  person: MemberView;
  /** What they are there, in words. */
  roleWord: string;
  here: boolean;
  own: boolean;
  /** Whether the one who looks may end this person's access, change what they are, make a link to come back. */
  mayEnd: boolean;
  mayChange: boolean;
  mayLink: boolean;
  more?: ReactNode;
  onEnd(): void;
  onChange(role: MemberRole): void;
  /** Left out where one cannot look with them now. */
  onLookWith?(): void;
}

export function MemberRow({
  person,
  roleWord,
  here,
  own,
  mayEnd,
  mayChange,
  mayLink,
  more,
  onEnd,
  onChange,
  onLookWith,
}: MemberRowProps) {
  return (
    <li className={styles.member}>
      <div className={styles.person}>
        <Face person={person} here={here} />
        <span>
          {person.name}
          <small>
            {mayChange ? '' : `, ${roleWord}`}
            {person.ward ? ` ${words.people.guardianOf(person.ward.name)}` : ''}
            {own ? `, ${words.people.you}` : ''}
          </small>
        </span>
        {mayChange ? <RoleChoice person={person} onChange={onChange} /> : null}
      </div>
      {mayEnd || mayLink || onLookWith || more ? (
        <div className={styles.memberActs}>
          {onLookWith ? (
            <Button weight="word" onClick={onLookWith}>
              {togetherWords.lookWith(person.name)}
            </Button>
          ) : null}
          {mayEnd ? <EndAccess own={own} name={person.name} onEnd={onEnd} /> : null}
          {mayLink ? <ReturnLinkPart person={person} /> : null}
          {more}
        </div>
      ) : null}
    </li>
  );
}

/** What somebody is, to be changed in place. */
function RoleChoice({ person, onChange }: { person: MemberView; onChange(role: MemberRole): void }) {
  return (
    <select
      className={styles.roleChoice}
      aria-label={words.people.whatIs(person.name)}
      value={person.role}
      onChange={(event) => onChange(MemberRole.parse(event.target.value))}
    >
      {MEMBER_ROLES.map((role) => (
        <option key={role} value={role}>
          {words.people.role[role]}
        </option>
      ))}
    </select>
  );
}

interface EndAccessProps {
  own: boolean;
  name: string;
  onEnd(): void;
}

/** Asked twice, in place: a slip of the finger must not throw anybody out. */
function EndAccess({ own, name, onEnd }: EndAccessProps) {
  const [asked, setAsked] = useState(false);
  const short = own ? words.people.leave : words.people.sendAway;
  if (!asked) {
    return (
      <Button
        weight="word"
        onClick={() => setAsked(true)}
        aria-label={own ? short : words.people.sendAwaySure(name)}
      >
        {short}
      </Button>
    );
  }
  const end = () => {
    setAsked(false);
    onEnd();
  };
  return (
    <span className={styles.acts}>
      {own ? words.people.leaveSure : null}
      <Button weight="main" onClick={end}>
        {short}
      </Button>
      <Button weight="word" onClick={() => setAsked(false)}>
        {words.cancel}
      </Button>
    </span>
  );
}
