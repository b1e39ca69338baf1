/** Who holds an outline: all browsers agree, and the later one waits for the earlier. */
import { describe, expect, test, vi } from 'vitest';
import { heldByOther, peopleHere, pointersHere, whenFree } from '#app/_live/presence.ts';
import { type PresentPerson, readPresence } from '#server/core/live/presence.ts';

const person = (id: string) => ({ id, name: id.toUpperCase(), role: 'peer' });
const window = (clientId: number, id: string, since: number | null): PresentPerson => ({
  clientId,
  person: person(id),
  hold: since === null ? null : { what: 'outline/r/p', since },
});
const ME = { ...person('me'), self: true };

describe('holds', () => {
  test('the earlier hand holds, for both alike', () => {
    const present = [window(1, 'ada', 20), window(2, 'ben', 10)];
    expect(heldByOther(present, 'outline/r/p', 1)).toBe('BEN');
    expect(heldByOther(present, 'outline/r/p', 2)).toBeNull();
  });

  test('of two at one moment the lower client id holds, whatever order the states came in', () => {
    const states = new Map<number, unknown>([
      [9, { person: person('ben'), hold: { what: 'outline/r/p', since: 10 } }],
      [3, { person: person('ada'), hold: { what: 'outline/r/p', since: 10 } }],
    ]);
    const present = readPresence(states, Number.NaN);
    expect(heldByOther(present, 'outline/r/p', 9)).toBe('ADA');
    expect(heldByOther(present, 'outline/r/p', 3)).toBeNull();
  });

  test('the later hand stores after the earlier has let go', () => {
    vi.useFakeTimers();
    const listeners = new Set<() => void>();
    const source = {
      present: [window(1, 'ada', 10), window(2, 'me', 20)],
      ownClientId: () => 2,
      subscribePresence: (listener: () => void) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
    };
    const act = vi.fn();
    whenFree(source, 'outline/r/p', act);
    vi.advanceTimersByTime(1000);
    expect(act).not.toHaveBeenCalled();
    source.present = [window(1, 'ada', null), window(2, 'me', 20)];
    for (const listener of listeners) listener();
    vi.advanceTimersByTime(1000);
    expect(act).toHaveBeenCalledTimes(1);
    expect(listeners.size).toBe(0);
    vi.useRealTimers();
  });

  test('what nobody else holds is stored at once', () => {
    const act = vi.fn();
    whenFree({ present: [], ownClientId: () => 1, subscribePresence: () => () => undefined }, 'photo/x', act);
    expect(act).toHaveBeenCalledTimes(1);
  });
});

describe('people and pointers', () => {
  test('a person with two windows is here once, and this person comes first', () => {
    const present = [
      window(1, 'zoe', null),
      window(2, 'ben', null),
      window(3, 'ben', null),
      window(4, 'me', null),
    ];
    expect(peopleHere(present, ME).map(({ id }) => id)).toEqual(['me', 'ben', 'zoe']);
  });

  test('the own hand is not shown, a second window of the same person is', () => {
    const pointer = { pictureId: 'p', x: 0.5, y: 0.5 };
    const present = [4, 5].map((clientId) => ({ ...window(clientId, 'me', null), pointer }));
    expect(pointersHere(present, 4).map(({ clientId }) => clientId)).toEqual([5]);
  });
});
