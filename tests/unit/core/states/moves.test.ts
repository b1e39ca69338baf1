/**
 * How much of an advised move was made, on states painted and photographed by code: nothing claimed where nothing changed,
 * and the right words where planes were lifted by known shares of what the card asked for.
 */
import { describe, expect, test } from 'vitest';
import { changesBetweenStates } from '#server/core/states/moves/changes.ts';
import { movesMade } from '#server/core/states/moves/moves-made.ts';
import { painted, stateOf, subjectOf } from '#tests/fixtures/states/stated.ts';

const GRADES = ['A', 'B', 'C'] as const;
const quiet = ['none', 'small'];

describe('a painting that was not touched', { timeout: 300_000 }, () => {
  test.each(Array.from({ length: 20 }, (_, at) => at))(
    'claims no change when shot again: %i of 20',
    async (at) => {
      const subject = subjectOf(7200 + at);
      // A far plane too dark and the nearest too light, so that there are cards to be judged.
      const last = subject.faithful.planes.length - 1;
      const picture = painted(
        subject,
        new Map([
          [1, -14],
          [last, at % 2 === 0 ? 0 : 9],
        ]),
      );
      const earlier = await stateOf(subject, picture, {
        ...{ seed: 100 + at, grade: GRADES[at % 3] ?? 'A', cornerHand: 0.003 },
      });
      const later = await stateOf(subject, picture, {
        ...{ seed: 600 + at, grade: GRADES[(at + (at % 2)) % 3] ?? 'A', cornerHand: 0.003 },
        ...{ blurPx: at % 4 === 0 ? 1 : 0, noiseCodes: at % 3 === 0 ? 2 : 0 },
      });
      const moves = movesMade(earlier.document, later.document).flatMap((card) => card.moves);
      const claimed = moves.filter(({ key, verdict }) => key !== null && !quiet.includes(verdict));
      expect(claimed).toEqual([]);
      expect(changesBetweenStates(earlier.document, later.document)).toEqual([]);
    },
  );
});

describe('a plane that was painted as the card asked', { timeout: 300_000 }, () => {
  const cases = [
    [0.5, 'half'],
    [1, 'all'],
    [2.2, 'past'],
    [-1, 'other-way'],
    [0, 'none'],
  ] as const;
  test.each(cases.flatMap(([share, word]) => [1, 3].map((at) => [share, word, at] as const)))(
    'by %f of it: %s (scene %i)',
    async (share, word, at) => {
      const subject = subjectOf(7200 + at);
      const wrong = -18;
      const shot = { grade: 'A' as const, cornerHand: 0.001 };
      const before = painted(subject, new Map([[1, wrong]]));
      const earlier = await stateOf(subject, before, { seed: 40 + at, ...shot });
      const lifting = earlier.document.cards?.find(({ plane }) => plane === subject.setup.planes[1]?.name);
      const lift = lifting?.actions.find(
        ({ part, direction }) => part === 'whole' && direction === 'lift',
      )?.amountL;
      if (!lifting || !lift) throw new Error('The card that lifts the far plane is missing.');
      const after = painted(subject, new Map([[1, wrong + share * lift]]));
      const later = await stateOf(subject, after, { seed: 340 + at, ...shot });
      const [verdict] = movesMade(earlier.document, later.document)
        .filter(({ card }) => card === lifting.id)
        .flatMap(({ moves }) => moves)
        .filter(({ words }) => words.startsWith('whole plane: lift'))
        .map((move) => move.verdict);
      expect(verdict).toBe(word);
    },
  );

  test('is told among the changes, with the others left alone', async () => {
    const subject = subjectOf(7203);
    const shot = { grade: 'B' as const, cornerHand: 0.001 };
    const earlier = await stateOf(subject, painted(subject, new Map()), { seed: 5, ...shot });
    const later = await stateOf(subject, painted(subject, new Map([[2, 20]])), { seed: 6, ...shot });
    const changes = changesBetweenStates(earlier.document, later.document);
    const name = subject.setup.planes[2]?.name;
    expect(changes.filter(({ key }) => key === 'mid').map(({ plane }) => plane)).toEqual([name]);
    expect(changes.find(({ key }) => key === 'mid')?.by).toBeGreaterThan(12);
  });
});

describe('a document without doubt or without its plane', () => {
  test('is not judged', async () => {
    const subject = subjectOf(7203);
    const shot = { seed: 5, grade: 'A' as const, cornerHand: 0.001 };
    const { document } = await stateOf(subject, painted(subject, new Map([[1, -18]])), shot);
    const bare = {
      ...document,
      planes: document.planes.map((plane) => ({ ...plane, painting: { ...plane.painting, doubt: {} } })),
    };
    expect(
      movesMade(document, bare)
        .flatMap(({ moves }) => moves)
        .filter(({ key }) => key !== null),
    ).toEqual([]);
    expect(
      movesMade(document, { ...document, planes: [] })
        .flatMap(({ moves }) => moves)
        .filter(({ key }) => key),
    ).toEqual([]);
    expect(changesBetweenStates(document, bare)).toEqual([]);
  });
});
