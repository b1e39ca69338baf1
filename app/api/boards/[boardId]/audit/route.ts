import { recordOfBoard } from '#server/access/audit.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string };

/** What was done to others on the board, and what was deleted by itself: a `RecordView`. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'audit.see',
    say`Only the owner of a board, its teachers and the host may read this.`,
  );
  return recordOfBoard(boardId);
});
