/** The plan in the `setup` room: wishes, handles, the plan that was taken, which target counts, the plans kept. */
import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import { declareRoots } from '#server/core/live/document.ts';
import type { LiveRung } from '#server/core/live/layout.ts';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { planEntryFits } from '#server/core/live/plan/plan-entries.ts';
import {
  forgetKept,
  type LiveKept,
  MOST_KEPT,
  readKept,
  readPlanToMeasure,
  readTarget,
  renameKept,
  setTarget,
  takeAgain,
  takePlan,
} from '#server/core/live/plan/taken-plan.ts';
import {
  NO_WISHES,
  readHandles,
  readWishes,
  replaceHandles,
  setHandle,
  setWishes,
} from '#server/core/live/plan/wishes.ts';
import { addPlane, removePlane, renamePlane } from '#server/core/live/planes.ts';
import { setupFrom } from '#server/core/live/setup-from.ts';

const room = () => declareRoots(new Y.Doc(), 'setup');

const rung = (name: string, planeId?: string, mid = 60): LiveRung => ({
  ...{ name, dark: mid - 10, mid, light: mid + 10, chroma: 8, strong: 14, warmCool: -2, airDistance: 12 },
  ...(planeId ? { planeId } : {}),
});

const kept = (at: number, change: Partial<LiveKept> = {}): LiveKept => ({
  ...{ at, by: 'ana', name: '', wishes: NO_WISHES, handles: {}, ladder: [rung('ridge', 'p1')] },
  ...change,
});

/** Two documents that have heard everything of one another. */
function exchange(one: Y.Doc, two: Y.Doc): void {
  Y.applyUpdate(two, Y.encodeStateAsUpdate(one));
  Y.applyUpdate(one, Y.encodeStateAsUpdate(two));
}

describe('wishes', () => {
  it('are usual until somebody sets them, each by itself', () => {
    const doc = room();
    expect(readWishes(doc)).toEqual(NO_WISHES);
    setWishes(doc, { air: 'red-violet', count: 4 });
    setWishes(doc, { strength: 1.5 });
    expect(readWishes(doc)).toEqual({ ...NO_WISHES, air: 'red-violet', count: 4, strength: 1.5 });
    setWishes(doc, { air: null });
    expect(readWishes(doc).air).toBeNull();
  });

  it('of two people at once both stay, and so do two parts of one handle', () => {
    const [one, two] = [room(), room()];
    setWishes(one, { strength: 2 });
    setWishes(two, { count: 3 });
    setHandle(one, 'p1', 'dark', 40);
    setHandle(two, 'p1', 'chroma', 0.8);
    exchange(one, two);
    for (const doc of [one, two]) {
      expect(readWishes(doc)).toMatchObject({ strength: 2, count: 3 });
      expect(readHandles(doc)).toEqual(new Map([['p1', { dark: 40, chroma: 0.8 }]]));
    }
  });

  it('that are not well formed are refused, and left out by who reads', () => {
    expect(planEntryFits('wish.air', { L: 80, a: 0, b: -8 })).toBe(true);
    expect(planEntryFits('wish.air', 'photograph')).toBe(true);
    expect(planEntryFits('handle.p1.light', 88)).toBe(true);
    const wrong: [string, unknown][] = [
      ['wish.air', 'puce'],
      ['wish.air', { L: Number.NaN, a: 0, b: 0 }],
      ['wish.count', 0],
      ['wish.strength', -1],
      ['wish.mood', 'calm'],
      ['wish.toString', 'x'],
      ['handle.p1', { dark: 3 }],
      ['handle.p1.dark', 'deep'],
      ['handle.p1.dark', 101],
      ['handle.p1.hue', 30],
      ['handle.a b.dark', 30],
      ['target', 'photograph'],
      ['kept.k', { at: 1 }],
      ['kept.k/1', kept(1)],
      ['ladder', [{ name: 'ridge' }]],
      ['anything', true],
    ];
    const doc = room();
    for (const [key, value] of wrong) {
      expect(planEntryFits(key, value), key).toBe(false);
      doc.getMap('plan').set(key, value);
    }
    expect(readWishes(doc)).toEqual(NO_WISHES);
    expect(readHandles(doc).size).toBe(0);
    expect(readKept(doc)).toEqual([]);
  });

  it('set anew by hand replace what was there, part by part', () => {
    const doc = room();
    setHandle(doc, 'p1', 'dark', 40);
    setHandle(doc, 'p2', 'warmCool', 3);
    replaceHandles(doc, new Map([['p1', { mid: 5 }]]));
    expect(readHandles(doc)).toEqual(new Map([['p1', { mid: 5 }]]));
    setHandle(doc, 'p1', 'mid', null);
    expect(readHandles(doc).size).toBe(0);
  });
});

describe('the target', () => {
  it('is the reference until a plan is taken, then the plan, and whatever is said after', () => {
    const doc = room();
    setTarget(doc, 'plan');
    expect(readTarget(doc)).toBe('reference');
    expect(readPlanToMeasure(doc)).toBeNull();
    takePlan(doc, 'k1', kept(1));
    expect(readTarget(doc)).toBe('plan');
    setTarget(doc, 'reference');
    expect(readTarget(doc)).toBe('reference');
    expect(readPlanToMeasure(doc)).toBeNull();
  });

  it('of a measurement keeps the rung of a plane that is renamed, and of one that went', () => {
    const doc = room();
    for (const id of ['p1', 'p2']) {
      addPlane(doc, { id, name: `plane ${id}`, kind: 'land', tilt: null });
      putReferenceOutline(doc, 'photo', id, [
        [0, 0],
        [1, 0],
        [1, 1],
      ]);
    }
    takePlan(doc, 'k1', kept(1, { ladder: [rung('plane p1', 'p1', 70), rung('plane p2', 'p2', 40)] }));
    renamePlane(doc, 'p1', 'far ridge');
    removePlane(doc, 'p2');
    const painting = declareRoots(new Y.Doc(), 'painting/x');
    const setup = setupFrom({ setup: doc, painting, paintingId: 'x', referenceId: 'photo' });
    expect(setup.plan?.map(({ name, mid }) => [name, mid])).toEqual([
      ['far ridge', 70],
      ['plane p2', 40],
    ]);
    expect(setup.plan?.[0]).not.toHaveProperty('planeId');
  });
});

describe('kept plans', () => {
  it('stand newest first, with who and when, and are taken again with their wishes and handles', () => {
    const doc = room();
    setWishes(doc, { strength: 2 });
    setHandle(doc, 'p1', 'dark', 30);
    const first = kept(1, {
      wishes: { ...NO_WISHES, strength: 2, air: 'warm' },
      handles: { p1: { dark: 30 } },
    });
    takePlan(doc, 'k1', first);
    setWishes(doc, { strength: 0.5, air: 'blue' });
    setHandle(doc, 'p1', 'chroma', 1.2);
    takePlan(doc, 'k2', kept(2, { by: 'bo', ladder: [rung('ridge', 'p1', 75)] }));
    setTarget(doc, 'reference');
    expect(readKept(doc).map(({ id, by }) => [id, by])).toEqual([
      ['k2', 'bo'],
      ['k1', 'ana'],
    ]);
    takeAgain(doc, 'k1');
    expect(readTarget(doc)).toBe('plan');
    expect(readPlanToMeasure(doc)?.[0]?.mid).toBe(60);
    expect(readWishes(doc)).toEqual(first.wishes);
    expect(readHandles(doc)).toEqual(new Map([['p1', { dark: 30 }]]));
    takeAgain(doc, 'gone');
    expect(readPlanToMeasure(doc)?.[0]?.mid).toBe(60);
  });

  it('are named, forgotten, and the oldest goes when there are too many; the taken one stays', () => {
    const doc = room();
    for (let at = 0; at < MOST_KEPT + 3; at++) takePlan(doc, `k${at}`, kept(at));
    expect(readKept(doc).length).toBe(MOST_KEPT);
    expect(readKept(doc).at(-1)?.id).toBe('k3');
    renameKept(doc, 'k9', 'the violet one');
    expect(readKept(doc).find(({ id }) => id === 'k9')?.name).toBe('the violet one');
    for (const { id } of readKept(doc)) forgetKept(doc, id);
    expect(readKept(doc)).toEqual([]);
    expect(readTarget(doc)).toBe('plan');
  });
});
