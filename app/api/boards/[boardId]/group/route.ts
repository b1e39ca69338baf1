import { audited } from '#server/access/audit.ts';
import { MoveRequest } from '#server/core/contract/decency.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorInGroup, visitorOnBoard } from '#server/http/visitor.ts';
import { moveBoard } from '#server/store/board-place.ts';

type Params = { boardId: string };

/** Moves the board into a group, or out of the one it is in. Into a group by who may make boards for it. */
export const PUT = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'board.group',
    say`Only the owner of a board and the host may move it into a group or out of one.`,
  );
  const { group } = await readJson(request, MoveRequest);
  if (group !== null) {
    const there = await visitorInGroup(request, group);
    refuseUnlessMay(
      there.role,
      'group.board',
      say`Only the owner of a group, its teachers and the host may bring boards into it.`,
    );
  }
  await audited.boardMoved(visitor, boardId, group);
  await moveBoard(boardId, group);
  await services().accessChanged([boardId]);
});
