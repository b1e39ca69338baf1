import { audited } from '#server/access/audit.ts';
import { makeInvite, openInvites } from '#server/access/invite.ts';
import { refusePublicInvite } from '#server/access/school.ts';
import { InviteRequest } from '#server/core/contract/requests.ts';
import { say } from '#server/core/say/say.ts';
import { countCall, INVITING } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { originOf, refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string };

const REFUSED = say`Only the owner of a board, its teachers and the host may invite.`;

/** Makes an invite; its link is shown this once, for only a hash of it is kept. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(role, 'invite.make', REFUSED);
  countCall(INVITING, visitor.personId);
  const wanted = await readJson(request, InviteRequest);
  await refusePublicInvite({ boardId }, wanted);
  const made = await makeInvite({ boardId }, wanted, originOf(request));
  await audited.inviteMade(visitor, { boardId }, made.role, made.uses);
  return made;
});

/** The invites in force, without their links. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(role, 'invite.make', REFUSED);
  return openInvites({ boardId });
});
