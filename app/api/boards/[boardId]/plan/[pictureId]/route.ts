import { handle } from '#server/http/respond.ts';
import { refuseUnseen } from '#server/http/seen-picture.ts';
import { services } from '#server/http/services.ts';
import { refuseVeiled } from '#server/http/veil.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string; pictureId: string };

/**
 * The plan of a photograph, as the plan command prints it: frames, balance, ridges, suggestions, a planned ladder.
 * 202 with what is being done until it is there.
 */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  await refuseUnseen(boardId, pictureId, await visitorOnBoard(request, boardId));
  await refuseVeiled(boardId);
  const plan = await services().planOf(boardId, pictureId);
  if (!('pending' in plan)) return plan;
  return Response.json(plan, { status: 202, headers: { 'cache-control': 'private, no-store' } });
});
