import { leavingOf } from '#server/http/leave-for-good.ts';
import { handle } from '#server/http/respond.ts';
import { visitorOf } from '#server/http/visitor.ts';

/** What would be deleted with the caller, and what they have to hand on or delete first. */
export const GET = handle(async (request) => leavingOf(await visitorOf(request)));
