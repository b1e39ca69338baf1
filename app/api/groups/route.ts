import { GroupRequest } from '#server/core/contract/requests.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { refuseUnless, visitorOf } from '#server/http/visitor.ts';
import { addGroup, listGroups } from '#server/store/groups.ts';
import { isOnlyViewer } from '#server/store/members.ts';

/** The groups the caller belongs to. */
export const GET = handle(async (request) => {
  const { personId, isHost } = await visitorOf(request);
  return listGroups(personId, isHost);
});

/** Makes a group; whoever makes it owns it. */
export const POST = handle(async (request) => {
  const { personId, isHost } = await visitorOf(request);
  const { name } = await readJson(request, GroupRequest);
  refuseUnless(
    isHost || !(await isOnlyViewer(personId)),
    say`Who only looks on cannot make groups; painters and teachers can.`,
  );
  return { id: await addGroup(personId, name) };
});
