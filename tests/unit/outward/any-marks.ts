/** Marks of every kind drawn at random, the board that marks come onto, and the standard's own files. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { MARK_KINDS } from '#server/core/live/layout.ts';
import { MARK_POINTS } from '#server/core/live/mark-kinds.ts';
import type { Mark } from '#server/core/live/marks.ts';
import type { OntoBoard } from '#server/core/outward/annotations/onto-board.ts';
import { toAnnotations } from '#server/core/outward/annotations/to-annotations.ts';
import { STANDARD_CONTEXT } from '#server/core/outward/annotations/vocabulary.ts';

export const FIXTURES = fileURLToPath(new URL('../../fixtures/annotations/', import.meta.url));
export const context = JSON.parse(readFileSync(`${FIXTURES}anno.jsonld`, 'utf8')) as object;
export const model = (name: string): unknown =>
  JSON.parse(readFileSync(`${FIXTURES}model/${name}.json`, 'utf8'));

/** The standard's context from the fixture; anything else would have to be fetched and fails. */
export const documentLoader = async (url: string) => {
  if (url !== STANDARD_CONTEXT) throw new Error(`Nothing is fetched in tests: ${url}`);
  return { contextUrl: undefined, documentUrl: url, document: context };
};

export const SIZE = { width: 2560, height: 1707 };
export const NOW = 1_764_440_000_000;

export function onto(changes: Partial<OntoBoard> = {}): OntoBoard {
  let made = 0;
  return {
    ...{ boardId: 'b-1', authorId: 'taker', onto: null, nowMs: NOW, marks: new Map() },
    pictures: new Map([
      ['pic-1', SIZE],
      ['pic-2', { width: 640, height: 480 }],
    ]),
    planes: new Map([
      ['plane-a', 'Far ridge'],
      ['plane-b', 'Meadow'],
    ]),
    newId: () => `new-${++made}`,
    ...changes,
  };
}

export function sent(marks: readonly Mark[]) {
  const { pictures: sizes, planes } = onto();
  const names = new Map([
    ['pelle', 'Pelle'],
    ['odile', 'Odile'],
  ]);
  return toAnnotations({
    origin: 'https://board.example.org',
    boardId: 'b-1',
    title: 'Weir',
    marks,
    names,
    sizes,
    planes,
  });
}

export const share = fc.double({ min: 0, max: 1, noNaN: true });
export const point = fc.oneof(fc.tuple(share, share), fc.tuple(share, share, share));
export const words = fc.string({ unit: 'grapheme', maxLength: 200 });
export const anyMark = (at: number): fc.Arbitrary<Mark> =>
  fc
    .record({ kind: fc.constantFrom(...MARK_KINDS.filter((kind) => kind !== 'reply')), words })
    .chain(({ kind, words: text }) =>
      fc.record({
        ...{ id: fc.constant(`m-${at}`), kind: fc.constant(kind), text: fc.constant(text) },
        author: fc.constantFrom('pelle', 'odile'),
        pictureId: fc.constantFrom('pic-1', 'pic-2'),
        points: fc.array(point, {
          minLength: MARK_POINTS[kind][0],
          maxLength: Math.min(MARK_POINTS[kind][1], 12),
        }),
        planeId: fc.constantFrom('plane-a', 'plane-b', null),
        parent: fc.constant(null),
        at: fc.integer({ min: 0, max: 4_000_000_000_000 }),
        ...(kind === 'sketch'
          ? {
              paint: fc.record({
                hex: fc.constantFrom('#a0b1c2', '#000000'),
                width: fc.double({ min: 0.001, max: 0.2, noNaN: true }),
                opacity: fc.double({ min: 0.05, max: 1, noNaN: true }),
              }),
            }
          : {}),
        ...(kind === 'patch'
          ? {
              patch: fc.record({
                lab: fc.record({
                  L: fc.double({ min: 0, max: 100, noNaN: true }),
                  a: fc.double({ min: -90, max: 90, noNaN: true }),
                  b: fc.constant(-3.25),
                }),
                trust: fc.constantFrom('exact' as const, 'A' as const, 'B' as const, 'C' as const),
              }),
            }
          : {}),
      }),
    ) as fc.Arbitrary<Mark>;
export const someMarks = fc
  .integer({ min: 1, max: 6 })
  .chain((count) =>
    fc.tuple(
      ...Array.from({ length: count }, (_, at) => anyMark(at)),
      fc.array(
        fc.tuple(
          fc.nat(count - 1),
          words.filter((text) => text !== ''),
        ),
        { maxLength: 3 },
      ),
    ),
  )
  .map((drawn): Mark[] => {
    const marks = drawn.slice(0, -1) as Mark[];
    const replies = (drawn.at(-1) as [number, string][]).map(([to, text], at): Mark => {
      const parent = marks[to] as Mark;
      const said = { author: 'odile', pictureId: parent.pictureId, kind: 'reply' as const, points: [], text };
      return { id: `r-${at}`, ...said, planeId: null, parent: parent.id, at: 5 };
    });
    return [...marks, ...replies];
  });
