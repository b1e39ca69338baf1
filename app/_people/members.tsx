'use client';
/** Who belongs to the board, as what, who is here now; whoever runs the board can end somebody's access. */
import { useState } from 'react';
import { removeMember, sentenceOf } from '#app/_api/client.ts';
import type { PersonHere } from '#app/_live/board-live-types.ts';
import { Button } from '#app/_ui/button.tsx';
import { Monogram } from '#app/_ui/monogram.tsx';
import { Notice } from '#app/_ui/notice.tsx';
import { words } from '#app/_words/en.ts';
import type { BoardView, MemberView } from '#server/core/contract/responses.ts';
import styles from './people.module.css';
import { runsBoard } from './roles-on-board.ts';

interface MembersProps {
  board: BoardView;
  here: readonly PersonHere[];
  onChanged(): void;
}

export function Members({ board, here, onChanged }: MembersProps) {
  const [asked, setAsked] = useState<string | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const end = async (person: MemberView) => {
    try {
      await removeMember(board.id, person.id);
      // Whoever left has nothing more to see here.
      if (person.id === board.me.id) location.assign('/');
      else onChanged();
    } catch (thrown) {
      setTrouble(sentenceOf(thrown));
    }
    setAsked(null);
  };
  const may = (person: MemberView) =>
    person.role !== 'owner' && (runsBoard(board.role) || person.id === board.me.id);
  return (
    <section className={styles.part}>
      <ul className={styles.list}>
        {board.members.map((person) => (
          <li key={`${person.id} ${person.ward?.id ?? ''}`} className={styles.person}>
            <Face person={person} here={here.some(({ id }) => id === person.id)} />
            <span>
              {person.name},{' '}
              <small>
                {words.people.role[person.role]}
                {person.ward ? ` ${words.people.guardianOf(person.ward.name)}` : ''}
                {person.id === board.me.id ? `, ${words.people.you}` : ''}
              </small>
            </span>
            {may(person) ? (
              <EndAccess
                own={person.id === board.me.id}
                name={person.name}
                asked={asked === person.id}
                onAsk={(ask) => setAsked(ask ? person.id : null)}
                onEnd={() => end(person)}
              />
            ) : null}
          </li>
        ))}
      </ul>
      {trouble ? <Notice trouble sentence={trouble} /> : null}
    </section>
  );
}

interface EndAccessProps {
  own: boolean;
  name: string;
  asked: boolean;
  onAsk(ask: boolean): void;
  onEnd(): void;
}

/** Asked twice, in place: a slip of the finger must not throw anybody out. */
function EndAccess({ own, name, asked, onAsk, onEnd }: EndAccessProps) {
  const short = own ? words.people.leave : words.people.sendAway;
  if (!asked) {
    return (
      <Button
        weight="word"
        onClick={() => onAsk(true)}
        aria-label={own ? short : words.people.sendAwaySure(name)}
      >
        {short}
      </Button>
    );
  }
  return (
    <span className={styles.acts}>
      {own ? words.people.leaveSure : null}
      <Button weight="main" onClick={onEnd}>
        {short}
      </Button>
      <Button weight="word" onClick={() => onAsk(false)}>
        {words.cancel}
      </Button>
    </span>
  );
}

export function Face({ person, here }: { person: MemberView; here: boolean }) {
  const role = words.people.role[person.role];
  return (
    <Monogram
      name={person.name}
      guide={person.role === 'teacher' || person.role === 'host'}
      away={!here}
      title={here ? words.people.here(person.name, role) : words.people.away(person.name, role)}
    />
  );
}
