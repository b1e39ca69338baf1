/** What the parts that carry planes over share. In the flow: carry-work -> [carry-desk-types] -> carry-desk and its parts. */
import type { Outline } from '#server/core/contract/setup.ts';
import type { Carried } from '#server/core/planes/carry/lay-planes.ts';
import type { CarrySource } from './carry-sources.ts';
import type { Laid } from './placing.ts';
import type { Doubt } from './unsure-places.ts';
import type { CarryWish } from './use-carry-wish.ts';

/** What was carried over last, until something else is done. */
export interface CarryTaken {
  paintingId: string;
  count: number;
  doubts: readonly Doubt[];
}

export interface CarryDesk {
  /** Whether planes are being placed on the painting of the easel. */
  placing: boolean;
  /** Name of somebody else who is placing planes on it, or null. */
  heldBy: string | null;
  leave(): void;
  sources: readonly CarrySource[];
  sourceId: string | null;
  chooseSource(pictureId: string): void;
  /** Planes that are carried, and whether those already on the painting are among them. */
  missing: readonly string[];
  all: boolean;
  setAll(all: boolean): void;
  fit: boolean;
  setFit(fit: boolean): void;
  /** What the worker is at. */
  doing: 'looking' | 'fitting' | null;
  /** Where everything lies; null before the first answer. */
  laid: Laid | null;
  /** In 0..1 of the squared painting; of the planes that are to be taken. */
  carried: Carried | null;
  doubts: readonly Doubt[];
  /** Why the place was not found, or why nothing can be carried; a whole sentence, or null. */
  trouble: string | null;
  /** The pictures could not be fetched. */
  away: boolean;
  /** The plane in hand; null = everything. */
  inHand: string | null;
  take(planeId: string | null): void;
  /** Lays everything so; not fitted while the hand moves. */
  lay(laid: Laid, moving: boolean): void;
  /** Whether a hand has changed what was found. */
  moved: boolean;
  /** A hand is moving it just now. */
  moving: boolean;
  /** Looks for the place anew. */
  findAgain(): void;
  /** Stores what is shown, as one step. */
  accept(): void;
  /** In 0..1 of the upright photo, by plane. */
  outlines: ReadonlyMap<string, Outline>;
  wish: CarryWish | null;
}
