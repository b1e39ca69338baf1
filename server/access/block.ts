/**
 * Blocking: who neither sees the other on a board.
 *
 * It holds both ways, and nobody is told which way it was made. Those who run a board or teach on it are left out: a
 * class needs them, and what they do can be reported. In the flow: handlers, rooms -> [block] -> store. IO: the database.
 */
import type { BoardRole } from '../core/contract/roles.ts';
import { readMarks } from '../core/live/marks.ts';
import { may } from '../core/permissions/may.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { addBlock, blockedEitherWay } from '../store/blocks.ts';
import { leadersOn } from '../store/leaders.ts';
import { readDocument } from '../store/live-documents.ts';
import { findPerson } from '../store/people.ts';
import { roleNow } from './roles.ts';
import { knownNames, namingFor } from './school.ts';
import type { Visitor } from './session.ts';

const NOBODY: ReadonlySet<string> = new Set();

/** Whom the person does not see on a board, and who do not see them. */
export async function unseenOn(
  boardId: string,
  personId: string,
  role: BoardRole,
): Promise<ReadonlySet<string>> {
  if (!may(role, 'block.make')) return NOBODY;
  const blocked = await blockedEitherWay(personId);
  if (blocked.length === 0) return NOBODY;
  const leaders = await leadersOn(boardId);
  return new Set(blocked.filter((id) => !leaders.has(id)));
}

/**
 * @throws Problem 'not-allowed' for whoever runs the board or teaches on it, 'bad-request' for oneself,
 *   'person-not-found' for who is not on the board.
 */
export async function blockOnBoard(
  boardId: string,
  { personId }: Visitor,
  role: BoardRole,
  otherId: string,
): Promise<void> {
  if (otherId === personId) {
    throw new Problem('bad-request', say`That is yourself. Choose somebody else to block.`);
  }
  const person = await findPerson(otherId);
  if (!person || !(await isOrWas(boardId, otherId))) {
    throw new Problem('person-not-found', say`That person is not on this board. Load the board again.`);
  }
  if ((await leadersOn(boardId)).has(otherId)) {
    throw new Problem(
      'not-allowed',
      say`Whoever runs this board or teaches on it cannot be blocked here: the class needs them. If something they did is not right, report it; it goes to the others who run the board and to the host, not to them.`,
    );
  }
  const naming = await namingFor(await knownNames({ boardId }, personId, role), [person]);
  await addBlock(personId, otherId, naming(person).name);
}

/** Somebody who left may still be blocked for the remarks they left behind. */
async function isOrWas(boardId: string, personId: string): Promise<boolean> {
  if ((await roleNow(personId, boardId)) !== null) return true;
  return readMarks(await readDocument(boardId, 'marks')).some(({ author }) => author === personId);
}
