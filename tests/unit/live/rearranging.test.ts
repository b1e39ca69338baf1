/** Steps of rearranging as they live with the board: what fits, their order, putting off, the photograph as it was. */
import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import type { Motif } from '#server/core/contract/rearranging.ts';
import { documentFrom } from '#server/core/live/document.ts';
import { planEntryFits } from '#server/core/live/plan/plan-entries.ts';
import {
  changeStep,
  hasRoomForStep,
  putBend,
  putMotif,
  readRearranging,
  readSteps,
  removeStep,
  setAsItWas,
} from '#server/core/live/plan/rearranging.ts';
import { aBend, aMotif } from '../plan/rearrange/painted.ts';

const BOX = [0.2, 0.2, 0.4, 0.5] as const;
const setup = () => documentFrom('setup', []);

describe('steps of rearranging', () => {
  it('are read in their order, of their own photograph alone', () => {
    const doc = setup();
    putMotif(doc, 'b', aMotif(BOX, { order: 'M', name: 'Second' }));
    putBend(doc, 'a', aBend({ order: 'D', name: 'First' }));
    putMotif(doc, 'c', aMotif(BOX, { pictureId: 'another' }));
    expect(readSteps(doc, 'photograph').map(({ name }) => name)).toEqual(['First', 'Second']);
  });

  it('that are put off are kept and not done, and with the photograph as it was none is', () => {
    const doc = setup();
    putMotif(doc, 'm', aMotif(BOX));
    putBend(doc, 'b', aBend());
    const [bend, motif] = readSteps(doc, 'photograph');
    if (!bend || !motif) throw new Error('A step is missing.');
    changeStep(doc, bend, { off: true });
    expect(readRearranging(doc, 'photograph')).toMatchObject({ motifs: [{ name: 'Motif' }], bends: [] });
    setAsItWas(doc, 'photograph', true);
    expect(readRearranging(doc, 'photograph')).toEqual({ motifs: [], bends: [] });
    setAsItWas(doc, 'photograph', false);
    removeStep(doc, motif);
    expect(readSteps(doc, 'photograph')).toHaveLength(1);
    changeStep(doc, motif, { off: true });
    expect(readSteps(doc, 'photograph')).toHaveLength(1);
  });

  it('of two people at once are both kept', () => {
    const [one, other] = [setup(), setup()];
    putMotif(one, 'mine', aMotif(BOX, { name: 'Mine' }));
    putBend(other, 'yours', aBend({ name: 'Yours' }));
    Y.applyUpdate(one, Y.encodeStateAsUpdate(other));
    expect(
      readSteps(one, 'photograph')
        .map(({ name }) => name)
        .sort(),
    ).toEqual(['Mine', 'Yours']);
  });

  it('keep what was changed meanwhile: a hand writes only what it changes', () => {
    const doc = setup();
    putMotif(doc, 'm', aMotif(BOX));
    const [held] = readSteps(doc, 'photograph');
    if (!held) throw new Error('The step is missing.');
    changeStep(doc, held, { name: 'The tower' });
    changeStep(doc, held, { off: true });
    expect(readSteps(doc, 'photograph')).toMatchObject([{ name: 'The tower', off: true }]);
  });

  it('are counted, so that a board never holds more than it can show', () => {
    const doc = setup();
    for (let at = 0; at < 60; at++) putBend(doc, `b${at}`, aBend());
    expect(hasRoomForStep(doc)).toBe(false);
  });

  it.each<[string, Partial<Motif> & Record<string, unknown>]>([
    ['moved out of all bounds', { move: [2, 0] }],
    ['of no size', { scale: 0 }],
    [
      'with two points',
      {
        outline: [
          [0, 0],
          [1, 1],
        ],
      },
    ],
    ['with more than it says', { secret: 1 }],
    ['without a name', { name: '' }],
  ])('are refused when malformed: %s', (_, change) => {
    expect(planEntryFits('motif.m', { ...aMotif(BOX), ...change })).toBe(false);
  });

  it('fit as they are', () => {
    expect(planEntryFits('motif.m', aMotif(BOX))).toBe(true);
    expect(planEntryFits('bend.b', aBend())).toBe(true);
    expect(planEntryFits('asItWas.p', true)).toBe(true);
    expect(planEntryFits('asItWas.p', false)).toBe(false);
    expect(planEntryFits('bend.b', aMotif(BOX))).toBe(false);
  });
});
