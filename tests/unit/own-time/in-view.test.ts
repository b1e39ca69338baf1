/** When a remark counts as read: it stood in view for a moment, on a page that was in sight all the while. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { READ_MS, whenInView } from '#app/_since/in-view.ts';

/** What the browser says: all that was queued since the last time, the oldest first (W3C, Intersection Observer, "notify"). */
let observed: (moments: { isIntersecting: boolean }[]) => void;
let page: EventTarget & { visibilityState: 'visible' | 'hidden' };

beforeEach(() => {
  vi.useFakeTimers();
  page = Object.assign(new EventTarget(), { visibilityState: 'visible' as const });
  vi.stubGlobal('document', page);
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      constructor(told: typeof observed) {
        observed = told;
      }
      observe() {
        observed([{ isIntersecting: false }]);
      }
      disconnect() {
        observed = () => undefined;
      }
    },
  );
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const IN = { isIntersecting: true };
const OUT = { isIntersecting: false };

function watched() {
  const tell = vi.fn();
  const end = whenInView({} as Element, tell); // only handed on to the observer
  return { tell, end };
}

function turn(to: 'visible' | 'hidden'): void {
  page.visibilityState = to;
  page.dispatchEvent(new Event('visibilitychange'));
}

describe('a remark', () => {
  it('counts as read once it has stood in view for the moment', () => {
    const { tell } = watched();
    observed([IN]);
    vi.advanceTimersByTime(READ_MS - 1);
    expect(tell).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1);
    expect(tell).toHaveBeenCalledTimes(1);
  });

  it('that was scrolled past does not', () => {
    const { tell } = watched();
    observed([IN]);
    vi.advanceTimersByTime(READ_MS / 2);
    observed([OUT]);
    vi.advanceTimersByTime(READ_MS * 2);
    expect(tell).not.toHaveBeenCalled();
  });

  it('is judged by the newest of several moments that a busy page is told of at once', () => {
    const came = watched();
    observed([OUT, IN]);
    vi.advanceTimersByTime(READ_MS);
    expect(came.tell).toHaveBeenCalledTimes(1);
    const went = watched();
    observed([IN, OUT]);
    vi.advanceTimersByTime(READ_MS);
    expect(went.tell).not.toHaveBeenCalled();
  });

  it('on a page out of sight is read only after the page has come back', () => {
    const { tell } = watched();
    turn('hidden');
    observed([IN]);
    vi.advanceTimersByTime(READ_MS * 2);
    expect(tell).not.toHaveBeenCalled();
    turn('visible');
    vi.advanceTimersByTime(READ_MS);
    expect(tell).toHaveBeenCalledTimes(1);
  });

  it('is not told of after the watching has ended', () => {
    const { tell, end } = watched();
    observed([IN]);
    end();
    turn('visible');
    vi.advanceTimersByTime(READ_MS * 2);
    expect(tell).not.toHaveBeenCalled();
  });
});
