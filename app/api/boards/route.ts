import { BoardRequest } from '#server/core/contract/requests.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { refuseUnless, visitorOf } from '#server/http/visitor.ts';
import { addBoard, listBoards } from '#server/store/boards.ts';
import { isOnlyViewer } from '#server/store/members.ts';

/** The boards the caller may open, newest first. */
export const GET = handle(async (request) => {
  const { personId, isHost } = await visitorOf(request);
  return listBoards(personId, isHost);
});

/** Makes a board; whoever makes it owns it. */
export const POST = handle(async (request) => {
  const { personId, isHost } = await visitorOf(request);
  const { title } = await readJson(request, BoardRequest);
  refuseUnless(
    isHost || !(await isOnlyViewer(personId)),
    'Viewers cannot make boards; painters and teachers can.',
  );
  return { id: await addBoard(personId, title) };
});
