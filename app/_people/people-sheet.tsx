'use client';
/**
 * The sheet with everybody on the board: members, what their pictures may be used for, invitations, the board's place.
 *
 * In the flow: people, loaded late -> [people-sheet]. IO: HTTP through its parts.
 */
import { useState } from 'react';
import { AboutPerson } from '#app/_decency/about-somebody.tsx';
import { BoardPlace } from '#app/_decency/board-place.tsx';
import type { PersonHere } from '#app/_live/board-live-types.ts';
import { useTogether } from '#app/_together/together.tsx';
import { Dialog } from '#app/_ui/dialog.tsx';
import type { BoardView } from '#server/core/contract/responses.ts';
import { may } from '#server/core/permissions/may.ts';
import { decencyWords } from '#words/decency.ts';
import { words } from '#words/shell.ts';
import { ConsentPart } from './consent-part.tsx';
import { InvitePart } from './invite-part.tsx';
import { Members } from './members.tsx';
import { OpenInvites } from './open-invites.tsx';
import styles from './people.module.css';
import { mayInvite, wardsAmong } from './roles-on-board.ts';

interface PeopleSheetProps {
  board: BoardView;
  here: readonly PersonHere[];
  onChanged(): void;
  open: boolean;
  /** Whether it was opened to invite: the link then stands first. */
  inviting: boolean;
  onClose(): void;
}

export function PeopleSheet({ board, here, onChanged, open, inviting, onClose }: PeopleSheetProps) {
  const [round, setRound] = useState(0);
  const invites = mayInvite(board.role);
  const { lookWith } = useTogether();
  const inviteParts = invites ? (
    <>
      <InvitePart
        at={{ boardId: board.id }}
        wards={wardsAmong(board.members)}
        alone={board.school.noPublicLinks}
        onMade={() => setRound((before) => before + 1)}
      />
      <OpenInvites at={{ boardId: board.id }} round={round} />
    </>
  ) : null;
  return (
    <Dialog open={open} onClose={onClose} title={inviting ? words.people.invite : words.people.title}>
      {inviting ? inviteParts : null}
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
          onClose();
          lookWith(person);
        }}
      />
      {board.alias ? <p className={styles.quiet}>{decencyWords.alias(board.alias)}</p> : null}
      {inviting ? null : inviteParts}
      <ConsentPart boardId={board.id} meId={board.me.id} />
      <BoardPlace board={board} onChanged={onChanged} />
      {may(board.role, 'audit.see') ? (
        <p>
          <a href={`/house?board=${encodeURIComponent(board.id)}`}>{decencyWords.house.ofBoard}</a>
        </p>
      ) : null}
    </Dialog>
  );
}
