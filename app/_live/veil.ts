/**
 * What is kept from the screen while a class looks at a painting alone: everything that was read off the reference, every
 * figure, and in the silent look what anybody said.
 *
 * In the flow: board-live's readings -> [veil] -> every part of the screen. The server keeps the same back; this takes it
 * off screens that had it already. Pure.
 */
import type { BoardLive } from './board-live-types.ts';
import type { ClassView } from './class-view.ts';

const NOTHING: ReadonlyMap<string, never> = new Map<string, never>();

/** The parts of the live board that can tell of reference, figures or what others said. */
type Kept = Pick<
  BoardLive,
  | 'outlinesOf'
  | 'air'
  | 'meantOf'
  | 'answersOf'
  | 'cardsOf'
  | 'resultNumber'
  | 'pendingOf'
  | 'marks'
  | 'nods'
  | 'intentionOf'
  | 'focusOf'
>;

/** @param own Whether that painting is this person's: their own intention stays before them. */
export function veil<Readings extends Kept>(
  readings: Readings,
  { veiled, silentId }: ClassView,
  own: (pictureId: string) => boolean,
): Readings {
  if (!veiled) return readings;
  const withoutFigures: Readings = {
    ...readings,
    outlinesOf: () => NOTHING,
    air: NOTHING,
    meantOf: () => NOTHING,
    answersOf: () => NOTHING,
    cardsOf: () => NOTHING,
    resultNumber: () => null,
    pendingOf: () => null,
  };
  if (silentId === null) return withoutFigures;
  return {
    ...withoutFigures,
    marks: [],
    nods: NOTHING,
    intentionOf: (pictureId) => (own(pictureId) ? readings.intentionOf(pictureId) : ''),
    focusOf: (pictureId) => (own(pictureId) ? readings.focusOf(pictureId) : null),
  };
}
