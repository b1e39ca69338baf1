/** The pure parts of marking: what a kind is made of, nods, filters, places in words, a sample's reading. */
import { formatHex, lch } from 'culori';
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import {
  byState,
  EVERYTHING,
  isNarrowed,
  passes,
  personShown,
  withEveryone,
  withNoOne,
  withOnly,
  withPerson,
} from '#app/_marks/mark-filter.ts';
import { arrowPath, spotWords } from '#app/_marks/mark-shape.ts';
import { readingWords } from '#app/_talk/patch-words.tsx';
import { declareRoots, documentFrom } from '#server/core/live/document.ts';
import { MARK_KINDS, ROOT_KEYS } from '#server/core/live/layout.ts';
import { MARK_POINTS } from '#server/core/live/mark-kinds.ts';
import { markPlace } from '#server/core/live/mark-place.ts';
import { type Mark, putMark, readMarks } from '#server/core/live/marks.ts';
import { readNods, setNod } from '#server/core/live/nods.ts';
import { markState } from '#server/core/live/remarks.ts';
import { greyOf } from '#server/core/look/nine-steps.ts';
import { patchReading, trustNow } from '#server/core/look/patch-reading.ts';
import { markWords } from '#words/marks.ts';

const base = { author: 'ben', pictureId: 'p', text: '', planeId: null, parent: null, at: 1 };
const path = (count: number): Mark['points'] =>
  Array.from({ length: count }, (_, at) => [at / 4000, 0.5] as [number, number]);
const extras = {
  sketch: { paint: { hex: '#101010', width: 0.02, opacity: 1 } },
  patch: { patch: { lab: { L: 50, a: 1, b: 2 }, trust: 'A' as const } },
};

describe('kinds of marks', () => {
  test.each(MARK_KINDS)('%s has no fewer and no more points than it may', (kind) => {
    const [least, most] = MARK_POINTS[kind];
    const extra = kind === 'sketch' || kind === 'patch' ? extras[kind] : {};
    const parent = kind === 'reply' ? { parent: 'm' } : {};
    const doc = declareRoots(new Y.Doc(), 'marks');
    const put = (count: number) =>
      putMark(doc, { ...base, id: 'm', kind, points: path(count), ...extra, ...parent });
    put(least);
    put(most);
    expect(readMarks(doc)).toHaveLength(1);
    expect(() => put(most + 1)).toThrow(/cannot be kept/);
    if (least > 0) expect(() => put(least - 1)).toThrow(/cannot be kept/);
  });

  test('a document from before there were more kinds reads as before', () => {
    const old = new Y.Doc();
    const entry = new Y.Map<unknown>(Object.entries({ ...base, kind: 'pin', points: [[0.5, 0.5]] }));
    entry.set('text', new Y.Text('soften'));
    old.getMap('marks').set('old', entry);
    const doc = documentFrom('marks', [Y.encodeStateAsUpdate(old)]);
    expect(readMarks(doc)).toEqual([
      { ...base, id: 'old', kind: 'pin', points: [[0.5, 0.5]], text: 'soften' },
    ]);
    expect([...doc.share.keys()].sort()).toEqual([...ROOT_KEYS.marks].sort());
  });
});

describe('nods', () => {
  test('are names by mark; two at once both stay, and only one’s own is taken back', () => {
    const [one, two] = [declareRoots(new Y.Doc(), 'marks'), declareRoots(new Y.Doc(), 'marks')];
    setNod(one, 'm', 'ada', true);
    setNod(two, 'm', 'ben', true);
    Y.applyUpdate(one, Y.encodeStateAsUpdate(two));
    expect(readNods(one)).toEqual(new Map([['m', ['ada', 'ben']]]));
    setNod(one, 'm', 'ada', false);
    expect(readNods(one)).toEqual(new Map([['m', ['ben']]]));
  });

  test('are said as names and never as a number', () => {
    const { agree } = markWords;
    expect(agree(false, ['Tove'])).toBe('Tove agrees');
    expect(agree(true, [])).toBe('You agree');
    const many = agree(true, ['Mina', 'Pelle', 'Tove', 'Ulf', 'Vera']);
    expect(many).toBe('You, Mina, Pelle, Tove, Ulf and Vera agree');
    expect(many).not.toMatch(/\d/);
  });
});

describe('whose and which', () => {
  const mark = { author: 'ben', planeId: 'ridge' };
  test('all, none, only one, all but one', () => {
    const shown = (filter: typeof EVERYTHING) =>
      ['ada', 'ben', 'new'].filter((id) => personShown(filter, id));
    expect(shown(EVERYTHING)).toEqual(['ada', 'ben', 'new']);
    expect(shown(withPerson(EVERYTHING, 'ben', false))).toEqual(['ada', 'new']);
    expect(shown(withOnly(EVERYTHING, 'ben'))).toEqual(['ben']);
    expect(shown(withPerson(withOnly(EVERYTHING, 'ben'), 'ada', true))).toEqual(['ada', 'ben']);
    expect(shown(withNoOne(EVERYTHING))).toEqual([]);
    expect(shown(withEveryone(withOnly(EVERYTHING, 'ben')))).toEqual(['ada', 'ben', 'new']);
    expect(isNarrowed(withEveryone(withNoOne(EVERYTHING)))).toBe(false);
  });
  test('by plane and state together', () => {
    expect(passes({ ...EVERYTHING, plane: 'ridge', state: 'open' }, mark, 'open')).toBe(true);
    expect(passes({ ...EVERYTHING, plane: 'ridge', state: 'done' }, mark, 'open')).toBe(false);
    expect(passes({ ...EVERYTHING, plane: 'none' }, mark, 'open')).toBe(false);
    expect(passes({ ...EVERYTHING, plane: 'none' }, { ...mark, planeId: null }, 'open')).toBe(true);
  });
  test('open ones first, within a state as they came', () => {
    const items = ['done', 'open', 'declined', 'open', 'tried'] as const;
    expect(byState([...items.entries()], ([, state]) => state).map(([at]) => at)).toEqual([1, 3, 4, 0, 2]);
  });
  test('what a card alone can be answered with leaves a mark open', () => {
    const answer = (state: 'accepted' | 'done') => ({ state, words: '', about: [] });
    expect([markState(undefined), markState(answer('accepted')), markState(answer('done'))]).toEqual([
      'open',
      'open',
      'done',
    ]);
  });
});

describe('the place of a mark', () => {
  const three: Mark['points'] = [
    [0.1, 0.1],
    [0.3, 0.1],
    [0.2, 0.4],
  ];
  test('is an arrow’s head, a line’s middle, the middle of a loop', () => {
    expect(markPlace('arrow', three.slice(0, 2))).toEqual([0.3, 0.1]);
    expect(markPlace('stroke', three)).toEqual([0.3, 0.1]);
    const [x, y] = markPlace('outline', three) ?? [0, 0];
    expect([x, y]).toEqual([expect.closeTo(0.2, 9), expect.closeTo(0.2, 9)]);
    expect(markPlace('reply', [])).toBeNull();
  });
  test('is said by thirds of the picture', () => {
    expect(spotWords([0.1, 0.1])).toBe('upper left');
    expect(spotWords([0.5, 0.5])).toBe('in the middle');
    expect(spotWords([0.99, 1])).toBe('lower right');
  });
  test('an arrow’s two lines lie behind its head, as long as each other', () => {
    const numbers = (arrowPath([0.2, 0.5], [0.6, 0.2], 0.75).match(/-?[\d.]+/g) ?? []).map(Number);
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0, ax = 0, ay = 0, , , bx = 0, by = 0] = numbers;
    const lengths = [Math.hypot(ax - x1, ay - y1), Math.hypot(bx - x1, by - y1)];
    expect(lengths[0]).toBeCloseTo(lengths[1] ?? Number.NaN, 0);
    for (const [x, y] of [
      [ax, ay],
      [bx, by],
    ] as const) {
      expect((x - x1) * (x0 - x1) + (y - y1) * (y0 - y1)).toBeGreaterThan(0);
    }
  });
});

describe('a sample of colour', () => {
  const lab = { L: 52.25, a: -3.5, b: 12.2 };

  test('has the chroma and hue that culori finds for the same L*, a*, b* (CIE 15)', () => {
    const truth = lch({ mode: 'lab', l: lab.L, a: lab.a, b: lab.b });
    const reading = patchReading(lab, 'exact');
    expect(reading?.chroma.amount).toBeCloseTo(truth.c, 9);
    expect(reading?.hueDeg?.amount).toBe(Math.round(truth.h ?? Number.NaN));
    expect(reading?.hueDeg?.off).toBe(0);
  });

  test('says less the less its photo can be trusted, and at grade C no figure at all', () => {
    const [a, b] = [patchReading(lab, 'A'), patchReading(lab, 'B')];
    expect(a?.lightness.off).toBeLessThan(b?.lightness.off ?? 0);
    expect((a?.hueDeg?.amount ?? 1) % 5).toBe(0);
    expect((b?.hueDeg?.amount ?? 1) % 10).toBe(0);
    expect(patchReading(lab, 'C')).toBeNull();
    expect(readingWords({ lab }, 'C')).not.toMatch(/\d/);
    expect(readingWords({ lab }, 'A')).toMatch(
      /^value 5\.2 ± 0\.3, L\* 52 ± 3, chroma 13 ± 5, hue 105° ± \d+°/,
    );
  });

  test('has no hue where its chroma is within its own doubt', () => {
    expect(patchReading({ L: 50, a: 1, b: 2 }, 'exact')?.hueDeg).toBeNull();
    expect(patchReading({ L: 50, a: 3, b: 5 }, 'exact')?.hueDeg).not.toBeNull();
    expect(patchReading({ L: 50, a: 3, b: 5 }, 'B')?.hueDeg).toBeNull();
  });

  test('is trusted no farther than when it was taken and than its photo is today', () => {
    expect([trustNow('C', 'A'), trustNow('A', 'B'), trustNow('A', null), trustNow('exact', 'exact')]).toEqual(
      ['C', 'B', 'A', 'exact'],
    );
  });

  test('greys to paint with are neutral: culori reads the same hex back', () => {
    for (const value of [1, 3, 5, 7, 9]) expect(formatHex(greyOf(value * 10))).toBe(greyOf(value * 10));
  });
});
