/** One group as one person may see it: its people under the names by which they know them. IO: the database. */
import type { GroupView } from '../core/contract/responses.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import { readGroup } from '../store/groups.ts';
import { groupRules } from '../store/school.ts';
import { knownNames, namingFor } from './school.ts';
import type { Visitor } from './session.ts';

/** Null when it went meanwhile. */
export async function groupAsSeen(
  groupId: string,
  { personId }: Visitor,
  role: BoardRole,
): Promise<GroupView | null> {
  const group = await readGroup(groupId);
  if (!group) return null;
  const naming = await namingFor(await knownNames({ groupId }, personId, role), [
    group.owner,
    ...group.members,
  ]);
  const owner = naming(group.owner);
  return {
    id: groupId,
    role,
    ...group,
    owner,
    members: group.members.map(naming),
    school: await groupRules(groupId),
  };
}
