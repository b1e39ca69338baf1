/**
 * The daily round: deletes what the school setting says is due, and records that have been kept long enough.
 *
 * In the flow: main, at the start and once a day -> [daily] -> store, rooms. Main process only. IO: through its parts.
 */
import { AUDIT_DAYS } from './access/audit.ts';
import { dueBefore, keepingOn } from './access/keeping.ts';
import { CLOSED_REPORT_DAYS } from './access/report.ts';
import { rulesAt } from './access/school.ts';
import { endPictures } from './http/withdraw.ts';
import { logError, logEvent } from './log.ts';
import { forgetRecords } from './store/audit.ts';
import { type BoardAge, boardAges } from './store/boards.ts';
import { removeClosedReports } from './store/reports.ts';
import { removeExpired } from './store/sessions.ts';

const DAY_MS = 24 * 60 * 60 * 1000;

/** Runs the round now and every day. @returns How to stop it; a round under way is waited for. */
export function startDailyRounds(): () => Promise<void> {
  let running = round();
  const timer = setInterval(() => {
    running = round();
  }, DAY_MS);
  timer.unref();
  return async () => {
    clearInterval(timer);
    await running;
  };
}

async function round(): Promise<void> {
  await dailyRound(new Date()).catch((thrown) => logError('daily-round-failed', thrown));
}

/** One round. A board that cannot be deleted is logged and tried again the next day; the others go on. */
export async function dailyRound(now: Date): Promise<void> {
  const daysAgo = (days: number) => new Date(now.getTime() - days * DAY_MS);
  for (const board of await boardAges()) {
    await deleteDue(board, now).catch((thrown) => logError('deletion-failed', thrown, { boardId: board.id }));
  }
  await removeClosedReports(daysAgo(CLOSED_REPORT_DAYS));
  await forgetRecords(daysAgo(AUDIT_DAYS));
  await removeExpired(now);
}

async function deleteDue(board: BoardAge, now: Date): Promise<void> {
  const due = dueBefore(await rulesAt({ boardId: board.id }), now);
  if (due === null) return;
  const { before, reason } = due;
  const { goes, stays } = await keepingOn(board.id, before);
  const whole = stays.length === 0 && board.newestAt < before;
  if (goes.length === 0 && !whole) return;
  const pictureIds = whole ? board.pictureIds : goes;
  await endPictures({ board, reason, pictureIds, whole });
  logEvent('deleted-by-school-setting', { boardId: board.id, pictures: pictureIds.length, whole });
}
