/** Reports of remarks, pictures and people. Who may read them: access/. IO: the database. */
import { randomUUID } from 'node:crypto';
import type { Report } from '../../prisma/generated/client.ts';
import type { Reported, ReportOutcome } from '../core/contract/decency.ts';
import { database } from './database.ts';

export type { Report };

export interface NewReport {
  boardId: string;
  reporterId: string;
  about: Reported;
  subjectId: string;
  personId: string;
  pictureId: string | null;
  quoted: string;
  words: string;
}

/** @returns Its id. */
export async function addReport(report: NewReport): Promise<string> {
  const { id } = await database().report.create({ data: { id: randomUUID(), ...report } });
  return id;
}

export function findReport(boardId: string, id: string): Promise<Report | null> {
  return database().report.findFirst({ where: { id, boardId } });
}

export type ReportRow = Report & {
  board: { id: string; title: string };
  reporter: { id: string; name: string };
};

/** Of these boards (all of them where null), and those of one's own making anywhere; newest first. */
export function listReports(boardIds: readonly string[] | null, reporterId: string): Promise<ReportRow[]> {
  return database().report.findMany({
    where: boardIds === null ? {} : { OR: [{ boardId: { in: [...boardIds] } }, { reporterId }] },
    orderBy: [{ at: 'desc' }, { id: 'asc' }],
    take: 500,
    include: {
      board: { select: { id: true, title: true } },
      reporter: { select: { id: true, name: true } },
    },
  });
}

/** They have been before somebody who can act on them. */
export async function markSeen(ids: readonly string[], now: Date): Promise<void> {
  if (ids.length === 0) return;
  await database().report.updateMany({
    where: { id: { in: [...ids] }, seenAt: null },
    data: { seenAt: now },
  });
}

/** @returns Whether it was open; of two who close it at once one gets true. */
export async function closeReport(
  id: string,
  { closedById, outcome, note, now }: { closedById: string; outcome: ReportOutcome; note: string; now: Date },
): Promise<boolean> {
  const { count } = await database().report.updateMany({
    where: { id, closedAt: null },
    data: { closedAt: now, closedById, outcome, note },
  });
  if (count === 1) await markSeen([id], now);
  return count === 1;
}

/** Removes reports that were closed before that time, with what they quote. */
export async function removeClosedReports(before: Date): Promise<number> {
  return (await database().report.deleteMany({ where: { closedAt: { lt: before } } })).count;
}
