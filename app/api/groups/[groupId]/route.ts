import { audited } from '#server/access/audit.ts';
import { groupAsSeen } from '#server/access/group-view.ts';
import { GroupRequest } from '#server/core/contract/requests.ts';
import type { GroupView } from '#server/core/contract/responses.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { groupNotFound, refuseUnlessMay, visitorInGroup } from '#server/http/visitor.ts';
import { boardsOf, groupName, removeGroup, renameGroup } from '#server/store/groups.ts';

type Params = { groupId: string };

/** The group with its people and boards. */
export const GET = handle<Params>(async (request, { params }): Promise<GroupView> => {
  const { groupId } = await params;
  const { visitor, role } = await visitorInGroup(request, groupId);
  const group = await groupAsSeen(groupId, visitor, role);
  if (!group) throw groupNotFound();
  return group;
});

/** Gives the group another name. */
export const PATCH = handle<Params>(async (request, { params }) => {
  const { groupId } = await params;
  const { role } = await visitorInGroup(request, groupId);
  refuseUnlessMay(role, 'group.rename', say`Only the owner of a group and the host may rename it.`);
  const { name } = await readJson(request, GroupRequest);
  await renameGroup(groupId, name);
});

/** Deletes the group; its boards stay with whoever made them, and its members lose them. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { groupId } = await params;
  const { visitor, role } = await visitorInGroup(request, groupId);
  refuseUnlessMay(role, 'group.delete', say`Only the owner of a group and the host may delete it.`);
  const boardIds = await boardsOf(groupId);
  const name = (await groupName(groupId)) ?? '';
  await removeGroup(groupId);
  await audited.groupDeleted(visitor, groupId, name);
  await services().accessChanged(boardIds);
});
