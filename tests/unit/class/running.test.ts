/** Running a class: turns and steps in their order, nobody forgotten, the clock by the server's time. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as Y from 'yjs';
import { classAllows, everyCell, takesImpression, turnAllows } from '#server/core/class/allowed.ts';
import { clockNow, keepClock, leftOf } from '#server/core/class/clock.ts';
import { readNote, readSaid, writeNote, writeSaid } from '#server/core/class/notes.ts';
import {
  forgetTurn,
  goOn,
  nextStep,
  nextTurn,
  openToAll,
  setPaused,
  skipTurn,
  startClass,
  stopClass,
} from '#server/core/class/run.ts';
import { classEntryFits, keptEntryFits, type LiveNow, noteFits } from '#server/core/class/shapes.ts';
import { isRevealed, isVeiled, NO_CLASS, readClass, toCome } from '#server/core/class/state.ts';
import { drawn, STEPS, turnLength, USUAL_LENGTHS } from '#server/core/class/steps.ts';

const PICTURES = ['reeds', 'weir', 'mill'];
const painterOf = (pictureId: string) => (PICTURES.includes(pictureId) ? `painter-of-${pictureId}` : null);
const turns = PICTURES.map((pictureId) => ({ pictureId, painterId: `painter-of-${pictureId}` }));

function started(): Y.Doc {
  const doc = new Y.Doc();
  startClass(doc, turns, USUAL_LENGTHS);
  return doc;
}

describe('turns and steps', () => {
  test('a class goes through every step of every painting in the order drawn, and is over then', () => {
    const doc = started();
    const seen: string[] = [];
    for (let guard = 0; guard < 100 && readClass(doc).now; guard++) {
      const { now } = readClass(doc);
      seen.push(`${now?.pictureId} ${now?.step}`);
      nextStep(doc, painterOf);
    }
    expect(seen).toEqual(PICTURES.flatMap((picture) => STEPS.map((step) => `${picture} ${step}`)));
    expect([...readClass(doc).had].sort()).toEqual([...PICTURES].sort());
    expect(toCome(readClass(doc))).toEqual([]);
  });

  test('the number rises with every step and never comes back, also over a stop', () => {
    const doc = started();
    let last = 0;
    for (const act of [nextStep, nextStep, skipTurn, nextTurn, nextStep]) {
      act(doc, painterOf);
      const number = readClass(doc).now?.number ?? 0;
      expect(number).toBeGreaterThan(last);
      last = number;
    }
    keepClock(doc, 1000);
    stopClass(doc);
    goOn(doc, painterOf);
    expect(readClass(doc).now?.number).toBeGreaterThan(last);
  });

  test('a skipped painting comes back last; the only one left is not skipped', () => {
    const doc = started();
    skipTurn(doc, painterOf);
    expect(readClass(doc).order).toEqual(['weir', 'mill', 'reeds']);
    expect(readClass(doc).now?.pictureId).toBe('weir');
    expect(readClass(doc).had.size).toBe(0);
    nextTurn(doc, painterOf);
    nextTurn(doc, painterOf);
    expect(readClass(doc).now?.pictureId).toBe('reeds');
    skipTurn(doc, painterOf);
    expect(readClass(doc).now?.pictureId).toBe('reeds');
  });

  test('whoever had no turn when the class stops is known and comes when it goes on', () => {
    const doc = started();
    nextTurn(doc, painterOf);
    stopClass(doc);
    expect(toCome(readClass(doc))).toEqual(['weir', 'mill']);
    goOn(doc, painterOf);
    expect(readClass(doc).now).toMatchObject({ pictureId: 'weir', step: 'silent' });
  });

  test('nobody is lost by any sequence of what can be pressed', () => {
    const acts = [nextStep, nextTurn, skipTurn, goOn, (doc: Y.Doc) => stopClass(doc)];
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: acts.length - 1 }), { maxLength: 40 }), (pressed) => {
        const doc = started();
        for (const at of pressed) acts[at]?.(doc, painterOf);
        const state = readClass(doc);
        expect([...state.order].sort()).toEqual([...PICTURES].sort());
        const known = new Set([...state.had, ...toCome(state), ...(state.now ? [state.now.pictureId] : [])]);
        expect(known.size).toBe(PICTURES.length);
      }),
    );
  });

  test('a painting that leaves the board leaves the class, and its turn passes on', () => {
    const doc = started();
    forgetTurn(doc, 'reeds', (id) => (id === 'reeds' ? null : painterOf(id)));
    expect(readClass(doc).order).toEqual(['weir', 'mill']);
    expect(readClass(doc).now?.pictureId).toBe('weir');
  });

  test('an order drawn by lot holds everybody once, and each order comes about equally often', () => {
    const counts = new Map<string, number>();
    let seed = 7;
    const random = () => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return seed / 2 ** 32;
    };
    for (let round = 0; round < 6000; round++) {
      const order = drawn(PICTURES, random);
      expect([...order].sort()).toEqual([...PICTURES].sort());
      counts.set(order.join(), (counts.get(order.join()) ?? 0) + 1);
    }
    expect(counts.size).toBe(6);
    for (const count of counts.values()) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });
});

describe('what a step allows', () => {
  test('a turn is planned for nine to ten minutes (common practice, no source)', () => {
    expect(turnLength(USUAL_LENGTHS)).toBeGreaterThanOrEqual(9 * 60);
    expect(turnLength(USUAL_LENGTHS)).toBeLessThanOrEqual(10 * 60);
  });

  test('each cell holds for one who is only that, and a teacher whose turn it is may what either may', () => {
    for (const { step, write, who, cell } of everyCell()) {
      const now: LiveNow = {
        ...{ number: 1, pictureId: 'reeds', painterId: 'p', step, paused: false, opened: false },
      };
      const person = { teaches: who === 'teacher', paints: who === 'painter' };
      expect(turnAllows(now, write, person)).toBe(cell === 'yes');
      expect(turnAllows({ ...now, opened: true }, write, person)).toBe(cell !== 'no');
      if (cell === 'yes' && who !== 'others') {
        expect(turnAllows(now, write, { teaches: true, paints: true })).toBe(true);
      }
    }
  });

  test('a closed marking stops everybody but who runs the class, in a turn and outside one', () => {
    const closed = { ...NO_CLASS, closed: true };
    expect(classAllows(closed, 'marks', { teaches: false, paints: true })).toBe(false);
    expect(classAllows(closed, 'marks', { teaches: true, paints: false })).toBe(true);
    expect(classAllows(closed, 'cards', { teaches: true, paints: false })).toBe(true);
  });

  test('reference and figures are kept back until the class comes to them', () => {
    const doc = started();
    const veiled = STEPS.map(() => {
      const now = isVeiled(readClass(doc));
      nextStep(doc, painterOf);
      return now;
    });
    expect(veiled).toEqual([true, true, true, false, false, false, false]);
    expect(isVeiled(NO_CLASS)).toBe(false);
  });

  test('a last word is taken for three seconds after the silent look, and of no other painting', () => {
    const doc = started();
    expect(takesImpression(readClass(doc), 'reeds', 0)).toBe(true);
    expect(takesImpression(readClass(doc), 'weir', 0)).toBe(false);
    nextStep(doc, painterOf);
    keepClock(doc, 10_000);
    expect(takesImpression(readClass(doc), 'reeds', 13_000)).toBe(true);
    expect(takesImpression(readClass(doc), 'reeds', 13_001)).toBe(false);
    expect(takesImpression(NO_CLASS, 'reeds', 0)).toBe(false);
  });

  test('everybody may mark in the priorities once they were let in, until the next step', () => {
    const doc = started();
    for (let at = 0; at < STEPS.indexOf('priorities'); at++) nextStep(doc, painterOf);
    const may = () => classAllows(readClass(doc), 'marks', { teaches: false, paints: false });
    expect(may()).toBe(false);
    openToAll(doc);
    expect(may()).toBe(true);
    nextStep(doc, painterOf);
    expect(may()).toBe(false);
  });
});

describe('the clock', () => {
  test('what is left counts down by the server’s clock, stands still while held, and goes below zero', () => {
    const doc = started();
    keepClock(doc, 100_000);
    const left = (ms: number) => leftOf(readClass(doc), ms);
    expect(left(100_000)).toEqual({ stepMs: 60_000, turnMs: 570_000 });
    expect(left(130_000)).toEqual({ stepMs: 30_000, turnMs: 540_000 });
    setPaused(doc, true);
    keepClock(doc, 130_000);
    expect(left(190_000)).toEqual({ stepMs: 30_000, turnMs: 540_000 });
    setPaused(doc, false);
    keepClock(doc, 190_000);
    expect(left(195_000)).toEqual({ stepMs: 25_000, turnMs: 535_000 });
    expect(left(230_000)?.stepMs).toBe(-10_000);
    nextStep(doc, painterOf);
    expect(left(230_000)).toBeNull();
    keepClock(doc, 230_000);
    expect(left(230_000)).toEqual({ stepMs: 60_000, turnMs: 500_000 });
  });

  test('a step that begins while the last one was held does not lose the time of the turn', () => {
    const now: LiveNow = {
      ...{ number: 1, pictureId: 'reeds', painterId: 'p', step: 'silent', paused: true, opened: false },
    };
    const held = clockNow(null, now, 1000);
    const next = clockNow(held, { ...now, number: 2, step: 'intention', paused: false }, 61_000);
    expect(next).toMatchObject({
      stepBeganMs: 61_000,
      turnBeganMs: 1000,
      turnHeldMs: 60_000,
      heldSinceMs: null,
    });
  });

  test('the reveal is taken down once, and taken back by a new silent look', () => {
    const doc = started();
    keepClock(doc, 1);
    expect(isRevealed(readClass(doc), 'reeds')).toBe(false);
    nextStep(doc, painterOf);
    expect(isRevealed(readClass(doc), 'reeds')).toBe(false);
    keepClock(doc, 2);
    expect(isRevealed(readClass(doc), 'reeds')).toBe(true);
    nextStep(doc, painterOf);
    keepClock(doc, 3);
    expect(readClass(doc).shown.get('reeds')).toBe(2);
    startClass(doc, turns, USUAL_LENGTHS);
    expect(isRevealed(readClass(doc), 'reeds')).toBe(false);
    keepClock(doc, 4);
    expect(readClass(doc).shown.has('reeds')).toBe(false);
  });

  test('nothing is written where nothing is behind', () => {
    const doc = started();
    keepClock(doc, 1);
    let updates = 0;
    doc.on('update', () => updates++);
    keepClock(doc, 2);
    expect(updates).toBe(0);
  });
});

describe('what is refused', () => {
  test.each([
    ['order', ['one', 'one']],
    ['order', Array.from({ length: 61 }, (_, at) => `p${at}`)],
    ['lengths', { silent: 60 }],
    ['lengths', { ...USUAL_LENGTHS, silent: 5 }],
    ['now', { number: 1, pictureId: 'a', painterId: 'b', step: 'lunch', paused: false, opened: false }],
    ['closed', false],
    ['had-', true],
    ['elsewhere', true],
  ])('an entry %s that is not of its shape', (key, value) => {
    expect(classEntryFits(key, value)).toBe(false);
  });

  test('a clock or a reveal that is not of its shape, and a note that is empty or too long', () => {
    expect(keptEntryFits('clock', { number: 1 })).toBe(false);
    expect(keptEntryFits('shown-p', 'now')).toBe(false);
    expect(keptEntryFits('shown-p', 5)).toBe(true);
    expect(noteFits('p', '')).toBe(false);
    expect(noteFits('p', 'x'.repeat(401))).toBe(false);
  });

  test('a document with nonsense reads as no class', () => {
    const doc = new Y.Doc();
    doc.getMap('class').set('now', 'later');
    doc.getMap('class').set('order', 5);
    doc.getMap('kept').set('clock', null);
    expect(readClass(doc)).toEqual(NO_CLASS);
  });
});

test('a first impression and what is said back are kept to 400 characters, and an empty text takes them away', () => {
  const doc = new Y.Doc();
  writeNote(doc, 'reeds', 'x'.repeat(500));
  expect(readNote(doc, 'reeds')).toHaveLength(400);
  writeNote(doc, 'reeds', '');
  expect(doc.getMap('notes').has('reeds')).toBe(false);
  writeSaid(doc, 'First the far hills');
  expect(readSaid(doc)).toBe('First the far hills');
  writeSaid(doc, '');
  expect(readSaid(doc)).toBe('');
});
