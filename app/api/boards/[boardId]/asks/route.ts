import { asksSeen } from '#server/access/asks.ts';
import { boardAsSeen } from '#server/access/consent.ts';
import { roleNow } from '#server/access/roles.ts';
import { AskRequest } from '#server/core/contract/own-time-requests.ts';
import { statesOf } from '#server/core/own-time/states.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { givesLooks } from '#server/http/asks.ts';
import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { boardNotFound, refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { addAsk } from '#server/store/asks.ts';

type Params = { boardId: string };

/** Looks that were asked for on this board, as far as they are the caller's to see. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const board = await boardAsSeen(boardId, visitor, role);
  if (!board) throw boardNotFound();
  return asksSeen(board);
});

/** Asks for a look at one's own painting, always at its newest state. While one waits already, its words change. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  const { picture: pictureId, of, words } = await readJson(request, AskRequest);
  const board = await boardAsSeen(boardId, visitor, role);
  const states = statesOf(board?.pictures ?? [], pictureId);
  const newest = states.at(-1);
  if (newest?.kind !== 'painting') throw pictureNotFound();
  const relation = newest.painter.id === visitor.personId ? 'own' : 'other';
  refuseUnlessMay(role, 'ask.make', say`Only its painter may ask for a look at a painting.`, relation);
  if (of !== null && (of === visitor.personId || !givesLooks(await roleNow(of, boardId)))) {
    throw new Problem(
      'person-not-found',
      say`Nobody of that id gives looks on this board. Ask any teacher instead.`,
    );
  }
  const ask = { boardId, pictureId: newest.id, askedById: visitor.personId, askedOfId: of, words };
  const id = await addAsk(
    ask,
    states.map((state) => state.id),
  );
  services().boardChanged(boardId);
  return { id };
});
