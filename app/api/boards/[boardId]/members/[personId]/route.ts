import { mayManage } from '#server/access/roles.ts';
import { Problem } from '#server/core/problem.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnless, visitorOnBoard } from '#server/http/visitor.ts';
import { removeMember } from '#server/store/members.ts';

type Params = { boardId: string; personId: string };

/** Ends a person's access to the board; everybody may end their own. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { boardId, personId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const own = visitor.personId === personId;
  refuseUnless(own || mayManage(role), 'Only the owner of a board and the host may send people away.');
  if (!(await removeMember(boardId, personId))) {
    throw new Problem('person-not-found', 'That person is not a member of this board. Load the board again.');
  }
  await services().accessEnded(boardId, [personId]);
  services().boardChanged(boardId);
});
