import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import {
  changeCard,
  clearCard,
  orderCards,
  readAnswers,
  readCards,
  setAnswer,
} from '#server/core/live/card-answers.ts';
import { declareRoots } from '#server/core/live/document.ts';
import { readFocus, readMeant, setFocus, setMeant } from '#server/core/live/painting.ts';
import { SHAPES } from '#server/core/live/shapes.ts';

const fresh = () => declareRoots(new Y.Doc(), 'painting/p');
const KEY = 'plane-0b6c0b60-1111-4222-8333-444455556666';

describe('cards in the live document', () => {
  test('come back by card, parts that nobody wrote left out', () => {
    const doc = fresh();
    changeCard(doc, KEY, { what: 'darks: lift', why: 'Air.' });
    changeCard(doc, 'own-1', { what: 'Rest the eye.', planeId: 'p' });
    changeCard(doc, KEY, { why: null, dropped: true });
    expect(readCards(doc)).toEqual(
      new Map([
        [KEY, { what: 'darks: lift', dropped: true }],
        ['own-1', { what: 'Rest the eye.', planeId: 'p' }],
      ]),
    );
  });

  test('two teachers who change different parts of one card both keep theirs', () => {
    const [one, two] = [fresh(), fresh()];
    changeCard(one, KEY, { what: 'darks: lift a touch' });
    changeCard(two, KEY, { check: 'Step back.' });
    Y.applyUpdate(one, Y.encodeStateAsUpdate(two));
    Y.applyUpdate(two, Y.encodeStateAsUpdate(one));
    for (const doc of [one, two]) {
      expect(readCards(doc).get(KEY)).toEqual({ what: 'darks: lift a touch', check: 'Step back.' });
    }
  });

  test('clearing takes every part of one card and no other card whose key begins alike', () => {
    const doc = fresh();
    changeCard(doc, 'own-1', { what: 'This.' });
    changeCard(doc, 'own-12', { what: 'That.' });
    clearCard(doc, 'own-1');
    expect([...readCards(doc).keys()]).toEqual(['own-12']);
  });

  test('a new order is one step', () => {
    const doc = fresh();
    let steps = 0;
    doc.on('update', () => steps++);
    orderCards(
      doc,
      new Map([
        [KEY, 'B'],
        ['picture', 'V'],
      ]),
    );
    expect(steps).toBe(1);
    expect(readCards(doc).get('picture')).toEqual({ order: 'V' });
  });

  test('answers, meant readings and the focus come back, and go when they are taken back', () => {
    const doc = fresh();
    const answer = { state: 'adapted' as const, words: 'A glaze.', about: ['V4'] };
    setAnswer(doc, KEY, answer);
    setMeant(doc, 'V4-p', 'Dusk.');
    setMeant(doc, 'D1', '');
    setFocus(doc, [0.2, 0.3]);
    expect(readAnswers(doc)).toEqual(new Map([[KEY, answer]]));
    expect(readMeant(doc)).toEqual(
      new Map([
        ['D1', ''],
        ['V4-p', 'Dusk.'],
      ]),
    );
    expect(readFocus(doc)).toEqual([0.2, 0.3]);
    setAnswer(doc, KEY, null);
    setMeant(doc, 'V4-p', null);
    setFocus(doc, null);
    expect(readAnswers(doc).size + readMeant(doc).size).toBe(1);
    expect(readFocus(doc)).toBeNull();
  });
});

const ANSWER = { state: 'accepted', words: '', about: ['V4'] };
/** Root, key, value, whether it is well formed. */
const ENTRIES: [string, string, unknown, boolean][] = [
  ['cards', `${KEY}.what`, 'darks: lift', true],
  ['cards', 'picture.dropped', true, true],
  ['cards', 'own-1.planeId', 'p', true],
  ['cards', 'photo.order', 'V', true],
  ['cards', 'picture.dropped', false, false],
  ['cards', 'picture.what', '', false],
  ['cards', 'picture.what', 'x'.repeat(401), false],
  ['cards', 'picture.how', 'x'.repeat(1001), false],
  ['cards', 'picture.order', '0', false],
  ['cards', 'picture.colour', 'red', false],
  ['cards', 'picture', 'darks: lift', false],
  ['cards', 'meadow.what', 'darks: lift', false],
  ['cards', 'picture.what', { words: 'darks: lift' }, false],
  ['answers', KEY, ANSWER, true],
  ['answers', KEY, { ...ANSWER, state: 'refused' }, false],
  ['answers', KEY, { ...ANSWER, words: 'x'.repeat(1001) }, false],
  ['answers', KEY, { ...ANSWER, about: Array(21).fill('V4') }, false],
  ['answers', KEY, { ...ANSWER, by: 'somebody else' }, false],
  ['answers', KEY, 'accepted', false],
  ['answers', 'no key.at all', ANSWER, false],
  ['meant', 'V4', true, true],
  ['meant', 'V4-p', 'Dusk.', true],
  ['meant', 'V4', false, false],
  ['meant', 'V4', 'x'.repeat(401), false],
  ['meant', 'V4/ridge', true, false],
  ['focus', 'point', [0.2, 0.3], true],
  ['focus', 'point', [0.2], false],
  ['focus', 'point', [0.2, Number.NaN], false],
  ['focus', 'centre', [0.2, 0.3], false],
];

describe('what the server lets into these maps', () => {
  test.each(ENTRIES)('%s: %s (%j) is well formed: %s', (root, key, value, fits) => {
    expect(SHAPES.painting[root]?.fits(key, value)).toBe(fits);
  });
});
