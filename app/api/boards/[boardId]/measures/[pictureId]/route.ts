import { rulesAt } from '#server/access/school.ts';
import { withoutMixing } from '#server/core/readings/without-mixing.ts';
import { handle } from '#server/http/respond.ts';
import { refuseUnseen } from '#server/http/seen-picture.ts';
import { services } from '#server/http/services.ts';
import { refuseVeiled } from '#server/http/veil.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';

type Params = { boardId: string; pictureId: string };

/**
 * The measures of a painting against its reference, or of a reference alone (its own ladder, target `none`).
 * 202 with what is being done, or what it waits for, until they are there.
 */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId } = await params;
  await refuseUnseen(boardId, pictureId, await visitorOnBoard(request, boardId));
  await refuseVeiled(boardId);
  const measures = await services().measuresOf(boardId, pictureId);
  if (!('pending' in measures)) {
    return (await rulesAt({ boardId })).noMixingHints ? withoutMixing(measures) : measures;
  }
  return Response.json(measures, { status: 202, headers: { 'cache-control': 'private, no-store' } });
});
