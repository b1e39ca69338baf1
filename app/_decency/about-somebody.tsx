'use client';
/** What one can do about somebody else's remark, or about somebody: report, block. In the flow: talk, people -> [this]. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { BoardView, PersonView } from '#server/core/contract/responses.ts';
import { may } from '#server/core/permissions/may.ts';
import { BlockAct } from './block-act.tsx';
import styles from './decency.module.css';
import { ReportAct } from './report-act.tsx';

/** Whoever runs the board or teaches on it cannot be blocked; the server says so too. */
function mayBlock({ role, me, members, owner, blocked }: BoardView, personId: string): boolean {
  const leads = members.some(
    (each) => each.id === personId && (each.role === 'teacher' || each.role === 'owner'),
  );
  if (!may(role, 'block.make') || leads || owner.id === personId || me.id === personId) return false;
  return !blocked.includes(personId);
}

/** For a row in the list of people. */
export function AboutPerson({ board, person }: { board: BoardView; person: PersonView }) {
  if (person.id === board.me.id) return null;
  return (
    <>
      <ReportAct boardId={board.id} about="person" id={person.id} name={person.name} />
      {mayBlock(board, person.id) ? <BlockAct boardId={board.id} person={person} /> : null}
    </>
  );
}

/** For a remark or an answer. */
export function AboutRemark({ mark }: { mark: { id: string; author: string; authorName: string } }) {
  const { board } = useBoardLive();
  if (mark.author === board.me.id) return null;
  const person = { id: mark.author, name: mark.authorName };
  return (
    <span className={styles.small}>
      <ReportAct boardId={board.id} about="remark" id={mark.id} name={mark.authorName} />
      {mayBlock(board, mark.author) ? <BlockAct boardId={board.id} person={person} /> : null}
    </span>
  );
}
