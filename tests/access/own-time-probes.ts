/** For looks that are asked for and the queue they come into: how somebody tries it, through the handlers. */
import {
  PATCH as changeAsking,
  DELETE as withdrawAsking,
} from '#app/api/boards/[boardId]/asks/[askId]/route.ts';
import { POST as ask, GET as seeAsks } from '#app/api/boards/[boardId]/asks/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { GET as seeQueue } from '#app/api/queue/route.ts';
import type { AskView, QueueView } from '#server/core/contract/own-time.ts';
import type { Relation } from '#server/core/permissions/may.ts';
import { addAsk } from '#server/store/asks.ts';
import { database } from '#server/store/database.ts';
import { aPainting, type Somebody } from '#tests/live/a-live-server.ts';
import { aBoard, call, outcomeOf, type Stage } from './cast.ts';
import type { HttpAction, Probe } from './http-probes.ts';

const OWN_OR_NOT = ['own', 'other'] as const;
const EVERY = ['own', 'ward', 'other'] as const;

interface Asked {
  boardId: string;
  pictureId: string;
  askId: string;
}

/** A board with a painting by `whose`, of which they asked any teacher for a look. */
async function anAsking(stage: Stage, whose: Somebody): Promise<Asked> {
  const boardId = await aBoard(stage);
  const pictureId = await aPainting(boardId, whose.id);
  const asking = { boardId, pictureId, askedById: whose.id, askedOfId: null, words: 'Does it go back?' };
  return { boardId, pictureId, askId: await addAsk(asking, [pictureId]) };
}

function onAsking(
  what: string,
  relations: readonly Relation[],
  act: (asked: Asked, who: Somebody) => Promise<Response>,
): Probe {
  return {
    what,
    relations,
    act: async (stage, who, whose) => outcomeOf(await act(await anAsking(stage, whose), who)),
  };
}

const changing = (what: string, body: unknown) =>
  onAsking(what, OWN_OR_NOT, ({ boardId, askId }, who) => {
    return call(changeAsking, who, { boardId, askId }, { method: 'PATCH', body });
  });

const nextWeek = () => new Date(Date.now() + 7 * 24 * 3_600_000).toISOString().slice(0, 10);

export const OWN_TIME_PROBES = {
  'ask.make': [
    {
      what: 'asks for it',
      relations: OWN_OR_NOT,
      act: async (stage, who, whose) => {
        const boardId = await aBoard(stage);
        const picture = await aPainting(boardId, whose.id);
        const body = { picture, of: null, words: '' };
        return outcomeOf(await call(ask, who, { boardId }, { method: 'POST', body }));
      },
    },
    onAsking('withdraws it', OWN_OR_NOT, ({ boardId, askId }, who) => {
      return call(withdrawAsking, who, { boardId, askId }, { method: 'DELETE' });
    }),
  ],
  'ask.see': [
    {
      what: 'reads what is asked for on the board',
      relations: EVERY,
      act: async (stage, who, whose) => {
        const { boardId, askId } = await anAsking(stage, whose);
        const answer = await call(seeAsks, who, { boardId });
        if (!answer.ok) return outcomeOf(answer);
        const seen = (await answer.json()) as AskView[];
        return seen.some(({ id }) => id === askId) ? 'done' : 'refused';
      },
    },
  ],
  'ask.promise': [
    changing('promises a day', { promisedFor: nextWeek() }),
    changing('takes a promise back', { promisedFor: null }),
  ],
  'ask.answer': [changing('says so', { answered: true })],
  'queue.see': [
    {
      what: 'looks what waits',
      relations: OWN_OR_NOT,
      act: async (stage, who, whose) => {
        // What the other cells asked for is out of the way: this is about one asking.
        await database().ask.deleteMany();
        const { boardId, askId } = await anAsking(stage, whose);
        const answer = await call(seeQueue, who, {});
        if (!answer.ok) return outcomeOf(answer);
        const { rows } = (await answer.json()) as QueueView;
        if (rows.some(({ ask: { id } }) => id === askId)) return 'done';
        // The queue is empty for whoever has none; whether the board is there for them the board itself says.
        const board = await call(seeBoard, who, { boardId });
        return board.ok ? 'refused' : outcomeOf(board);
      },
    },
  ],
} satisfies Partial<Record<HttpAction, Probe[]>>;
