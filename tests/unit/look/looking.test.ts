/** Steps and words of the looking tools: mirror, keys, what stays in the browser, sentences about two patches. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { mirroredFrame, plainFrame, squaredFrame } from '#app/_easel/frame.ts';
import { HoverStore } from '#app/_look/hover-store.ts';
import { forgetGuesses, keepGuess, keepScreen, keptGuesses, keptScreen } from '#app/_look/kept.ts';
import { LETTER_KEYS, letterAction } from '#app/_workspace/key-map.ts';
import { KEY_WORDS } from '#app/_workspace/key-words.ts';
import { lookWords } from '#words/look.ts';

describe('a mirrored frame', () => {
  it('changes left and right over, and back', () => {
    const frame = mirroredFrame(plainFrame({ width: 4, height: 3 }));
    expect(frame.shown([0.25, 0.1])).toEqual([0.75, 0.1]);
    expect(frame.original(frame.shown([0.25, 0.6]))).toEqual([0.25, 0.6]);
    expect(frame.matrix).not.toBeNull();
    expect(frame.mirrored).toBe(true);
  });

  it('mirrors what is squared, not what was photographed', () => {
    const squared = squaredFrame({ width: 4, height: 3 }, [
      [1.2, 0.1, -0.1],
      [0.05, 1.1, -0.02],
      [0.1, 0.05, 1],
    ]);
    const frame = mirroredFrame(squared);
    const [x, y] = squared.shown([0.4, 0.7]);
    expect(frame.shown([0.4, 0.7])).toEqual([1 - x, y]);
    const [backX, backY] = frame.original(frame.shown([0.4, 0.7]));
    expect(backX).toBeCloseTo(0.4, 10);
    expect(backY).toBeCloseTo(0.7, 10);
  });
});

describe('keys', () => {
  it('are one each, and each has its words', () => {
    const letters = Object.values(LETTER_KEYS);
    expect(new Set(letters).size).toBe(letters.length);
    for (const action of Object.keys(LETTER_KEYS)) expect(KEY_WORDS).toHaveProperty(action);
    expect(letterAction('v')).toBe('values');
    expect(letterAction('3')).toBe('three');
    expect(letterAction('8')).toBeNull();
  });
});

describe('what is kept in this browser', () => {
  const kept = new Map<string, string>();
  beforeEach(() => {
    kept.clear();
    vi.stubGlobal('localStorage', {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => kept.set(key, value),
      removeItem: (key: string) => kept.delete(key),
    });
  });
  afterEach(() => vi.unstubAllGlobals());

  it('holds guesses, and forgets them when asked', () => {
    keepGuess({ at: 1, guessed: 4, shown: 5.2 });
    expect(keepGuess({ at: 2, guessed: 6, shown: 5.2 })).toHaveLength(2);
    expect(keptGuesses().map(({ at }) => at)).toEqual([1, 2]);
    forgetGuesses();
    expect(keptGuesses()).toEqual([]);
    expect(kept.size).toBe(0);
  });

  it('leaves out what is not a guess', () => {
    kept.set(
      'veilstep-guesses',
      '[{"at":1,"guessed":4,"shown":5},{"at":2,"guessed":"4"},null,7,{"at":3,"guessed":44,"shown":5}]',
    );
    expect(keptGuesses()).toEqual([{ at: 1, guessed: 4, shown: 5 }]);
    kept.set('veilstep-guesses', 'not even JSON');
    expect(keptGuesses()).toEqual([]);
  });

  it('holds no more than the last two hundred', () => {
    for (let at = 0; at < 205; at++) keepGuess({ at, guessed: 5, shown: 5 });
    expect(keptGuesses()).toHaveLength(200);
    expect(keptGuesses()[0]?.at).toBe(5);
  });

  it('remembers what the check of the screen found', () => {
    expect(keptScreen()).toBeNull();
    keepScreen({ at: '2026-05-01T10:00:00.000Z', dark: false, light: true });
    expect(keptScreen()).toEqual({ at: '2026-05-01T10:00:00.000Z', dark: false, light: true });
    kept.set('veilstep-screen', '{"dark":1}');
    expect(keptScreen()).toBeNull();
  });

  it('does without where a browser keeps nothing', () => {
    vi.stubGlobal('localStorage', undefined);
    expect(keptGuesses()).toEqual([]);
    expect(() => keepScreen({ at: '', dark: true, light: true })).not.toThrow();
  });
});

describe('sentences', () => {
  it('say how the second patch stands to the first', () => {
    const { second } = lookWords.patch;
    expect(second(['a step darker', 'cooler', 'about as strong'])).toBe(
      'B is a step darker than A, cooler, about as strong.',
    );
    expect(second(['about the same value', 'warmer', 'greyer'])).toBe(
      'B has about the same value as A, warmer, greyer.',
    );
    expect(second(['too near in value for this photo to tell'])).toBe(
      'A and B are too near in value for this photo to tell.',
    );
  });

  it('tell a guess without a verdict', () => {
    const { told, tendency } = lookWords.guess;
    expect(told(4, 5.2)).toBe('You said 4.0, it is 5.2: seen about a step and a quarter too dark.');
    expect(told(5, 5.1)).toBe('You said 5.0, it is 5.1: as near as an eye comes.');
    expect(tendency('darks', -0.5, 0.5)).toBe('You tend to see darks about half a step too dark.');
    expect(tendency('lights', 0.1, 0.4)).toBe('You see lights about right, mostly to within half a step.');
  });
});

describe('the value under the hand', () => {
  it('is told to whoever listens, once a change', () => {
    const store = new HoverStore();
    const heard: (number | undefined)[] = [];
    const stop = store.subscribe(() => heard.push(store.get()?.step));
    store.set({ pictureId: 'one', step: 4 });
    store.set(null);
    store.set(null);
    stop();
    store.set({ pictureId: 'one', step: 6 });
    expect(heard).toEqual([4, undefined]);
  });
});
