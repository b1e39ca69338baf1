/**
 * Which pictures may stay when a class is over, or when their time here has come.
 *
 * A painting stays when its painter, or the guardian, said that it may be kept; a reference as long as a painting of
 * its board. In the flow: handlers, daily round -> [keeping] -> store. IO: the database.
 */
import type { DeletionReason } from '../core/contract/decency.ts';
import type { SchoolRules } from '../core/contract/school.ts';
import { consentsSaid } from '../store/consents.ts';
import { listPictures } from '../store/pictures.ts';

const DAY_MS = 24 * 60 * 60 * 1000;

/** Paintings of a board that go and that stay. @param before Only what was posted earlier goes; null = whenever. */
export async function keepingOn(
  boardId: string,
  before: Date | null,
): Promise<{ goes: string[]; stays: string[] }> {
  const said = (await consentsSaid(boardId)).filter(({ use, given }) => use === 'keep' && given);
  const kept = new Set(said.map(({ personId }) => personId));
  const goes: string[] = [];
  const stays: string[] = [];
  for (const { id, painterId, createdAt } of await listPictures(boardId, 'painting')) {
    const due = !kept.has(painterId) && (before === null || createdAt < before);
    (due ? goes : stays).push(id);
  }
  return { goes, stays };
}

/** The moment before which everything is to be deleted that may not be kept, and why; null = nothing is due. */
export function dueBefore(
  { deleteAfterDays, deleteOn }: Pick<SchoolRules, 'deleteAfterDays' | 'deleteOn'>,
  now: Date,
): { before: Date; reason: DeletionReason } | null {
  const byAge = deleteAfterDays === null ? null : new Date(now.getTime() - deleteAfterDays * DAY_MS);
  const day = deleteOn === null ? null : new Date(`${deleteOn}T00:00:00Z`);
  const byDay = day !== null && day <= now ? day : null;
  if (byDay !== null && (byAge === null || byDay >= byAge)) return { before: byDay, reason: 'day' };
  return byAge === null ? null : { before: byAge, reason: 'age' };
}
