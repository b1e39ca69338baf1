import { setGroupSchool } from '#server/access/set-school.ts';
import { SchoolShape } from '#server/core/contract/decency.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorInGroup } from '#server/http/visitor.ts';

type Params = { groupId: string };

/** Sets what the group does not allow, on all its boards: `SchoolRules`. */
export const PUT = handle<Params>(async (request, { params }) => {
  const { groupId } = await params;
  const { visitor, role } = await visitorInGroup(request, groupId);
  refuseUnlessMay(
    role,
    'group.school',
    say`Only the owner of a group and the host may change its school setting.`,
  );
  await services().accessChanged(
    await setGroupSchool(visitor, groupId, await readJson(request, SchoolShape)),
  );
});
