import { boardAsSeen } from '#server/access/consent.ts';
import { homeworkSeen } from '#server/access/homework.ts';
import { HomeworkRequest } from '#server/core/contract/homework-requests.ts';
import { statesOf } from '#server/core/own-time/states.ts';
import { say } from '#server/core/say/say.ts';
import { refuseFarDay } from '#server/http/homework.ts';
import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { boardNotFound, refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { addHomework } from '#server/store/homework.ts';

type Params = { boardId: string };

/** Homework on this board, as far as it is the caller's to see; none while a class looks at a painting alone. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const board = await boardAsSeen(boardId, visitor, role);
  if (!board) throw boardNotFound();
  return (await services().isVeiled(boardId)) ? [] : homeworkSeen(board);
});

/** Sets homework (`HomeworkRequest`) for the painter of a painting, at its newest state. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const { picture, card, ...homework } = await readJson(request, HomeworkRequest);
  const board = await boardAsSeen(boardId, visitor, role);
  const newest = statesOf(board?.pictures ?? [], picture).at(-1);
  if (newest?.kind !== 'painting') throw pictureNotFound();
  const painterId = newest.painter.id;
  const relation = painterId === visitor.personId ? 'own' : 'other';
  refuseUnlessMay(
    role,
    'homework.set',
    say`Only teachers and the host set homework for others; painters may set it for themselves.`,
    relation,
  );
  refuseFarDay(homework.dueOn);
  const setFor = { boardId, pictureId: newest.id, painterId, setById: visitor.personId, cardKey: card };
  const id = await addHomework({ ...setFor, ...homework });
  services().boardChanged(boardId);
  return { id };
});
