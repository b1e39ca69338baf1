import { enter } from '#server/access/enter.ts';
import { readSession } from '#server/access/session.ts';
import { EnterRequest } from '#server/core/contract/requests.ts';
import { environment } from '#server/env.ts';
import { countCall, ENTERING } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { addressOf, cameSecurely } from '#server/http/visitor.ts';
import { boardsOf } from '#server/store/groups.ts';

/** Enters with a key and a name; answers who you are and, for an invite, the board or the group it leads to. */
export const POST = handle(async (request) => {
  countCall(ENTERING, addressOf(request));
  const { key, name, as } = await readJson(request, EnterRequest);
  const entered = await enter({
    key,
    name,
    as,
    visitor: await readSession(request.headers.get('cookie')),
    hostKey: environment().hostKey,
    secure: cameSecurely(request),
  });
  const { place } = entered;
  const boardId = place && 'boardId' in place ? place.boardId : null;
  const groupId = place && 'groupId' in place ? place.groupId : null;
  // Somebody came, or became something more and is seated anew.
  if (boardId) await services().accessChanged([boardId]);
  if (groupId) await services().accessChanged(await boardsOf(groupId));
  const { personId, name: kept } = entered.visitor;
  return Response.json(
    { id: personId, name: kept, boardId, ...(groupId ? { groupId } : {}) },
    { headers: entered.setCookie ? { 'set-cookie': entered.setCookie } : {} },
  );
});
