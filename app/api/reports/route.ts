import { reportsFor } from '#server/access/report.ts';
import { handle } from '#server/http/respond.ts';
import { visitorOf } from '#server/http/visitor.ts';

/** Every report that is for the caller's eyes, on any board: `ReportView[]`, newest first. */
export const GET = handle(async (request) => reportsFor(await visitorOf(request), null));
