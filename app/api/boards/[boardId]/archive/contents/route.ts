import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { boardNotFound, refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { archiveContents } from '#server/outward/board-archive.ts';

type Params = { boardId: string };

/** What an archive of the board would hold for the caller, and what would stay behind and why. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'board.take',
    say`Only the owner of a board and the host may take the whole of it away.`,
  );
  const contents = await archiveContents(boardId, visitor.personId);
  if (!contents) throw boardNotFound();
  return contents;
});
