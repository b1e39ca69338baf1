import { recordOfHouse } from '#server/access/audit.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { refuseUnlessHost, visitorOf } from '#server/http/visitor.ts';

/** What was done to others anywhere here, and what was deleted by itself: a `RecordView`. */
export const GET = handle(async (request) => {
  refuseUnlessHost(
    await visitorOf(request),
    'house.record',
    say`Only the host may read what was done on the whole server.`,
  );
  return recordOfHouse();
});
