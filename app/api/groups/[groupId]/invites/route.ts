import { audited } from '#server/access/audit.ts';
import { makeInvite, openInvites } from '#server/access/invite.ts';
import { refusePublicInvite } from '#server/access/school.ts';
import { InviteRequest } from '#server/core/contract/requests.ts';
import { say } from '#server/core/say/say.ts';
import { countCall, INVITING } from '#server/http/rate-limit.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { originOf, refuseUnlessMay, visitorInGroup } from '#server/http/visitor.ts';

type Params = { groupId: string };

const REFUSED = say`Only the owner of a group, its teachers and the host may invite to it.`;

/** Makes an invite to the group; its link is shown this once, for only a hash of it is kept. */
export const POST = handle<Params>(async (request, { params }) => {
  const { groupId } = await params;
  const { visitor, role } = await visitorInGroup(request, groupId);
  refuseUnlessMay(role, 'group.invite.make', REFUSED);
  countCall(INVITING, visitor.personId);
  const wanted = await readJson(request, InviteRequest);
  await refusePublicInvite({ groupId }, wanted);
  const made = await makeInvite({ groupId }, wanted, originOf(request));
  await audited.inviteMade(visitor, { groupId }, made.role, made.uses);
  return made;
});

/** The invites to the group in force, without their links. */
export const GET = handle<Params>(async (request, { params }) => {
  const { groupId } = await params;
  const { role } = await visitorInGroup(request, groupId);
  refuseUnlessMay(role, 'group.invite.make', REFUSED);
  return openInvites({ groupId });
});
