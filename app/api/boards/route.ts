import { NewBoardRequest } from '#server/core/contract/requests.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { refuseUnless, refuseUnlessMay, visitorInGroup, visitorOf } from '#server/http/visitor.ts';
import { addBoard, listBoards } from '#server/store/boards.ts';
import { isOnlyViewer } from '#server/store/members.ts';

/** The boards the caller may open, newest first; with `?ids` nothing but their ids, for pages that must tell no names. */
export const GET = handle(async (request) => {
  const { personId, isHost } = await visitorOf(request);
  const boards = await listBoards(personId, isHost);
  return new URL(request.url).searchParams.has('ids') ? boards.map(({ id }) => ({ id })) : boards;
});

/** Makes a board, of a group where one is named; whoever makes it owns it. */
export const POST = handle(async (request) => {
  const { personId, isHost } = await visitorOf(request);
  const { title, group } = await readJson(request, NewBoardRequest);
  if (group !== undefined) {
    const { role } = await visitorInGroup(request, group);
    refuseUnlessMay(
      role,
      'group.board',
      say`Only the owner of a group, its teachers and the host may make boards for it.`,
    );
    return { id: await addBoard(personId, title, group) };
  }
  refuseUnless(
    isHost || !(await isOnlyViewer(personId)),
    say`Viewers cannot make boards; painters and teachers can.`,
  );
  return { id: await addBoard(personId, title) };
});
