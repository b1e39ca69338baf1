/**
 * What readings come to in the measured document: their ids and forms, adjustment cards, neutral observations.
 *
 * The rules that make them stand in `readings`, which knows the document and not the other way round. Types only.
 */

export type ReadingId =
  | `V${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11 | 12 | 13}`
  | `C${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8}`
  | `D${1 | 2 | 3}`
  | `G${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10}`;

/** `finding` departs from the target; `question`: the target shows the same; `check`: no target to compare with. */
export type ReadingForm = 'finding' | 'question' | 'check';

export type CardPart =
  | 'whole'
  | 'darks'
  | 'lights'
  | 'contrast'
  | 'colour'
  | 'shadows'
  | 'detail'
  | 'edge'
  | 'shapes'
  | 'accent'
  | 'photo';

export type CardDirection =
  | 'lift'
  | 'deepen'
  | 'narrow'
  | 'widen'
  | 'grey'
  | 'strengthen'
  | 'cool'
  | 'warm'
  | 'toward-air'
  | 'back-from-air'
  | 'soften'
  | 'sharpen'
  | 'simplify'
  | 'join'
  | 'quiet'
  | 'again';

export interface CardAction {
  part: CardPart;
  direction: CardDirection;
  /** In painters' words; null at grade C and where no amount applies. */
  amount: string | null;
  /** The same in L*, before it is put into words; null where no amount applies. Left out by older results. */
  amountL?: number | null;
  /** `darks: lift about half a step`. */
  words: string;
  how: string;
  /** True when the hint mixes or layers paint. */
  mixes: boolean;
}

export interface AdjustmentCard {
  /** Stable for the same picture: lead reading and place; letters, digits, hyphens. */
  id: string;
  /** Reading ids that met on this card, the leading one first. */
  readings: ReadingId[];
  /** Name of the plane; null = the whole picture or the photo. */
  plane: string | null;
  /** The place in words. */
  where: string;
  /** What to do, the leading action first; at least one. */
  actions: CardAction[];
  why: string;
  check: string;
  /** True when any hint mixes paint: show `HEALTH_LINE` beside it. */
  healthLine: boolean;
  /** True for the at most three that are open by default. */
  open: boolean;
  /** Ids of other cards that this one would undo: never open beside them. */
  against?: string[];
}

export type ObservationId = 'withheld' | 'key' | 'span' | 'colour' | 'air' | 'room' | 'size';

export interface Observation {
  id: ObservationId;
  /** Planes it is about, far to near; empty = the whole picture. */
  planes: string[];
  /** At most 30 words. */
  sentence: string;
}
