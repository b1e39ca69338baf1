/** Undo and redo go through the rooms in the order of the steps, and touch nobody else's. */
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { StepHistory } from '#app/_live/step-history.ts';
import { declareRoots, LOCAL_EDIT } from '#server/core/live/document.ts';
import { putReferenceOutline, readReferenceOutlines } from '#server/core/live/outlines.ts';
import { readPhoto, setSize } from '#server/core/live/painting.ts';
import { addPlane, readPlanes, removePlane } from '#server/core/live/planes.ts';

function twoRooms() {
  const setup = declareRoots(new Y.Doc(), 'setup');
  const painting = declareRoots(new Y.Doc(), 'painting/p');
  const history = new StepHistory(LOCAL_EDIT, () => undefined);
  history.follow(setup, [setup.getMap('planes'), setup.getMap('outlines')]);
  history.follow(painting, [painting.getMap('photo')]);
  return { setup, painting, history };
}
const TRIANGLE: [number, number][] = [
  [0, 0],
  [1, 0],
  [1, 1],
];

describe('the steps of one person', () => {
  test('are undone last first, whichever room they were in, and redone in order', () => {
    const { setup, painting, history } = twoRooms();
    addPlane(setup, { id: 'a', name: 'Sky', kind: 'sky', tilt: null });
    setSize(painting, [40, 30]);
    addPlane(setup, { id: 'b', name: 'Hill', kind: 'land', tilt: null });
    history.undo();
    expect(readPlanes(setup).map(({ id }) => id)).toEqual(['a']);
    expect(readPhoto(painting).size).toEqual([40, 30]);
    history.undo();
    expect(readPhoto(painting).size).toBeUndefined();
    history.redo();
    history.redo();
    expect(readPhoto(painting).size).toEqual([40, 30]);
    expect(readPlanes(setup).map(({ id }) => id)).toEqual(['a', 'b']);
    expect(history.canRedo).toBe(false);
  });

  test('a deleted plane comes back with its outline', () => {
    const { setup, history } = twoRooms();
    addPlane(setup, { id: 'a', name: 'Sky', kind: 'sky', tilt: null });
    putReferenceOutline(setup, 'r', 'a', TRIANGLE);
    removePlane(setup, 'a');
    expect(readReferenceOutlines(setup).size).toBe(0);
    history.undo();
    expect(readPlanes(setup)).toHaveLength(1);
    expect(readReferenceOutlines(setup).get('r/a')).toEqual(TRIANGLE);
  });

  test('what came from somebody else is no step', () => {
    const { setup, history } = twoRooms();
    const other = declareRoots(new Y.Doc(), 'setup');
    addPlane(other, { id: 'x', name: 'Their plane', kind: 'wood', tilt: null });
    Y.applyUpdate(setup, Y.encodeStateAsUpdate(other));
    expect(history.canUndo).toBe(false);
    history.undo();
    expect(readPlanes(setup)).toHaveLength(1);
  });

  test('a new step ends what could be redone, in every room', () => {
    const { setup, painting, history } = twoRooms();
    setSize(painting, [40, 30]);
    history.undo();
    addPlane(setup, { id: 'a', name: 'Sky', kind: 'sky', tilt: null });
    expect(history.canRedo).toBe(false);
    history.redo();
    expect(readPhoto(painting).size).toBeUndefined();
  });

  test('a document that was thrown away takes its steps with it', () => {
    const { setup, painting, history } = twoRooms();
    setSize(painting, [40, 30]);
    addPlane(setup, { id: 'a', name: 'Sky', kind: 'sky', tilt: null });
    history.forget(setup);
    history.undo();
    expect(readPhoto(painting).size).toBeUndefined();
    expect(history.canUndo).toBe(false);
  });
});
