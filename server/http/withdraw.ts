/**
 * A picture goes for everybody: its row, its copies, its figures, what was written of it in the rooms, its files.
 *
 * In the flow: handlers, daily round -> [withdraw] -> store, rooms. IO: the database, the data folder, sockets.
 */

import type { DeletionReason } from '../core/contract/decency.ts';
import { readMarks } from '../core/live/marks.ts';
import { addDeletion } from '../store/audit.ts';
import { removeUnshared } from '../store/blob-sweep.ts';
import { removeBoard } from '../store/boards.ts';
import { readDocument } from '../store/live-documents.ts';
import { removePicture } from '../store/pictures.ts';
import { services } from './services.ts';

/** @returns How many remarks and drawings on it went with it. */
export async function withdrawPicture(boardId: string, pictureId: string): Promise<number> {
  const hashes = await removePicture(boardId, pictureId);
  const remarks = await services().pictureRemoved(boardId, pictureId);
  await removeUnshared(hashes);
  return remarks;
}

/** What is deleted of a board, and why. */
export interface Ending {
  board: { id: string; title: string; groupId: string | null };
  reason: DeletionReason;
  pictureIds: readonly string[];
  /** Whether the board itself goes. @param pictureIds are then all that it has. */
  whole: boolean;
}

/** Deletes pictures, or a whole board, and writes down that it did. */
export async function endPictures({ board, reason, pictureIds, whole }: Ending): Promise<void> {
  if (pictureIds.length === 0 && !whole) return;
  let remarks = 0;
  if (whole) {
    remarks = readMarks(await readDocument(board.id, 'marks')).length;
    await removeBoard(board.id);
    await services().boardRemoved(board.id);
  } else {
    for (const pictureId of pictureIds) remarks += await withdrawPicture(board.id, pictureId);
  }
  const { id: boardId, groupId, title: boardTitle } = board;
  await addDeletion({ boardId, groupId, boardTitle, reason, pictures: pictureIds.length, remarks, whole });
}
