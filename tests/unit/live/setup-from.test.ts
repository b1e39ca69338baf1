import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { Setup } from '#server/core/contract/setup.ts';
import { declareRoots } from '#server/core/live/document.ts';
import { putPaintingOutline, putReferenceOutline } from '#server/core/live/outlines.ts';
import { readPhoto, setCards, setCorners, setFocus, setMeant, setSize } from '#server/core/live/painting.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { setAir, setCondition, setUnreliable } from '#server/core/live/scene.ts';
import { setupFrom } from '#server/core/live/setup-from.ts';

type Points = [number, number][];
const SKY: Points = [
  [0, 0],
  [1, 0],
  [1, 0.4],
  [0, 0.4],
];
const RIDGE: Points = [
  [0, 0.3],
  [1, 0.3],
  [1, 0.6],
];
const PAINTED: Points = [
  [0.1, 0.1],
  [0.9, 0.1],
  [0.9, 0.5],
];
const CORNERS: [[number, number], [number, number], [number, number], [number, number]] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

function scene() {
  const setup = declareRoots(new Y.Doc(), 'setup');
  const painting = declareRoots(new Y.Doc(), 'painting/two');
  addPlane(setup, { id: 'ridge', name: 'far ridge', kind: 'land', tilt: 'upright' });
  addPlane(setup, { id: 'sky', name: 'sky', kind: 'sky', tilt: null }, 0);
  addPlane(setup, { id: 'meadow', name: 'meadow', kind: 'land', tilt: 'flat' });
  putReferenceOutline(setup, 'one', 'sky', SKY);
  putReferenceOutline(setup, 'one', 'ridge', RIDGE);
  putReferenceOutline(setup, 'other', 'meadow', RIDGE);
  putPaintingOutline(painting, 'ridge', PAINTED);
  return { setup, painting, paintingId: 'two' };
}

describe('the setup of one measurement', () => {
  test('runs far to near, leaves out what the reference does not show, falls back where the painting has none', () => {
    const made = setupFrom({ ...scene(), referenceId: 'one' });
    expect(made.planes).toEqual([
      { name: 'sky', kind: 'sky', tilt: null, unreliable: false, reference: SKY },
      {
        name: 'far ridge',
        kind: 'land',
        tilt: 'upright',
        unreliable: false,
        reference: RIDGE,
        painting: PAINTED,
      },
    ]);
    expect(Setup.safeParse(made).success).toBe(true);
  });

  test('carries conditions, air, reservations, photo, focus and what was meant', () => {
    const source = { ...scene(), referenceId: 'one' };
    setCondition(source.setup, 'snow', true);
    setCondition(source.setup, 'fog', true);
    setCondition(source.setup, 'fog', false);
    setAir(source.setup, 'two', { L: 80, a: -1, b: -8 });
    setUnreliable(source.setup, 'sky', 'blown out');
    setCorners(source.painting, CORNERS);
    setSize(source.painting, [16, 12]);
    setCards(source.painting, []);
    setFocus(source.painting, [0.6, 0.5]);
    setMeant(source.painting, 'V4', 'the far wood is the subject');
    const made = setupFrom(source);
    expect(made).toMatchObject({
      conditions: ['snow'],
      air: { reference: null, painting: { L: 80, a: -1, b: -8 } },
      photo: { corners: CORNERS, size: [16, 12] },
      focus: [0.6, 0.5],
      meant: ['V4'],
      plan: null,
    });
    expect(made.planes[0]?.unreliable).toBe(true);
    expect(Setup.safeParse(made).success).toBe(true);
  });

  test('without a reference the painting’s own outlines stand for both', () => {
    const made = setupFrom({ ...scene(), referenceId: null });
    expect(made.planes.map(({ name, reference, painting }) => [name, reference, painting])).toEqual([
      ['far ridge', PAINTED, PAINTED],
    ]);
  });

  test('says what is missing when nothing is outlined', () => {
    const empty = declareRoots(new Y.Doc(), 'setup');
    const source = { ...scene(), setup: empty, referenceId: 'one' };
    expect(() => setupFrom(source)).toThrow('No plane is outlined on the reference yet.');
  });

  test('corners and size set at once by two people both stay', () => {
    const [one, two] = [declareRoots(new Y.Doc(), 'painting/two'), declareRoots(new Y.Doc(), 'painting/two')];
    setCorners(one, CORNERS);
    setSize(two, [30, 24]);
    Y.applyUpdate(one, Y.encodeStateAsUpdate(two));
    expect(readPhoto(one)).toEqual({ corners: CORNERS, size: [30, 24] });
  });
});
