/**
 * At every contact with the server: what this browser keeps of others, or of boards that are no longer open to its
 * person, is cleared.
 *
 * In the flow: page loaded, or line back -> [contact] -> room-copies, drafts. IO: HTTP, the browser's storage.
 */
import { call, Refused } from '#app/_api/client.ts';
import { forgetDrafts } from './drafts.ts';
import { dropCopies, keptCopies } from './room-copies.ts';

const PERSON_KEY = 'veilstep-person';

/** @param personId Who is signed in here, or null: then nothing is kept for anybody. */
export function cameAs(personId: string | null): void {
  dropCopies((place) => place.personId !== personId);
  if (personId === null) return;
  try {
    const before = localStorage.getItem(PERSON_KEY);
    // Unsent words are no business of somebody else who enters on this device.
    if (before !== null && before !== personId) forgetDrafts();
    localStorage.setItem(PERSON_KEY, personId);
  } catch {
    // Where nothing can be kept there is nothing to clear.
  }
  void clearStrangeCopies(personId);
}

/** Copies of boards that the person can no longer open go. Without an answer nothing changes. */
export async function clearStrangeCopies(personId: string): Promise<void> {
  if (!keptCopies().some((place) => place.personId === personId)) return;
  try {
    const boards = await call<{ id: string }[]>('/api/boards?ids');
    const open = new Set(boards.map(({ id }) => id));
    dropCopies(({ boardId }) => !open.has(boardId));
  } catch (thrown) {
    if (thrown instanceof Refused && thrown.code === 'not-entered') dropCopies(() => true);
  }
}

/** Copies of pictures that left the board, or that this person may no longer see, go. */
export function clearPictureCopies(boardId: string, pictureIds: readonly string[]): void {
  const kept = new Set(pictureIds.map((id) => `painting/${id}`));
  dropCopies((place) => {
    return place.boardId === boardId && place.room.startsWith('painting/') && !kept.has(place.room);
  });
}
