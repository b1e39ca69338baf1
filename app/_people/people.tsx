'use client';
/** The monograms in the header, which open the sheet with everybody. In the flow: board header -> [people] -> people-sheet. */
import { useState } from 'react';
import type { PersonHere } from '#app/_live/board-live-types.ts';
import { LookWithFaces } from '#app/_together/look-with-faces.tsx';
import { Button } from '#app/_ui/button.tsx';
import { late, useEver } from '#app/_ui/late.tsx';
import type { BoardView, MemberView } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';
import { Face } from './face.tsx';
import styles from './people.module.css';
import { mayInvite } from './roles-on-board.ts';

const PeopleSheet = late(() => import('./people-sheet.tsx').then((module) => module.PeopleSheet));

/** Faces shown in the header; the sheet has everybody. */
const MOST_FACES = 5;

interface PeopleProps {
  board: BoardView;
  here: readonly PersonHere[];
  onChanged(): void;
}

/**
 * Oneself first, for one's own face leads to the sheet; then those who are here. A host looking in is no member, but
 * stands among the faces while here.
 */
function facesOf(board: BoardView, here: readonly PersonHere[]): { person: MemberView; here: boolean }[] {
  const members = board.members.map((person) => ({ person, here: here.some(({ id }) => id === person.id) }));
  const guests = here
    .filter(({ id }) => !board.members.some((member) => member.id === id))
    .map(({ id, name }) => ({ person: { id, name, role: 'host' as const }, here: true }));
  const rank = ({ person, here }: (typeof members)[number]) => (person.id === board.me.id ? 2 : Number(here));
  return [...members, ...guests].sort((one, two) => rank(two) - rank(one));
}

export function People({ board, here, onChanged }: PeopleProps) {
  const [open, setOpen] = useState<'people' | 'invite' | null>(null);
  const asked = useEver(open !== null);
  const invites = mayInvite(board.role);
  const all = facesOf(board, here);
  const faces = all.slice(0, MOST_FACES);
  return (
    <>
      <LookWithFaces
        people={faces.flatMap(({ person, here }) => (here && person.id !== board.me.id ? [person] : []))}
      />
      <button type="button" className={styles.faces} onClick={() => setOpen('people')} aria-haspopup="dialog">
        <span className="unseen">{words.people.title}</span>
        {faces
          .filter(({ person, here }) => !here || person.id === board.me.id)
          .map((face) => (
            <Face key={face.person.id} person={face.person} here={face.here} />
          ))}
        {all.length > MOST_FACES ? (
          <span className={styles.moreFaces}>{words.people.andMore(all.length - MOST_FACES)}</span>
        ) : null}
      </button>
      {invites ? (
        <span className={styles.inviteWord}>
          <Button weight="quiet" onClick={() => setOpen('invite')}>
            {words.people.invite}
          </Button>
        </span>
      ) : null}
      {asked ? (
        <PeopleSheet
          board={board}
          here={here}
          onChanged={onChanged}
          open={open !== null}
          inviting={open === 'invite'}
          onClose={() => setOpen(null)}
        />
      ) : null}
    </>
  );
}
