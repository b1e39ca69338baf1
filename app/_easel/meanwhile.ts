/**
 * What is meant for a tool whose script is still on its way: taps, keys and drags, done in their order once the tool's
 * own hand is there. Until then nothing moves, for a drag meant for a tool is not meant for the picture.
 *
 * In the flow: stage -> [meanwhile] -> the tool's hand. Holds only its own state; touches no DOM.
 */
import type { Hand, HandPoint } from './hand.ts';

type Act = (hand: Hand) => void;

interface HeldDrag {
  start: HandPoint;
  moves: HandPoint[];
  /** going = the button is still pressed; left = pressed, but nothing the tool takes, so that it ends as nothing. */
  state: 'going' | 'ended' | 'left';
  act: Act;
}

export class Meanwhile {
  readonly #acts: Act[] = [];
  #drag: HeldDrag | null = null;

  /** Whether the stage still speaks to the waiting hand: something is not done yet, or a drag goes on that is left. */
  get holds(): boolean {
    return this.#acts.length > 0 || this.#drag?.state === 'left';
  }

  /** Does the oldest. The hand must be drawn anew before the next, which may build on it. @returns False when none is left. */
  next(hand: Hand): boolean {
    const act = this.#acts.shift();
    act?.(hand);
    return act !== undefined;
  }

  /** What was meant for one tool is not done by another. */
  forget(): void {
    this.#acts.length = 0;
    this.#drag = null;
  }

  /** The hand until the tool's own is there. */
  hand(keysHint: string): Hand {
    return {
      ...{ cursor: 'progress', crosshair: false, keysHint },
      tap: (at, twice) => void this.#acts.push((hand) => hand.tap?.(at, twice)),
      key: (key, crosshair, shift) => {
        if (key !== ' ' && key !== 'Enter') return false;
        this.#acts.push((hand) => void hand.key?.(key, crosshair, shift));
        return true;
      },
      drag: {
        takes: () => true,
        start: (at) => this.#start(at),
        move: (at) => void this.#drag?.moves.push(at),
        end: () => this.#end(),
        cancel: () => this.#cancel(),
      },
    };
  }

  #start(start: HandPoint): void {
    const drag: HeldDrag = { start, moves: [], state: 'going', act: (hand) => this.#catchUp(drag, hand) };
    this.#drag = drag;
    this.#acts.push(drag.act);
  }

  /** All that was drawn so far in one go, as a hand is told of it between two drawings; the rest goes to it directly. */
  #catchUp(drag: HeldDrag, { drag: own }: Hand): void {
    const going = drag.state === 'going';
    if (!own?.takes(drag.start)) {
      if (going) drag.state = 'left';
      return;
    }
    if (going) this.#drag = null;
    own.start(drag.start);
    for (const at of drag.moves) own.move(at);
    if (!going) own.end();
  }

  #end(): void {
    if (this.#drag?.state === 'going') this.#drag.state = 'ended';
    this.#drag = null;
  }

  #cancel(): void {
    const at = this.#drag ? this.#acts.indexOf(this.#drag.act) : -1;
    if (at >= 0) this.#acts.splice(at, 1);
    this.#drag = null;
  }
}
