import { audited } from '#server/access/audit.ts';
import { memberRoleOn } from '#server/access/roles.ts';
import { RoleRequest } from '#server/core/contract/requests.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { endGuardianships } from '#server/store/guardians.ts';
import { changeMember, removeMember } from '#server/store/members.ts';

type Params = { boardId: string; personId: string };

/** Makes a member something else on this board, whatever the board's group says of them. */
export const PATCH = handle<Params>(async (request, { params }) => {
  const { boardId, personId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'member.role',
    say`Only the owner of a board and the host may change what somebody is.`,
  );
  const wanted = await readJson(request, RoleRequest);
  if ((await memberRoleOn(boardId, personId)) === null) throw notAMember();
  await changeMember(boardId, personId, wanted.role);
  await audited.roleChanged(visitor, { boardId }, personId, wanted.role);
  await services().accessChanged([boardId]);
});

/** Ends a person's access to the board; everybody may end their own. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { boardId, personId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'member.end',
    say`Only the owner of a board and the host may send people away.`,
    visitor.personId === personId ? 'own' : 'other',
  );
  const guarded = await endGuardianships({ boardId }, personId);
  if (!(await removeMember(boardId, personId)) && !guarded) throw notAMember();
  await audited.accessEnded(visitor, { boardId }, personId);
  await services().accessChanged([boardId]);
});

function notAMember(): Problem {
  return new Problem(
    'person-not-found',
    say`That person is not a member of this board. Load the board again.`,
  );
}
