/** Whole sets of planes: taken as one step, and by two people at the same moment without ever doubling. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { StepHistory } from '#app/_live/step-history.ts';
import { writersFor } from '#app/_live/writers.ts';
import type { Outline } from '#server/core/contract/setup.ts';
import { declareRoots, LOCAL_EDIT } from '#server/core/live/document.ts';
import { readOutlinesOf, readPaintingOutlines, readReferenceOutlines } from '#server/core/live/outlines.ts';
import { readPlanes } from '#server/core/live/planes.ts';
import { readUnreliable } from '#server/core/live/scene.ts';

/** Everything from a height down. */
const below = (top: number): Outline => [
  [0, top],
  [1, top],
  [1, 1],
  [0, 1],
];

function someone(name: string, clientId: number) {
  const setup = declareRoots(new Y.Doc(), 'setup');
  const painting = declareRoots(new Y.Doc(), 'painting/p');
  setup.clientID = clientId;
  painting.clientID = clientId;
  const history = new StepHistory(LOCAL_EDIT, () => undefined);
  history.follow(
    setup,
    ['planes', 'outlines', 'unreliable'].map((root) => setup.getMap(root)),
  );
  history.follow(painting, [painting.getMap('outlines')]);
  const write = writersFor({
    setup: () => setup,
    marks: () => null,
    painting: () => painting,
    isReference: (pictureId) => pictureId !== 'p',
    writer: { personId: name, role: 'teacher', paints: false },
    together: (act) => history.together(act),
  });
  const take = (count: number, pictureId = 'ref') =>
    write.takePlanes(
      pictureId,
      Array.from({ length: count }, (_, at) => ({
        name: `${name} ${at + 1} of ${count}`,
        kind: at === 0 ? ('sky' as const) : ('land' as const),
        outline: below(at / count),
      })),
    );
  const names = () => readPlanes(setup).map((plane) => plane.name);
  return { setup, painting, history, write, take, names };
}

type Someone = ReturnType<typeof someone>;

/** Both rooms of both people, until nobody has anything new. */
async function exchange(one: Someone, two: Someone): Promise<void> {
  for (let round = 0; round < 3; round++) {
    for (const room of ['setup', 'painting'] as const) {
      const [a, b] = [one[room], two[room]];
      const [fromA, fromB] = [
        Y.encodeStateAsUpdate(a, Y.encodeStateVector(b)),
        Y.encodeStateAsUpdate(b, Y.encodeStateVector(a)),
      ];
      Y.applyUpdate(b, fromA, 'line');
      Y.applyUpdate(a, fromB, 'line');
    }
    await Promise.resolve();
  }
}

const set = (name: string, count: number) =>
  Array.from({ length: count }, (_, at) => `${name} ${at + 1} of ${count}`);

describe('a set of planes', () => {
  test('takes the place of the planes that were there, with outlines, and one undo brings all of them back', () => {
    const ada = someone('Ada', 1);
    const sky = ada.write.addPlane({ name: 'Sky', kind: 'sky' });
    ada.write.setOutline('ref', sky, below(0));
    ada.write.setUnreliable(sky, 'blown out');
    const ids = ada.take(3);
    expect(ada.names()).toEqual(set('Ada', 3));
    expect([...readReferenceOutlines(ada.setup).keys()].sort()).toEqual(ids.map((id) => `ref/${id}`).sort());
    ada.history.undo();
    expect(ada.names()).toEqual(['Sky']);
    expect([...readReferenceOutlines(ada.setup).keys()]).toEqual([`ref/${sky}`]);
    expect(readUnreliable(ada.setup).get(sky)).toBe('blown out');
    ada.history.redo();
    expect(ada.names()).toEqual(set('Ada', 3));
  });

  test('of a painting from life goes into two rooms and is still one step', () => {
    const ada = someone('Ada', 1);
    const ids = ada.take(4, 'p');
    expect([...readPaintingOutlines(ada.painting).keys()].sort()).toEqual([...ids].sort());
    ada.history.undo();
    expect(ada.names()).toEqual([]);
    expect(readPaintingOutlines(ada.painting).size).toBe(0);
    expect(ada.history.canUndo).toBe(false);
    ada.history.redo();
    expect(ada.names()).toEqual(set('Ada', 4));
    expect(readPaintingOutlines(ada.painting).size).toBe(4);
  });

  test('takes further planes by hand, which stay when somebody renames or moves them', async () => {
    const [ada, bo] = [someone('Ada', 1), someone('Bo', 2)];
    const [first = ''] = ada.take(2);
    await exchange(ada, bo);
    bo.write.addPlane({ name: 'Poplars', kind: 'wood' });
    ada.write.changePlane(first, { name: 'Evening sky' });
    await exchange(ada, bo);
    expect(ada.names()).toEqual(['Evening sky', 'Ada 2 of 2', 'Poplars']);
    expect(bo.names()).toEqual(ada.names());
  });

  test('that is refused for one outline leaves everything as it was', () => {
    const ada = someone('Ada', 1);
    ada.take(3);
    const crossing: Outline = [
      [0, 0],
      [1, 1],
      [1, 0],
      [0, 1],
    ];
    expect(() =>
      ada.write.takePlanes('ref', [
        { name: 'Sky', kind: 'sky', outline: below(0) },
        { name: 'Knot', kind: 'land', outline: crossing },
      ]),
    ).toThrow(/'Knot' crosses itself/);
    expect(ada.names()).toEqual(set('Ada', 3));
  });
});

describe('two people who take a set at the same moment', () => {
  for (const [first, second] of [
    [1, 2],
    [2, 1],
  ] as const) {
    test(`end with the whole of one of them (${first} against ${second})`, async () => {
      const [ada, bo] = [someone('Ada', first), someone('Bo', second)];
      ada.take(4);
      bo.take(5);
      await exchange(ada, bo);
      expect(ada.names()).toEqual(bo.names());
      expect([set('Ada', 4), set('Bo', 5)]).toContainEqual(ada.names());
      const outlined = readOutlinesOf(ada.setup, 'ref');
      expect(readPlanes(ada.setup).every(({ id }) => outlined.has(id))).toBe(true);
    });
  }

  test('and both take theirs back, which brings the planes of before, each once', async () => {
    const [ada, bo] = [someone('Ada', 1), someone('Bo', 2)];
    ada.take(2);
    await exchange(ada, bo);
    ada.take(4);
    bo.take(5);
    await exchange(ada, bo);
    ada.history.undo();
    await exchange(ada, bo);
    expect([set('Ada', 2), set('Bo', 5)]).toContainEqual(ada.names());
    bo.history.undo();
    await exchange(ada, bo);
    expect(ada.names()).toEqual(set('Ada', 2));
    expect(bo.names()).toEqual(set('Ada', 2));
  });

  test('find nothing of the set that lost once the other is deleted plane by plane', async () => {
    const [ada, bo] = [someone('Ada', 1), someone('Bo', 2)];
    ada.take(3);
    bo.take(2);
    await exchange(ada, bo);
    for (const { id } of readPlanes(bo.setup)) bo.write.deletePlane(id);
    await exchange(ada, bo);
    expect(ada.names()).toEqual([]);
    expect(readReferenceOutlines(ada.setup).size).toBe(0);
  });

  test('and lay outlines for the planes that are there end with the outlines of one of them', async () => {
    const [ada, bo] = [someone('Ada', 1), someone('Bo', 2)];
    const ids = ada.take(3);
    await exchange(ada, bo);
    // Earlier moves must not be taken for a crossing afterwards.
    ada.write.setOutline('ref', ids[1] ?? '', below(0.4));
    await exchange(ada, bo);
    const lay = (who: Someone, shift: number) =>
      who.write.layOutlines('ref', new Map(ids.map((id, at) => [id, below(at / 3 + shift)])));
    lay(ada, 0.05);
    lay(bo, 0.1);
    await exchange(ada, bo);
    const tops = ids.map((id, at) => (readOutlinesOf(ada.setup, 'ref').get(id)?.[0]?.[1] ?? 0) - at / 3);
    expect(Math.max(...tops) - Math.min(...tops)).toBeLessThan(1e-9);
    expect(readReferenceOutlines(ada.setup)).toEqual(readReferenceOutlines(bo.setup));
  });

  test('never see planes of two sets, whatever they take, take back and exchange', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.record({ ada: fc.boolean(), act: fc.constantFrom('take', 'undo', 'redo', 'exchange') }), {
          maxLength: 14,
        }),
        async (acts) => {
          const people = [someone('Ada', 1), someone('Bo', 2)] as const;
          for (const [turn, { ada, act }] of acts.entries()) {
            const who = people[ada ? 0 : 1];
            if (act === 'take') who.take(2 + (turn % 4));
            else if (act === 'exchange') await exchange(...people);
            else who.history[act]();
            for (const person of people) expect(oneWholeSet(person)).toBe(true);
          }
          await exchange(...people);
          expect(people[0].names()).toEqual(people[1].names());
        },
      ),
      { numRuns: 60 },
    );
  });
});

/** Whether all planes came with one taking, all of it. */
function oneWholeSet(person: Someone): boolean {
  const planes = readPlanes(person.setup);
  const count = Number(planes[0]?.name.split(' of ')[1] ?? 0);
  return planes.length === count && new Set(planes.map((plane) => plane.set)).size <= 1;
}
