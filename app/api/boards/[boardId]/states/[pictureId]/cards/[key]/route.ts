import { z } from 'zod';
import { SaidOnBoard } from '#server/access/said-on-board.ts';
import { stateCards } from '#server/access/states.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle, readJson } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { seenPainting, writerOn } from '#server/http/states.ts';

type Params = { boardId: string; pictureId: string; key: string };

const CardAnswer = z.strictObject({ state: z.enum(['done', 'carried', 'accepted']).nullable() });

/** Closes a card of a state, takes it along to the next one, or (null) takes that back; words that were said stay. */
export const PUT = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId, key } = await params;
  const { state } = await readJson(request, CardAnswer);
  const seen = await seenPainting(request, boardId, pictureId);
  const measured = await services().measuresOf(boardId, pictureId);
  const said = new SaidOnBoard(seen.board);
  const { cards } = await stateCards(said, pictureId, 'pending' in measured ? null : measured);
  const card = [...cards.open, ...cards.waiting, ...cards.declined].find((each) => each.key === key);
  if (!card) {
    throw new Problem(
      'card-not-found',
      say`There is no such card on this state any more. Load the page again.`,
    );
  }
  const answer =
    state === null ? null : { state, words: card.answer?.words ?? '', about: card.readings.slice(0, 20) };
  await services().answerMade({ boardId, pictureId }, writerOn(seen), key, answer);
});
