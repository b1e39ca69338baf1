import { audited } from '#server/access/audit.ts';
import { memberRoleOn } from '#server/access/roles.ts';
import { HandOnRequest } from '#server/core/contract/decency.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { handBoardOn } from '#server/store/board-place.ts';

type Params = { boardId: string };

/** Hands the board on to one of its members; who had it stays on it as a teacher. */
export const PUT = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(role, 'board.hand', say`Only the owner of a board and the host may hand it on.`);
  const { person } = await readJson(request, HandOnRequest);
  if ((await memberRoleOn(boardId, person)) === null) {
    throw new Problem(
      'person-not-found',
      say`A board is handed on to somebody who is a member of it, and that person is not. Invite them first.`,
    );
  }
  await handBoardOn(boardId, person);
  await audited.boardHandedOn(visitor, boardId, person);
  await services().accessChanged([boardId]);
});
