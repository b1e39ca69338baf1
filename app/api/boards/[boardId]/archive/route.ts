import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { saved } from '#server/http/saved.ts';
import { boardNotFound, refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { boardArchive } from '#server/outward/board-archive.ts';
import { boardName } from '#server/store/boards.ts';

type Params = { boardId: string };

/** The board as one archive (application/zip), streamed: what its painters allow to leave it. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'board.take',
    say`Only the owner of a board and the host may take the whole of it away.`,
  );
  const archive = await boardArchive(boardId, visitor.personId);
  if (!archive) throw boardNotFound();
  return saved(archive, 'application/zip', `${(await boardName(boardId)) ?? 'Board'}.veilstep.zip`);
});
