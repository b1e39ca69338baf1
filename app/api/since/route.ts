import { newsOfBoards } from '#server/access/since.ts';
import { handle } from '#server/http/respond.ts';
import { visitorOf } from '#server/http/visitor.ts';

/** Board id -> what came since the caller last looked at it; boards to which nothing came are left out. */
export const GET = handle(async (request) => newsOfBoards(await visitorOf(request)));
