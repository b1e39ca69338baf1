/**
 * Somebody deletes themselves: their pictures, their words in every room, their rows, and what lay of it in files.
 *
 * In the flow: account handler -> [leave-for-good] -> store, rooms. The order lets it be begun again where it broke off:
 * the person goes last. IO: the database, the data folder, sockets.
 */
import type { LeavingView } from '../core/contract/outward.ts';
import { readMarks } from '../core/live/marks.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { endOtherSessions } from '../store/accounts.ts';
import { allBoardIds } from '../store/boards.ts';
import { readDocument } from '../store/live-documents.ts';
import { heldBy, ownPictures, removePerson } from '../store/own-rows.ts';
import { purgeDeleted } from '../store/purge.ts';
import { services } from './services.ts';
import { withdrawPicture } from './withdraw.ts';

/** What would go, and what stands in the way. */
export async function leavingOf(person: { personId: string; name: string }): Promise<LeavingView> {
  const { boards, groups } = await heldBy(person.personId);
  const pictures = (await ownPictures(person.personId)).length;
  let remarks = 0;
  for (const boardId of await allBoardIds()) {
    const marks = readMarks(await readDocument(boardId, 'marks'));
    remarks += marks.filter(({ author }) => author === person.personId).length;
  }
  return { name: person.name, boards, groups, pictures, remarks };
}

/**
 * Deletes the person. Nothing of their words or pictures is left in a row, a file or a live history afterwards.
 *
 * @throws Problem 'account-held' while they own boards or groups: those are handed on or deleted first.
 */
export async function leaveForGood(personId: string): Promise<void> {
  const { boards, groups } = await heldBy(personId);
  const held = [
    ...boards.map(({ title }) => say`the board “${title}”`),
    ...groups.map(({ name }) => say`the group “${name}”`),
  ];
  if (held.length > 0) throw stillHeld(held);
  // Nobody writes in their name while their words are being looked for.
  await services().sessionsEnded(await endOtherSessions(personId, null));
  for (const { id, boardId } of await ownPictures(personId)) await withdrawPicture(boardId, id);
  const boardIds = await allBoardIds();
  for (const boardId of boardIds) await services().personForgotten(boardId, personId);
  await removePerson(personId);
  for (const boardId of boardIds) services().boardChanged(boardId);
  await purgeDeleted();
}

function stillHeld(held: readonly string[]): Problem {
  const named =
    held.length > 3 ? say`${held.slice(0, 3).join(', ')} and ${held.length - 3} more` : held.join(', ');
  return new Problem(
    'account-held',
    say`You still own ${named}. Hand on or delete what you own first: others may have pictures and words there. Nothing was deleted.`,
  );
}
