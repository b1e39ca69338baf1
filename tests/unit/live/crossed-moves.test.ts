/** Two people, one outline, the same moment: whoever's write loses, neither move is lost. */
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { withPointMoved } from '#app/_easel/outline-edit.ts';
import { writersFor } from '#app/_live/writers.ts';
import type { Outline } from '#server/core/contract/setup.ts';

const SQUARE: Outline = [
  [0.2, 0.2],
  [0.8, 0.2],
  [0.8, 0.8],
  [0.2, 0.8],
];

function aPerson(clientId: number) {
  const doc = new Y.Doc();
  doc.clientID = clientId;
  const write = writersFor({
    setup: () => doc,
    marks: () => null,
    painting: () => null,
    isReference: () => true,
    writer: { personId: `person-${clientId}`, role: 'teacher', paints: false },
    together: (act) => act(),
  });
  const outline = () => doc.getMap('outlines').get('picture/plane') as Outline;
  return { doc, write, outline };
}

/** Sends everything both ways until nobody has anything new. */
async function exchange(one: Y.Doc, two: Y.Doc): Promise<void> {
  for (let round = 0; round < 4; round++) {
    const fromOne = Y.encodeStateAsUpdate(one, Y.encodeStateVector(two));
    const fromTwo = Y.encodeStateAsUpdate(two, Y.encodeStateVector(one));
    Y.applyUpdate(two, fromOne, 'line');
    Y.applyUpdate(one, fromTwo, 'line');
    await Promise.resolve();
  }
}

describe('two people nudging one outline at the same moment', () => {
  for (const [first, second] of [
    [1, 2],
    [2, 1],
  ] as const) {
    test(`both moves stay, whichever write stands (${first} against ${second})`, async () => {
      const one = aPerson(first);
      const two = aPerson(second);
      one.write.setOutline('picture', 'plane', SQUARE);
      await exchange(one.doc, two.doc);

      one.write.setOutline('picture', 'plane', withPointMoved(one.outline(), 0, -0.1, 0));
      two.write.setOutline('picture', 'plane', withPointMoved(two.outline(), 2, 0.1, 0));
      await exchange(one.doc, two.doc);

      const both = withPointMoved(withPointMoved(SQUARE, 0, -0.1, 0), 2, 0.1, 0);
      expect(one.outline()).toEqual(both);
      expect(two.outline()).toEqual(both);
    });
  }

  test('an answer that had seen the move is not a crossing: it may take the move back', async () => {
    const one = aPerson(1);
    const two = aPerson(2);
    one.write.setOutline('picture', 'plane', SQUARE);
    await exchange(one.doc, two.doc);
    one.write.setOutline('picture', 'plane', withPointMoved(SQUARE, 0, -0.1, 0));
    await exchange(one.doc, two.doc);
    two.write.setOutline('picture', 'plane', SQUARE);
    await exchange(one.doc, two.doc);
    expect(one.outline()).toEqual(SQUARE);
    expect(two.outline()).toEqual(SQUARE);
  });

  test('the same point pulled by both ends where one of them put it, on both screens', async () => {
    const one = aPerson(1);
    const two = aPerson(2);
    one.write.setOutline('picture', 'plane', SQUARE);
    await exchange(one.doc, two.doc);
    one.write.setOutline('picture', 'plane', withPointMoved(SQUARE, 0, -0.1, 0));
    two.write.setOutline('picture', 'plane', withPointMoved(SQUARE, 0, 0, -0.1));
    await exchange(one.doc, two.doc);
    expect(one.outline()).toEqual(two.outline());
  });
});
