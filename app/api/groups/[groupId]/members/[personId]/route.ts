import { audited } from '#server/access/audit.ts';
import { RoleRequest } from '#server/core/contract/requests.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorInGroup } from '#server/http/visitor.ts';
import { boardsOf, changeGroupMember, removeGroupMember } from '#server/store/groups.ts';
import { endGuardianships } from '#server/store/guardians.ts';

type Params = { groupId: string; personId: string };

/** Makes a member of the group something else, on all its boards that do not say otherwise. */
export const PATCH = handle<Params>(async (request, { params }) => {
  const { groupId, personId } = await params;
  const { visitor, role } = await visitorInGroup(request, groupId);
  refuseUnlessMay(
    role,
    'group.member.role',
    say`Only the owner of a group and the host may change what somebody is.`,
  );
  const wanted = await readJson(request, RoleRequest);
  if (!(await changeGroupMember(groupId, personId, wanted.role))) throw notAMember();
  await audited.roleChanged(visitor, { groupId }, personId, wanted.role);
  await services().accessChanged(await boardsOf(groupId));
});

/** Ends a membership of the group; everybody may end their own. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { groupId, personId } = await params;
  const { visitor, role } = await visitorInGroup(request, groupId);
  refuseUnlessMay(
    role,
    'group.member.end',
    say`Only the owner of a group and the host may send people away.`,
    visitor.personId === personId ? 'own' : 'other',
  );
  const guarded = await endGuardianships({ groupId }, personId);
  if (!(await removeGroupMember(groupId, personId)) && !guarded) throw notAMember();
  await audited.accessEnded(visitor, { groupId }, personId);
  await services().accessChanged(await boardsOf(groupId));
});

function notAMember(): Problem {
  return new Problem(
    'person-not-found',
    say`That person is not a member of this group. Load the page again.`,
  );
}
