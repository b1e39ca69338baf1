/**
 * The clock of a class: what the server takes down when a step begins or is held, and what is left by it.
 *
 * In the flow: class room -> [keepClock], the server's own write -> everybody's screen counts from it, by the server's
 * time. Milliseconds since 1970. Pure: the time comes in.
 */
import type * as Y from 'yjs';
import { edit } from '../live/document.ts';
import { type LiveClock, type LiveNow, SHOWN } from './shapes.ts';
import { type ClassState, isTakenDown, readClass } from './state.ts';
import { type Lengths, turnLength } from './steps.ts';

/**
 * Brings the server's part of the document up to what the class is doing: the clock, and which paintings' first
 * impressions are revealed. Writes nothing where nothing is behind.
 */
export function keepClock(doc: Y.Doc, nowMs: number): void {
  const { now, clock, shown } = readClass(doc);
  edit(doc, () => {
    const kept = doc.getMap('kept');
    const next = now ? clockNow(clock, now, nowMs) : clock && { ...clock, step: null };
    if (next && JSON.stringify(next) !== JSON.stringify(clock)) kept.set('clock', next);
    if (!now) return;
    const silent = now.step === 'silent';
    if (silent && shown.has(now.pictureId)) kept.delete(SHOWN + now.pictureId);
    if (!silent && !shown.has(now.pictureId)) kept.set(SHOWN + now.pictureId, nowMs);
  });
}

/** What the clock says once `now` stands in the document. A clock that is there already is carried on. */
export function clockNow(clock: LiveClock | null, now: LiveNow, nowMs: number): LiveClock {
  const { number, pictureId, paused } = now;
  const going = clock && clock.pictureId === pictureId && clock.number <= number ? clock : null;
  const heldNow = going && going.heldSinceMs !== null ? Math.max(0, nowMs - going.heldSinceMs) : 0;
  const heldSinceMs = paused ? nowMs : null;
  if (going?.number === number && going.step === now.step) {
    if (paused === (going.heldSinceMs !== null)) return going;
    return {
      ...going,
      stepHeldMs: going.stepHeldMs + heldNow,
      turnHeldMs: going.turnHeldMs + heldNow,
      heldSinceMs,
    };
  }
  return {
    number,
    step: now.step,
    pictureId,
    stepBeganMs: nowMs,
    turnBeganMs: going && now.step !== 'silent' ? going.turnBeganMs : nowMs,
    stepHeldMs: 0,
    turnHeldMs: going && now.step !== 'silent' ? going.turnHeldMs + heldNow : 0,
    heldSinceMs,
  };
}

/** Milliseconds left; below zero it runs over. */
export interface Left {
  stepMs: number;
  turnMs: number;
}

/** What is left of step and turn, or null while the server has not taken down the step that is running. */
export function leftOf({ now, clock, lengths }: ClassState, serverMs: number): Left | null {
  if (!now || !clock || !isTakenDown({ now, clock })) return null;
  const atMs = clock.heldSinceMs ?? serverMs;
  const stepGone = atMs - clock.stepBeganMs - clock.stepHeldMs;
  const turnGone = atMs - clock.turnBeganMs - clock.turnHeldMs;
  return { stepMs: planned(lengths, now) - stepGone, turnMs: turnLength(lengths) * 1000 - turnGone };
}

function planned(lengths: Lengths, { step }: LiveNow): number {
  return lengths[step] * 1000;
}
