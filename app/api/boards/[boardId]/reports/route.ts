import { makeReport, reportsFor } from '#server/access/report.ts';
import { ReportRequest } from '#server/core/contract/decency.ts';
import { say } from '#server/core/say/say.ts';
import { countCall, REPORTING } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string };

/** Reports a remark, a picture or somebody on the board to those who run it or teach on it, and to hosts. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(role, 'report.make', say`Only who is on this board may report something on it.`);
  countCall(REPORTING, visitor.personId);
  return makeReport(boardId, visitor, role, await readJson(request, ReportRequest));
});

/** The reports of this board that are for the caller's eyes: `ReportView[]`; one's own among them. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor } = await visitorOnBoard(request, boardId);
  return reportsFor(visitor, boardId);
});
