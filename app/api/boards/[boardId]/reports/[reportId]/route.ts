import { reportToActOn } from '#server/access/report.ts';
import { CloseReportRequest } from '#server/core/contract/decency.ts';
import { say } from '#server/core/say/say.ts';
import { closeByAct } from '#server/http/close-report.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string; reportId: string };

/** Does something about a report (`CloseReportRequest`) and closes it. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId, reportId } = await params;
  const by = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    by.role,
    'report.close',
    say`Only the owner of a board, its teachers and the host may act on reports.`,
  );
  const report = await reportToActOn(boardId, reportId, by.visitor);
  await closeByAct(report, by, await readJson(request, CloseReportRequest));
});
