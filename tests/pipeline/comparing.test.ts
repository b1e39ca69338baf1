/** States laid on one another on real parts: a worker thread, PGlite, live documents as rooms store them. */
import sharp from 'sharp';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import type { ComparedFacts, StatePair } from '#server/core/contract/states.ts';
import { setCards, setCorners } from '#server/core/live/painting.ts';
import { type Comparer, createComparer } from '#server/pipeline/comparer.ts';
import { createRunner, type Runner } from '#server/pipeline/runner.ts';
import { newestMeasures } from '#server/store/measures.ts';
import { pngOf } from '#tests/fixtures/states/posted.ts';
import type { Reshot } from '#tests/fixtures/states/reshoot.ts';
import { reshot } from '#tests/fixtures/states/reshoot.ts';
import { painted, subjectOf } from '#tests/fixtures/states/stated.ts';
import { type AStore, openAStore } from '#tests/helpers/a-store.ts';
import { type ABoard, aBoard } from './a-board.ts';

const PATIENT = { timeout: 180_000, interval: 100 };
const TEST_MS = 400_000;
const HAND = { grade: 'A', cornerHand: 0.003 } as const;

let store: AStore;
let board: ABoard;
let runner: Runner;
let comparer: Comparer;
let troubles: unknown[];

beforeAll(async () => {
  store = await openAStore();
});
afterAll(() => store.close());
beforeEach(async () => {
  troubles = [];
  board = await aBoard();
  runner = await createRunner({ onResult: () => undefined, quietMs: 20 });
  comparer = createComparer((thrown) => void troubles.push(thrown));
});
afterEach(async () => {
  await Promise.all([runner.stop(), comparer.stop()]);
  expect(troubles).toEqual([]);
});

async function posted({ photo, correction }: Reshot, follows?: string): Promise<string> {
  const fields = { kind: 'painting' as const, ...(follows ? { follows } : {}) };
  const incoming = await board.upload(await pngOf(photo), fields, 'state.png');
  const { id } = await runner.takeInPicture(incoming);
  await board.write(`painting/${id}`, (doc) => {
    setCorners(doc, correction.corners ?? null);
    setCards(doc, correction.cards ?? null);
  });
  return id;
}

async function compared(pair: StatePair): Promise<ComparedFacts> {
  return vi.waitFor(async () => {
    const facts = await comparer.compared(pair);
    if ('pending' in facts) throw new Error(facts.pending);
    return facts;
  }, PATIENT);
}

const pairOf = (earlierId: string, laterId: string): StatePair => ({
  boardId: board.boardId,
  earlierId,
  laterId,
});

describe('a state and the next one', () => {
  test(
    'lie on one another, with pictures of both and of the change, and are not worked out twice',
    async () => {
      const subject = subjectOf(7203);
      const one = await reshot(painted(subject, new Map()), { seed: 1, ...HAND });
      const two = await reshot(painted(subject, new Map([[2, 20]])), { seed: 2, ...HAND });
      const earlierId = await posted(one);
      const pair = pairOf(earlierId, await posted(two, earlierId));
      expect(await comparer.compared(pair)).toHaveProperty('pending');
      const facts = await compared(pair);
      expect(facts.trouble).toBeNull();
      expect(facts.shown?.lighter).toBeGreaterThan(0.05);
      expect(facts.shown?.darker).toBeLessThan(0.01);
      const [before, after, change] = await Promise.all(
        (['before', 'after', 'change'] as const).map(async (which) =>
          sharp(await comparer.picture(pair, which)).metadata(),
        ),
      );
      expect([before?.format, after?.format, change?.format]).toEqual(['jpeg', 'jpeg', 'png']);
      expect([after?.width, after?.height]).toEqual([before?.width, before?.height]);
      // Measures of the picture are its own: what was compared does not stand in their place.
      expect(await newestMeasures([pair.laterId])).toEqual(new Map());

      const afresh = createComparer((thrown) => void troubles.push(thrown));
      expect(await afresh.compared(pair)).toEqual(facts);
      await afresh.stop();
    },
    TEST_MS,
  );

  test(
    'of another painting are not compared, and say why',
    async () => {
      const [one, two] = await Promise.all(
        [9100, 9301].map((seed) => reshot(painted(subjectOf(seed), new Map()), { seed, ...HAND })),
      );
      if (!one || !two) throw new Error('Two were asked for.');
      const earlierId = await posted(one);
      const pair = pairOf(earlierId, await posted(two, earlierId));
      expect((await compared(pair)).trouble).toMatch(/\d+ % of it agrees/);
      await expect(comparer.picture(pair, 'change')).rejects.toMatchObject({ code: 'states-apart' });
    },
    TEST_MS,
  );

  test(
    'that is not there is refused',
    async () => {
      await expect(comparer.compared(pairOf('nothing', 'nowhere'))).rejects.toMatchObject({
        code: 'picture-not-found',
      });
    },
    TEST_MS,
  );
});
