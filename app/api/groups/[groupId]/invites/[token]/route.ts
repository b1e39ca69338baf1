import { audited } from '#server/access/audit.ts';
import { takeBackInvite } from '#server/access/invite.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorInGroup } from '#server/http/visitor.ts';
import { boardsOf } from '#server/store/groups.ts';

type Params = { groupId: string; token: string };

/** Takes an invite to the group back, by its token or its id, and ends the membership of all who came by it. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { groupId, token } = await params;
  const { visitor, role } = await visitorInGroup(request, groupId);
  refuseUnlessMay(
    role,
    'group.invite.end',
    say`Only the owner of a group, its teachers and the host may take an invite back.`,
  );
  await takeBackInvite({ groupId }, token);
  await audited.inviteEnded(visitor, { groupId });
  await services().accessChanged(await boardsOf(groupId));
});
