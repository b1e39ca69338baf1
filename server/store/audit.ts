/** What was done to others, and what was deleted; both outlive what they are about. IO: the database. */
import { randomUUID } from 'node:crypto';
import {
  type AuditView,
  DELETION_REASONS,
  type DeletionReason,
  type DeletionView,
} from '../core/contract/decency.ts';
import { database } from './database.ts';

export interface NewEntry {
  actorId: string;
  did: string;
  boardId: string | null;
  groupId: string | null;
  /** Never holds a picture or the words of a remark. */
  sentence: string;
}

export async function addAudit(entry: NewEntry): Promise<void> {
  await database().auditEntry.create({ data: { id: randomUUID(), ...entry } });
}

/** Entries a page reads at once. */
const MOST = 500;

/** Newest first. @param where Of these boards, or of all and everything where null. */
export async function listAudit(boardIds: readonly string[] | null): Promise<AuditView[]> {
  const rows = await database().auditEntry.findMany({
    where: boardIds === null ? {} : { boardId: { in: [...boardIds] } },
    orderBy: [{ at: 'desc' }, { id: 'asc' }],
    take: MOST,
  });
  return rows.map(({ id, at, sentence }) => ({ id, at: at.toISOString(), sentence }));
}

export interface NewDeletion {
  boardId: string;
  groupId: string | null;
  boardTitle: string;
  reason: DeletionReason;
  pictures: number;
  remarks: number;
  whole: boolean;
}

export async function addDeletion(deletion: NewDeletion): Promise<void> {
  await database().deletion.create({ data: { id: randomUUID(), ...deletion } });
}

/**
 * Newest first.
 *
 * @param of Of these boards and of these groups, whose boards may be gone; null = all.
 */
export async function listDeletions(
  of: { boardIds: readonly string[]; groupIds: readonly string[] } | null,
): Promise<DeletionView[]> {
  const where =
    of === null ? {} : { OR: [{ boardId: { in: [...of.boardIds] } }, { groupId: { in: [...of.groupIds] } }] };
  const rows = await database().deletion.findMany({
    where,
    orderBy: [{ at: 'desc' }, { id: 'asc' }],
    take: MOST,
  });
  return rows.map(({ id, at, boardTitle, reason, pictures, remarks, whole }) => {
    const known = DELETION_REASONS.find((each) => each === reason) ?? 'over';
    return { id, at: at.toISOString(), boardTitle, reason: known, pictures, remarks, whole };
  });
}

/** Removes what is older than that time. */
export async function forgetRecords(before: Date): Promise<void> {
  await database().auditEntry.deleteMany({ where: { at: { lt: before } } });
  await database().deletion.deleteMany({ where: { at: { lt: before } } });
}
