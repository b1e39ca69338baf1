/**
 * What is done about a report, and its closing.
 *
 * In the flow: handler -> [close-report] -> store, rooms. IO: the database, the data folder, sockets.
 */
import { audited } from '../access/audit.ts';
import { actsOn } from '../access/report.ts';
import { type CloseReportRequest, OUTCOMES, type ReportAct } from '../core/contract/decency.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { endGuardianships } from '../store/guardians.ts';
import { removeMember } from '../store/members.ts';
import { closeReport, type Report } from '../store/reports.ts';
import { services } from './services.ts';
import type { OnBoard } from './visitor.ts';
import { withdrawPicture } from './withdraw.ts';

/** @throws Problem 'not-allowed' for what the caller may not do about it, 'report-not-found' when it was closed meanwhile. */
export async function closeByAct(
  report: Report,
  { visitor, role }: OnBoard,
  { act, note }: CloseReportRequest,
): Promise<void> {
  if (!actsOn(report, role).includes(act)) {
    throw new Problem(
      'not-allowed',
      say`This cannot be done about this report by you. A remark is removed by a teacher or the host, access ended by whoever owns the board or the host. Ask one of them, or close the report with a note.`,
    );
  }
  const { id, boardId, personId } = report;
  const closed = await closeReport(id, {
    closedById: visitor.personId,
    outcome: OUTCOMES[act],
    note,
    now: new Date(),
  });
  if (!closed) {
    throw new Problem(
      'report-not-found',
      say`Somebody closed this report a moment ago. Load the page again.`,
    );
  }
  await DEEDS[act](report, visitor);
  await audited.reportClosed(visitor, boardId, personId);
}

/** What is gone already is as good as removed. */
const DEEDS: Record<ReportAct, (report: Report, by: OnBoard['visitor']) => Promise<void>> = {
  async 'remove-remark'({ boardId, subjectId, personId }, by) {
    if (await services().markRemoved(boardId, subjectId)) await audited.remarkRemoved(by, boardId, personId);
  },
  async 'withdraw-picture'({ boardId, subjectId, personId }, by) {
    await withdrawPicture(boardId, subjectId);
    await audited.pictureWithdrawn(by, boardId, personId);
  },
  async 'end-access'({ boardId, personId }, by) {
    const guarded = await endGuardianships({ boardId }, personId);
    if ((await removeMember(boardId, personId)) || guarded)
      await audited.accessEnded(by, { boardId }, personId);
    await services().accessChanged([boardId]);
  },
  async note() {},
};
