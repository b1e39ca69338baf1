'use client';
/** The monograms in the header, and behind them the sheet with everybody, invitations and how to invite. */
import { useState } from 'react';
import { AboutPerson } from '#app/_decency/about-somebody.tsx';
import { BoardPlace } from '#app/_decency/board-place.tsx';
import type { PersonHere } from '#app/_live/board-live-types.ts';
import { LookWithFaces } from '#app/_together/look-with-faces.tsx';
import { useTogether } from '#app/_together/together.tsx';
import { Button } from '#app/_ui/button.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import { words } from '#app/_words/en.ts';
import { decencyWords } from '#app/_words/en-decency.ts';
import type { BoardView, MemberView } from '#server/core/contract/responses.ts';
import { may } from '#server/core/permissions/may.ts';
import { ConsentPart } from './consent-part.tsx';
import { Face } from './face.tsx';
import { InvitePart } from './invite-part.tsx';
import { Members } from './members.tsx';
import { OpenInvites } from './open-invites.tsx';
import styles from './people.module.css';
import { mayInvite, wardsAmong } from './roles-on-board.ts';

/** Faces shown in the header; the sheet has everybody. */
const MOST_FACES = 5;

interface PeopleProps {
  board: BoardView;
  here: readonly PersonHere[];
  onChanged(): void;
}

/** Those who are here first. A host looking in is no member, but stands among the faces while here. */
function facesOf(board: BoardView, here: readonly PersonHere[]): { person: MemberView; here: boolean }[] {
  const members = board.members.map((person) => ({ person, here: here.some(({ id }) => id === person.id) }));
  const guests = here
    .filter(({ id }) => !board.members.some((member) => member.id === id))
    .map(({ id, name }) => ({ person: { id, name, role: 'host' as const }, here: true }));
  return [...members, ...guests].sort((one, two) => Number(two.here) - Number(one.here));
}

export function People({ board, here, onChanged }: PeopleProps) {
  const [open, setOpen] = useState(false);
  const [round, setRound] = useState(0);
  const invites = mayInvite(board.role);
  const { lookWith } = useTogether();
  const faces = facesOf(board, here).slice(0, MOST_FACES);
  return (
    <>
      <LookWithFaces
        people={faces.flatMap(({ person, here }) => (here && person.id !== board.me.id ? [person] : []))}
      />
      <button type="button" className={styles.faces} onClick={() => setOpen(true)} aria-haspopup="dialog">
        <span className="unseen">{words.people.title}</span>
        {faces
          .filter(({ person, here }) => !here || person.id === board.me.id)
          .map((face) => (
            <Face key={face.person.id} person={face.person} here={face.here} />
          ))}
      </button>
      {invites ? (
        <span className={styles.inviteWord}>
          <Button weight="quiet" onClick={() => setOpen(true)}>
            {words.people.invite}
          </Button>
        </span>
      ) : null}
      <Dialog open={open} onClose={() => setOpen(false)} title={words.people.title}>
        {board.group ? <p className={styles.quiet}>{words.people.fromGroup(board.group.name)}</p> : null}
        <Members
          at={{ boardId: board.id }}
          people={board.members}
          meId={board.me.id}
          role={board.role}
          here={here}
          onChanged={onChanged}
          more={(person) => <AboutPerson board={board} person={person} />}
          onLookWith={(person) => {
            setOpen(false);
            lookWith(person);
          }}
        />
        {board.alias ? <p className={styles.quiet}>{decencyWords.alias(board.alias)}</p> : null}
        <ConsentPart boardId={board.id} meId={board.me.id} />
        {invites ? (
          <>
            <InvitePart
              at={{ boardId: board.id }}
              wards={wardsAmong(board.members)}
              alone={board.school.noPublicLinks}
              onMade={() => setRound((before) => before + 1)}
            />
            <OpenInvites at={{ boardId: board.id }} round={round} />
          </>
        ) : null}
        <BoardPlace board={board} onChanged={onChanged} />
        {may(board.role, 'audit.see') ? (
          <p>
            <a href={`/house?board=${encodeURIComponent(board.id)}`}>{decencyWords.house.ofBoard}</a>
          </p>
        ) : null}
      </Dialog>
    </>
  );
}
