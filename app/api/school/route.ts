import { setHouseSchool } from '#server/access/set-school.ts';
import { SchoolShape } from '#server/core/contract/decency.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessHost, visitorOf } from '#server/http/visitor.ts';
import { houseRules } from '#server/store/school.ts';

const REFUSED = say`Only the host may set what the whole server does not allow.`;

/** The school setting of the whole server: `SchoolRules`. */
export const GET = handle(async (request) => {
  refuseUnlessHost(await visitorOf(request), 'house.school', REFUSED);
  return houseRules();
});

/** Sets it; groups can only be stricter. */
export const PUT = handle(async (request) => {
  const visitor = await visitorOf(request);
  refuseUnlessHost(visitor, 'house.school', REFUSED);
  await services().accessChanged(await setHouseSchool(visitor, await readJson(request, SchoolShape)));
});
