/**
 * What the room `class` says, read as one state; and what follows from it for everybody on the board.
 *
 * In the flow: class document -> [state] -> server's gates, screens. Entries that do not parse are left out. Pure.
 */
import type * as Y from 'yjs';
import { HAD, LiveClock, LiveLengths, LiveLook, LiveNow, LiveOrderOfTurns, SHOWN } from './shapes.ts';
import { type Lengths, type Step, USUAL_LENGTHS } from './steps.ts';

export interface ClassState {
  /** Ids of paintings, first turn first. */
  order: readonly string[];
  lengths: Lengths;
  /** The turn that is running, or null. */
  now: LiveNow | null;
  /** Paintings that had their turn. */
  had: ReadonlySet<string>;
  /** Only who runs the class may mark, whatever the step. */
  closed: boolean;
  /** Marks are drawn on no screen. */
  quiet: boolean;
  look: LiveLook | null;
  clock: LiveClock | null;
  /** Painting → when its first impressions were revealed. */
  shown: ReadonlyMap<string, number>;
}

/** A board on which no class was ever held. */
export const NO_CLASS: ClassState = {
  order: [],
  lengths: USUAL_LENGTHS,
  now: null,
  had: new Set(),
  closed: false,
  quiet: false,
  look: null,
  clock: null,
  shown: new Map(),
};

export function readClass(doc: Y.Doc): ClassState {
  const map = doc.getMap('class');
  const kept = doc.getMap('kept');
  const lengths = LiveLengths.safeParse(map.get('lengths'));
  const had = [...map.keys()].flatMap((key) => (key.startsWith(HAD) ? [key.slice(HAD.length)] : []));
  const shown = [...kept].flatMap(([key, at]): [string, number][] => {
    return key.startsWith(SHOWN) && typeof at === 'number' ? [[key.slice(SHOWN.length), at]] : [];
  });
  return {
    order: LiveOrderOfTurns.safeParse(map.get('order')).data ?? [],
    lengths: lengths.success ? { ...USUAL_LENGTHS, ...lengths.data } : USUAL_LENGTHS,
    now: LiveNow.safeParse(map.get('now')).data ?? null,
    had: new Set(had),
    closed: map.get('closed') === true,
    quiet: map.get('quiet') === true,
    look: LiveLook.safeParse(map.get('look')).data ?? null,
    clock: LiveClock.safeParse(kept.get('clock')).data ?? null,
    shown: new Map(shown),
  };
}

/** The painting that is looked at in silence now, or null. */
export function silentPicture({ now }: ClassState): string | null {
  return now?.step === 'silent' ? now.pictureId : null;
}

/**
 * Whether references and figures are kept from everybody on the board: until the turn comes to the reference.
 */
export function isVeiled({ now }: Pick<ClassState, 'now'>): boolean {
  return now !== null && isAlone(now.step);
}

/**
 * As `isVeiled`, for screens: the veil is lifted only once the server has taken down that it is, for what is asked for
 * earlier is refused.
 */
export function isVeiledOnScreen({ now, clock }: Pick<ClassState, 'now' | 'clock'>): boolean {
  const stepBefore = isTakenDown({ now, clock }) ? null : (clock?.step ?? null);
  return isVeiled({ now }) || (stepBefore !== null && isAlone(stepBefore));
}

/** Whether the server has taken down what the class is doing. */
export function isTakenDown({ now, clock }: Pick<ClassState, 'now' | 'clock'>): boolean {
  if (now === null) return clock === null || clock.step === null;
  return clock?.number === now.number && clock.step === now.step;
}

function isAlone(step: Step): boolean {
  return step === 'silent' || step === 'intention' || step === 'strengths';
}

/** Whether the first impressions of that painting may be read by the others. */
export function isRevealed(state: ClassState, pictureId: string): boolean {
  return state.shown.has(pictureId) && silentPicture(state) !== pictureId;
}

/** Paintings that have not had their turn, the running one left out, in the running order. */
export function toCome({ order, had, now }: ClassState): string[] {
  return order.filter((id) => !had.has(id) && id !== now?.pictureId);
}
