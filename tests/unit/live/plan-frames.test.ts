/** Kept frames and value plans in the `setup` room, and the frame a painting belongs to in its own room. */
import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import { declareRoots } from '#server/core/live/document.ts';
import {
  changeCrop,
  type LiveCrop,
  putCrop,
  readCrop,
  readCrops,
  removeCrop,
} from '#server/core/live/plan/crops.ts';
import { frameFits, readFrameId, setFrameId } from '#server/core/live/plan/frame-of-painting.ts';
import { planEntryFits } from '#server/core/live/plan/plan-entries.ts';
import { readValues, setValueCount, setValueCuts } from '#server/core/live/plan/values.ts';

const room = () => declareRoots(new Y.Doc(), 'setup');
const crop = (change: Partial<LiveCrop> = {}): LiveCrop => ({
  ...{ name: 'The lake', pictureId: 'p', box: [0.1, 0.2, 0.7, 0.8], format: '4:3', canvas: null, at: 5 },
  ...change,
});

function exchange(one: Y.Doc, two: Y.Doc): void {
  Y.applyUpdate(two, Y.encodeStateAsUpdate(one));
  Y.applyUpdate(one, Y.encodeStateAsUpdate(two));
}

describe('kept frames', () => {
  it('stand in the order in which they were kept, can be renamed and go', () => {
    const doc = room();
    putCrop(doc, 'late', crop({ at: 9, name: 'The tower' }));
    putCrop(doc, 'early', crop({ at: 2 }));
    expect(readCrops(doc).map(({ id }) => id)).toEqual(['early', 'late']);
    changeCrop(doc, 'late', { name: 'The tower alone' });
    expect(readCrop(doc, 'late')).toEqual({ ...crop({ at: 9, name: 'The tower alone' }), id: 'late' });
    removeCrop(doc, 'early');
    expect(readCrop(doc, 'early')).toBeNull();
    changeCrop(doc, 'early', { name: 'Back again' });
    expect(readCrops(doc)).toHaveLength(1);
  });

  it('of two people at once both stay', () => {
    const [one, two] = [room(), room()];
    putCrop(one, 'a', crop({ at: 1 }));
    putCrop(two, 'b', crop({ at: 2 }));
    exchange(one, two);
    expect(readCrops(one)).toHaveLength(2);
    expect(readCrops(two)).toEqual(readCrops(one));
  });

  it('outside the photograph, inside out or without a name are no entries', () => {
    const fits = (change: Partial<LiveCrop>) => planEntryFits('crop.a', crop(change));
    expect(fits({})).toBe(true);
    expect(fits({ box: [-0.1, 0, 1, 1] })).toBe(false);
    expect(fits({ box: [0.6, 0, 0.4, 1] })).toBe(false);
    expect(fits({ box: [0, Number.NaN, 1, 1] })).toBe(false);
    expect(fits({ name: '' })).toBe(false);
    expect(planEntryFits('crop.', crop())).toBe(false);
    expect(planEntryFits('crop.a', { ...crop(), more: 1 })).toBe(false);
    const doc = room();
    doc.getMap('plan').set('crop.odd', { name: 'odd' });
    expect(readCrops(doc)).toEqual([]);
  });
});

describe('value plans', () => {
  it('keep the number and the cuts of each number by themselves', () => {
    const [one, two] = [room(), room()];
    setValueCount(one, 'p', 3);
    setValueCuts(one, 'p', 2, [48]);
    setValueCuts(two, 'p', 4, [20, 50, 70]);
    setValueCuts(two, 'other', 2, [10]);
    exchange(one, two);
    expect(readValues(two, 'p')).toEqual({
      count: 3,
      cuts: new Map<number, number[]>([
        [2, [48]],
        [4, [20, 50, 70]],
      ]),
    });
    setValueCuts(two, 'p', 4, null);
    expect([...readValues(two, 'p').cuts.keys()]).toEqual([2]);
  });

  it('with cuts that do not rise, too many or too few of them, are no entries', () => {
    expect(planEntryFits('values.p.3', [30, 60])).toBe(true);
    expect(planEntryFits('values.p.3', [60, 30])).toBe(false);
    expect(planEntryFits('values.p.3', [30])).toBe(false);
    expect(planEntryFits('values.p.2', [130])).toBe(false);
    expect(planEntryFits('values.p.6', [10, 20, 30, 40, 50])).toBe(false);
    expect(planEntryFits('values.p.count', 5)).toBe(true);
    expect(planEntryFits('values.p.count', 6)).toBe(false);
  });
});

describe('the frame of a painting', () => {
  it('is named by its id, and the whole photograph where none is', () => {
    const doc = declareRoots(new Y.Doc(), 'painting/x');
    expect(readFrameId(doc)).toBeNull();
    setFrameId(doc, 'a-frame');
    expect(readFrameId(doc)).toBe('a-frame');
    setFrameId(doc, null);
    expect(readFrameId(doc)).toBeNull();
    expect(frameFits('crop', 'a-frame')).toBe(true);
    expect(frameFits('crop', 7)).toBe(false);
    expect(frameFits('other', 'a-frame')).toBe(false);
  });
});
