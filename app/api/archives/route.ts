import { say } from '#server/core/say/say.ts';
import { countCall, UPLOADING } from '#server/http/rate-limit.ts';
import { withReceivedFile } from '#server/http/receive-file.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnless, visitorOf } from '#server/http/visitor.ts';
import { isOnlyViewer } from '#server/store/members.ts';

/** 4 GB: what a browser can still send in one go. */
const MOST_BYTES = 4_000_000_000;

/** Takes the archive of a board in; its body is the file. Whoever takes it in owns the board, as if they had made it. */
export const POST = handle(async (request) => {
  const { personId, isHost } = await visitorOf(request);
  refuseUnless(
    isHost || !(await isOnlyViewer(personId)),
    say`Viewers cannot take boards in; painters and teachers can.`,
  );
  countCall(UPLOADING, personId);
  return withReceivedFile(request, MOST_BYTES, (path) => services().takeInBoard(path, personId));
});
