/** What is meant for a tool before its script is there. */
import { describe, expect, test } from 'vitest';
import type { Hand, HandPoint } from '#app/_easel/hand.ts';
import { Meanwhile } from '#app/_easel/meanwhile.ts';

const at = (x: number): HandPoint => ({
  point: [x, 0.5],
  pressure: 0.5,
  touch: false,
  straight: false,
  pixel: { x: 0.001, y: 0.001 },
});

function recorded(takes = true) {
  const said: string[] = [];
  const say = (what: string) => (place?: HandPoint) =>
    void said.push(place ? `${what} ${place.point[0]}` : what);
  const hand: Hand = {
    cursor: 'crosshair',
    crosshair: true,
    keysHint: '',
    tap: (place, twice) => said.push(`${twice ? 'tap twice' : 'tap'} ${place.point[0]}`),
    key: (key) => said.push(`key ${key}`) > 0,
    drag: {
      takes: () => takes,
      start: say('start'),
      move: say('move'),
      end: say('end'),
      cancel: say('cancel'),
    },
  };
  return { said, hand };
}

/** Does everything that waits. */
function comes(meanwhile: Meanwhile, hand: Hand): void {
  while (meanwhile.next(hand));
}

describe('before the hand of a tool is there', () => {
  test('taps, keys and drags are done by it in their order, and nothing twice', () => {
    const meanwhile = new Meanwhile();
    const { said, hand } = recorded();
    const waiting = meanwhile.hand('');
    waiting.tap?.(at(0.1), false);
    waiting.drag?.start(at(0.2));
    waiting.drag?.move(at(0.3));
    waiting.drag?.move(at(0.4));
    waiting.drag?.end();
    expect(waiting.key?.('Enter', [0.5, 0.5], false)).toBe(true);
    expect(meanwhile.holds).toBe(true);
    comes(meanwhile, hand);
    expect(said).toEqual(['tap 0.1', 'start 0.2', 'move 0.3', 'move 0.4', 'end', 'key Enter']);
    expect(meanwhile.holds).toBe(false);
    expect(meanwhile.next(hand)).toBe(false);
  });

  test('every drag is held, wherever it begins; keys that move the picture are not', () => {
    const waiting = new Meanwhile().hand('');
    expect(waiting.drag?.takes(at(0.1))).toBe(true);
    expect(waiting.key?.('ArrowLeft', [0.5, 0.5], false)).toBe(false);
  });

  test('a drag that is still going is handed over with all it has drawn', () => {
    const meanwhile = new Meanwhile();
    const { said, hand } = recorded();
    const waiting = meanwhile.hand('');
    waiting.drag?.start(at(0.2));
    waiting.drag?.move(at(0.3));
    comes(meanwhile, hand);
    expect(said).toEqual(['start 0.2', 'move 0.3']);
    // From here on the stage speaks to the tool's own hand.
    expect(meanwhile.holds).toBe(false);
  });

  test('a going drag that the tool does not take is nothing until it is let go', () => {
    const meanwhile = new Meanwhile();
    const { said, hand } = recorded(false);
    const waiting = meanwhile.hand('');
    waiting.drag?.start(at(0.2));
    comes(meanwhile, hand);
    expect(meanwhile.holds).toBe(true);
    waiting.drag?.move(at(0.3));
    waiting.drag?.end();
    expect(meanwhile.holds).toBe(false);
    comes(meanwhile, hand);
    expect(said).toEqual([]);
  });

  test('a drag that was let go and is not taken holds nothing up', () => {
    const meanwhile = new Meanwhile();
    const { said, hand } = recorded(false);
    const waiting = meanwhile.hand('');
    waiting.drag?.start(at(0.2));
    waiting.drag?.end();
    waiting.tap?.(at(0.6), true);
    comes(meanwhile, hand);
    expect(said).toEqual(['tap twice 0.6']);
    expect(meanwhile.holds).toBe(false);
  });

  test('a drag that became a pinch is not done; what was meant before it is', () => {
    const meanwhile = new Meanwhile();
    const { said, hand } = recorded();
    const waiting = meanwhile.hand('');
    waiting.tap?.(at(0.1), false);
    waiting.drag?.start(at(0.2));
    waiting.drag?.cancel();
    comes(meanwhile, hand);
    expect(said).toEqual(['tap 0.1']);
  });

  test('what was meant for one tool is forgotten with it', () => {
    const meanwhile = new Meanwhile();
    const { said, hand } = recorded();
    const waiting = meanwhile.hand('');
    waiting.tap?.(at(0.1), false);
    waiting.drag?.start(at(0.2));
    meanwhile.forget();
    waiting.drag?.move(at(0.3));
    waiting.drag?.end();
    expect(meanwhile.holds).toBe(false);
    comes(meanwhile, hand);
    expect(said).toEqual([]);
  });
});
