import { makeInvite } from '#server/access/invite.ts';
import { mayInvite } from '#server/access/roles.ts';
import { InviteRequest } from '#server/core/contract/requests.ts';
import { countCall, INVITING } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { originOf, refuseUnless, visitorOnBoard } from '#server/http/visitor.ts';
import { listInvites } from '#server/store/invites.ts';

type Params = { boardId: string };

const REFUSED = 'Only the owner of a board, its teachers and the host may invite.';

/** Makes an invite; its link is shown this once, for only a hash of it is kept. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnless(mayInvite(role), REFUSED);
  countCall(INVITING, visitor.personId);
  const wanted = await readJson(request, InviteRequest);
  return makeInvite(boardId, wanted, originOf(request));
});

/** The invites that still work, without their links. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { role } = await visitorOnBoard(request, boardId);
  refuseUnless(mayInvite(role), REFUSED);
  const invites = await listInvites(boardId, new Date());
  return invites.map(({ id, role: gives, createdAt, expiresAt }) => ({
    id,
    role: gives,
    createdAt: createdAt.toISOString(),
    expiresAt: expiresAt.toISOString(),
  }));
});
