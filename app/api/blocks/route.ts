import { handle } from '#server/http/respond.ts';
import { visitorOf } from '#server/http/visitor.ts';
import { blockedBy } from '#server/store/blocks.ts';

/** Whom the caller blocks: `PersonView[]`. Who blocks the caller is told to nobody. */
export const GET = handle(async (request) => blockedBy((await visitorOf(request)).personId));
