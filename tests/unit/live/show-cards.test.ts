import { describe, expect, test } from 'vitest';
import type { LiveCard } from '#server/core/live/layout.ts';
import { showCards } from '#server/core/live/show-cards.ts';
import { answer, card, FOUR, keys, shown, sourceOf } from './some-cards.ts';

describe('the cards that are shown', () => {
  test('are named by their place, so that other figures do not make them other cards', () => {
    const { open, waiting } = shown({ measured: [card(['G1'], null), ...FOUR] });
    expect(keys(open)).toEqual(['photo', 'plane-p-hill', 'plane-p-ridge']);
    expect(keys(waiting)).toEqual(['plane-p-wood', 'picture']);
    const later = shown({ measured: [card(['C2'], 'ridge')] });
    expect(keys(later.open)).toEqual(['plane-p-ridge']);
  });

  test('say where, what, how, why and how to check, in the measured words', () => {
    const { open } = shown({ measured: [card(['V4'], 'ridge')] });
    expect(open[0]).toMatchObject({
      where: 'Ridge',
      words: {
        what: 'darks: lift about half a step',
        how: 'Try a scumble.',
        why: 'Air lifts the darks.',
        check: 'Squint.',
      },
      source: 'source of V4',
      healthLine: true,
      changed: false,
    });
    const photo = shown({ measured: [card(['G1'], null)] });
    expect(photo.open[0]).toMatchObject({ words: { what: 'photograph again' }, healthLine: false });
  });

  test('are three at most, those that the measuring opened first', () => {
    const { open, waiting } = shown({
      measured: [card(['V1'], 'hill', { open: false }), ...FOUR.slice(1), card(['D3'], 'sky')],
    });
    expect(keys(open)).toEqual(['plane-p-ridge', 'plane-p-wood', 'plane-p-sky']);
    expect(keys(waiting)).toEqual(['plane-p-hill', 'picture']);
  });

  test('of a plane that was renamed since are left out until it is measured again', () => {
    expect(keys(shown({ measured: FOUR, gone: ['ridge'] }).open)).not.toContain('plane-p-ridge');
  });

  test('are none while there is no document, except a teacher’s own', () => {
    const source = sourceOf({ measured: [], cards: { 'own-1': { what: 'Stop here.' } } });
    expect(keys(showCards({ ...source, document: null, planeIds: [] }).open)).toEqual(['own-1']);
  });
});

describe('the painter’s answers', () => {
  test('accepted and adapted cards stay among the three', () => {
    const { open } = shown({
      measured: FOUR,
      answers: {
        'plane-p-hill': answer('accepted', ['V1']),
        'plane-p-ridge': answer('adapted', ['V4', 'C2'], 'With a glaze.'),
      },
    });
    expect(keys(open)).toEqual(['plane-p-hill', 'plane-p-ridge', 'plane-p-wood']);
    expect(open[1]?.answer?.words).toBe('With a glaze.');
  });

  test('a declined card leaves, and the next one moves up', () => {
    const { open, declined } = shown({
      measured: FOUR,
      answers: { 'plane-p-hill': answer('declined', ['V1'], 'It is my subject.') },
    });
    expect(keys(open)).toEqual(['plane-p-ridge', 'plane-p-wood', 'picture']);
    expect(keys(declined)).toEqual(['plane-p-hill']);
  });

  test('an answer counts while the leading reading is among those it was given to', () => {
    const answers = { 'plane-p-ridge': answer('declined', ['V4', 'C2']) };
    const same = shown({ measured: [card(['C2'], 'ridge')], answers });
    expect(keys(same.declined)).toEqual(['plane-p-ridge']);
    const other = shown({ measured: [card(['D1', 'V4'], 'ridge')], answers });
    expect(keys(other.open)).toEqual(['plane-p-ridge']);
    expect(other.open[0]).toMatchObject({ answer: null, lapsed: { state: 'declined' } });
  });

  test('an answer that says "open" is none', () => {
    const { open } = shown({ measured: FOUR, answers: { 'plane-p-hill': answer('open', ['V1']) } });
    expect(open[0]).toMatchObject({ answer: null, lapsed: null });
  });

  test('a card goes when all that met on it was meant, and not when one part was', () => {
    const one = shown({ measured: FOUR, meant: { 'V4-p-ridge': 'Dusk.' } });
    expect(keys(one.open)).toContain('plane-p-ridge');
    const all = shown({ measured: FOUR, meant: { 'V4-p-ridge': 'Dusk.', C2: '' } });
    expect(keys([...all.open, ...all.waiting, ...all.declined])).not.toContain('plane-p-ridge');
    expect(one.open.find(({ key }) => key === 'plane-p-ridge')?.meantKeys).toEqual([
      'V4-p-ridge',
      'C2-p-ridge',
    ]);
  });

  test('a card on the photo itself asks for another photo, which nobody can mean otherwise', () => {
    const { open } = shown({ measured: [card(['G1'], null)] });
    expect(open.find(({ key }) => key === 'photo')).toMatchObject({ meantKeys: [] });
  });
});

describe('a teacher’s changes', () => {
  test('replace only the parts they are about, and are marked as the teacher’s', () => {
    const { open } = shown({
      measured: [card(['V4'], 'ridge')],
      cards: { 'plane-p-ridge': { why: 'Look at the barn.' } },
    });
    expect(open[0]).toMatchObject({ changed: true, source: null, measured: { why: 'Air lifts the darks.' } });
    expect(open[0]?.words).toMatchObject({ why: 'Look at the barn.', how: 'Try a scumble.' });
  });

  test('bring the health line with every how or what of their own', () => {
    const rewritten = (change: LiveCard) =>
      shown({ measured: [card(['D1'], 'wood', { healthLine: false })], cards: { 'plane-p-wood': change } })
        .open[0]?.healthLine;
    expect(rewritten({ how: 'Mix a grey.' })).toBe(true);
    expect(rewritten({ check: 'Step back.' })).toBe(false);
  });

  test('order goes before rank; left out cards make room', () => {
    const { open, dropped } = shown({
      measured: FOUR,
      cards: { picture: { order: 'V' }, 'plane-p-hill': { dropped: true } },
    });
    expect(keys(open)).toEqual(['picture', 'plane-p-ridge', 'plane-p-wood']);
    expect(keys(dropped)).toEqual(['plane-p-hill']);
  });

  test('own cards stand on a plane or on the whole picture, before the measured ones', () => {
    const { open } = shown({
      measured: FOUR,
      cards: {
        'own-2': { what: 'Lose the fence.', planeId: 'p-field' },
        'own-1': { what: 'Rest the eye.', planeId: 'deleted since', order: 'B' },
        'own-3': { how: 'No what, no card.' },
      },
    });
    expect(keys(open)).toEqual(['own-1', 'own-2', 'plane-p-hill']);
    expect(open[0]).toMatchObject({ where: 'The whole picture', planeId: null, measured: null });
    expect(open[1]).toMatchObject({ where: 'Field', planeId: 'p-field', healthLine: true });
  });

  test('words on a card that is measured no longer stay until they are taken back', () => {
    const cards = { 'plane-p-ridge': { what: 'lights: quiet them' } };
    expect(shown({ measured: [], cards }).open[0]).toMatchObject({ where: 'Ridge', measured: null });
    expect(shown({ measured: [], cards, gone: ['ridge'] }).open).toEqual([]);
    expect(shown({ measured: [], cards: { 'plane-p-ridge': { order: 'V' } } }).open).toEqual([]);
  });

  test('two cards that would undo each other are not open at once, unless a teacher put them so', () => {
    const measured = [
      card(['V1'], 'hill'),
      card(['V3'], 'ridge', { against: ['V1-hill'] }),
      card(['D1'], 'wood'),
      card(['V8'], null),
    ];
    expect(keys(shown({ measured }).open)).toEqual(['plane-p-hill', 'plane-p-wood', 'picture']);
    const declined = shown({ measured, answers: { 'plane-p-hill': answer('declined', ['V1']) } });
    expect(keys(declined.open)).toEqual(['plane-p-ridge', 'plane-p-wood', 'picture']);
    const ordered = shown({
      measured,
      cards: { 'plane-p-hill': { order: 'B' }, 'plane-p-ridge': { order: 'V' } },
    });
    expect(keys(ordered.open).slice(0, 2)).toEqual(['plane-p-hill', 'plane-p-ridge']);
  });
});
