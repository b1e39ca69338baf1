import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { declareRoots } from '#server/core/live/document.ts';
import { putReferenceOutline, readOutlinesOf } from '#server/core/live/outlines.ts';
import {
  addPlane,
  movePlane,
  readPlanes,
  removePlane,
  renamePlane,
  setPlaneKind,
} from '#server/core/live/planes.ts';
import { readUnreliable, setUnreliable } from '#server/core/live/scene.ts';

const setup = () => declareRoots(new Y.Doc(), 'setup');
const names = (doc: Y.Doc) => readPlanes(doc).map(({ id }) => id);

function withPlanes(...ids: string[]): Y.Doc {
  const doc = setup();
  for (const id of ids) addPlane(doc, { id, name: id, kind: 'land', tilt: null });
  return doc;
}

function copyOf(doc: Y.Doc): Y.Doc {
  const copy = setup();
  Y.applyUpdate(copy, Y.encodeStateAsUpdate(doc));
  return copy;
}

function exchange(one: Y.Doc, two: Y.Doc): void {
  const [fromOne, fromTwo] = [Y.encodeStateAsUpdate(one), Y.encodeStateAsUpdate(two)];
  Y.applyUpdate(one, fromTwo);
  Y.applyUpdate(two, fromOne);
}

describe('planes', () => {
  test('stand far to near in the order in which they were added, or where they were put', () => {
    const doc = withPlanes('sky', 'ridge', 'meadow');
    addPlane(doc, { id: 'wood', name: 'wood', kind: 'wood', tilt: 'upright' }, 2);
    expect(names(doc)).toEqual(['sky', 'ridge', 'wood', 'meadow']);
    movePlane(doc, 'meadow', 0);
    expect(names(doc)).toEqual(['meadow', 'sky', 'ridge', 'wood']);
    movePlane(doc, 'meadow', 99);
    expect(names(doc)).toEqual(['sky', 'ridge', 'wood', 'meadow']);
  });

  test('two people who move, rename and add apart keep all of it once joined', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.boolean(), fc.nat(3), fc.nat(3)), { maxLength: 20 }), (moves) => {
        const one = withPlanes('a', 'b', 'c', 'd');
        const two = copyOf(one);
        for (const [first, plane, place] of moves) movePlane(first ? one : two, 'abcd'.charAt(plane), place);
        renamePlane(one, 'a', 'far ridge');
        setPlaneKind(two, 'a', 'snow');
        addPlane(one, { id: 'e', name: 'e', kind: 'land', tilt: null }, 1);
        addPlane(two, { id: 'f', name: 'f', kind: 'land', tilt: null }, 1);
        exchange(one, two);
        expect(readPlanes(one)).toEqual(readPlanes(two));
        expect([...names(one)].sort()).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
        expect(readPlanes(one).find(({ id }) => id === 'a')).toMatchObject({
          name: 'far ridge',
          kind: 'snow',
        });
      }),
      { numRuns: 50 },
    );
  });

  test('a plane can be moved between two that were left with one key', () => {
    const one = withPlanes('a', 'd');
    const two = copyOf(one);
    addPlane(one, { id: 'b', name: 'b', kind: 'land', tilt: null }, 1);
    addPlane(two, { id: 'c', name: 'c', kind: 'land', tilt: null }, 1);
    exchange(one, two);
    expect(names(one)).toEqual(['a', 'b', 'c', 'd']);
    movePlane(one, 'd', 2);
    expect(names(one)).toEqual(['a', 'b', 'd', 'c']);
  });

  test('five hundred moves to the same place keep working', () => {
    const doc = withPlanes('a', 'b', 'c');
    for (let move = 0; move < 500; move++) movePlane(doc, move % 2 ? 'b' : 'c', 1);
    movePlane(doc, 'c', 1);
    expect(names(doc)).toEqual(['a', 'c', 'b']);
  });

  test('a removed plane takes its outlines and its reservation along, and no others', () => {
    const doc = withPlanes('sky', 'ridge');
    const outline: [number, number][] = [
      [0, 0],
      [1, 0],
      [1, 1],
    ];
    for (const id of ['sky', 'ridge']) putReferenceOutline(doc, 'ref', id, outline);
    setUnreliable(doc, 'ridge', 'blown out');
    removePlane(doc, 'ridge');
    expect(names(doc)).toEqual(['sky']);
    expect([...readOutlinesOf(doc, 'ref').keys()]).toEqual(['sky']);
    expect(readUnreliable(doc).size).toBe(0);
  });

  test('a thirteenth plane, an empty name and an outline of two points are refused in words', () => {
    const doc = withPlanes(...Array.from({ length: 12 }, (_, index) => `plane-${index}`));
    expect(() => addPlane(doc, { id: 'x', name: 'x', kind: 'land', tilt: null })).toThrow(/12 are the most/);
    expect(() => renamePlane(doc, 'plane-1', '  ')).toThrow(/1 to 80 characters/);
    expect(() =>
      putReferenceOutline(doc, 'ref', 'sky', [
        [0, 0],
        [1, 1],
      ]),
    ).toThrow(/this one has 2/);
  });

  test('what does not parse is left out', () => {
    const doc = withPlanes('sky');
    doc.getMap('planes').set('bad', new Y.Map([['name', 5]]));
    doc.getMap('planes').set('worse', 'sky');
    expect(names(doc)).toEqual(['sky']);
  });
});
