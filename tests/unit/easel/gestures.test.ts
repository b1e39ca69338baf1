/** From pointers to gestures, for one hand and two fingers. */
import { describe, expect, test } from 'vitest';
import { type At, Gestures, type GestureTarget } from '#app/_easel/gestures.ts';

const at = (x: number, y: number, touch = false): At => ({ x, y, pressure: 0.5, touch });

function recorded(takes: boolean) {
  const said: string[] = [];
  const target: GestureTarget = {
    takesDrag: () => takes,
    tap: (_, twice) => said.push(twice ? 'tap twice' : 'tap'),
    dragStart: ({ x, y }) => said.push(`start ${x} ${y}`),
    dragMove: ({ x, y }) => said.push(`move ${x} ${y}`),
    dragEnd: () => said.push('end'),
    dragCancel: () => said.push('cancel'),
    pan: (dx, dy) => said.push(`pan ${dx} ${dy}`),
    zoom: (factor) => said.push(`zoom ${factor.toFixed(2)}`),
    swipe: (towards) => said.push(`swipe ${towards}`),
  };
  return { said, gestures: new Gestures(target) };
}

describe('gestures', () => {
  test('a press that hardly moves is a tap; two at one place and soon are a double tap', () => {
    const { said, gestures } = recorded(true);
    for (const time of [0, 200]) {
      gestures.down(1, at(10, 10), false);
      gestures.move(1, at(12, 11));
      gestures.up(1, at(12, 11), time);
    }
    expect(said).toEqual(['tap', 'tap twice']);
  });

  test('two taps far apart are two taps, however quick', () => {
    const { said, gestures } = recorded(true);
    gestures.down(1, at(10, 10), false);
    gestures.up(1, at(10, 10), 0);
    gestures.down(1, at(60, 10), false);
    gestures.up(1, at(60, 10), 100);
    expect(said).toEqual(['tap', 'tap']);
  });

  test('a drag that the hand takes begins where it was pressed', () => {
    const { said, gestures } = recorded(true);
    gestures.down(1, at(10, 10), false);
    gestures.move(1, at(30, 10));
    gestures.up(1, at(30, 10), 0);
    expect(said).toEqual(['start 10 10', 'move 30 10', 'end']);
  });

  test('a drag that the hand leaves moves the picture, by all the way', () => {
    const { said, gestures } = recorded(false);
    gestures.down(1, at(10, 10), false);
    gestures.move(1, at(30, 10));
    gestures.move(1, at(30, 15));
    expect(said).toEqual(['pan 20 0', 'pan 0 5']);
  });

  test('the middle button moves the picture even when the hand draws', () => {
    const { said, gestures } = recorded(true);
    gestures.down(1, at(10, 10), true);
    gestures.move(1, at(30, 10));
    expect(said).toEqual(['pan 20 0']);
  });

  test('a second finger drops what the first was drawing, and zooms', () => {
    const { said, gestures } = recorded(true);
    gestures.down(1, at(100, 100, true), false);
    gestures.move(1, at(120, 100, true));
    gestures.down(2, at(220, 100, true), false);
    gestures.move(2, at(320, 100, true));
    gestures.up(2, at(320, 100, true), 0);
    gestures.up(1, at(120, 100, true), 0);
    expect(said).toEqual(['start 100 100', 'move 120 100', 'cancel', 'pan 50 0', 'zoom 2.00']);
  });

  test('a sideways stroke of one finger asks for the other picture', () => {
    const { said, gestures } = recorded(false);
    gestures.down(1, at(200, 100, true), false);
    gestures.move(1, at(100, 105, true));
    gestures.up(1, at(100, 105, true), 0);
    expect(said.at(-1)).toBe('swipe left');
  });
});
