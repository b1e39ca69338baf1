import { audited } from '#server/access/audit.ts';
import { takeBackInvite } from '#server/access/invite.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string; token: string };

/** Takes an invite back, by its token or its id, and ends the access of everybody who came by it. */
export const DELETE = handle<Params>(async (request, { params }) => {
  const { boardId, token } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refuseUnlessMay(
    role,
    'invite.end',
    say`Only the owner of a board, its teachers and the host may take an invite back.`,
  );
  await takeBackInvite({ boardId }, token);
  await audited.inviteEnded(visitor, { boardId });
  await services().accessChanged([boardId]);
});
