/**
 * What a person chooses between: the groupings of one picture that differ, with the places of their numbers.
 *
 * In the flow: core proposals -> [groupings] in the worker -> chooser, easel. Several numbers that were asked for may
 * come to the same planes; each is shown once, and why there are no more is kept in the proposal's own sentence. Pure.
 */

import type { FractionPoint, PlaneKind } from '#server/core/contract/setup.ts';
import { planePlaces } from '#server/core/planes/plane-places.ts';
import type { PlaneProposals, Proposal } from '#server/core/planes/propose/propose.ts';

export interface GroupedPlane {
  name: string;
  kind: PlaneKind;
  /** 0..1 of the upright original. */
  outline: FractionPoint[];
  /** Where its number stands, 0..1 of the upright original; null where the plane is too thin for one. */
  numberAt: FractionPoint | null;
}

/** Far to near, at least two. */
export type Grouping = readonly GroupedPlane[];

export interface Groupings {
  /** Few planes to many; empty where the picture does not part into two. */
  all: readonly Grouping[];
  /** Index of the one the program would choose. */
  chosenAt: number;
  /** Why that one, a sentence. */
  reason: string;
  /** Why there is no grouping of more planes, by the number asked for; none where there is one. */
  notes: ReadonlyMap<number, string>;
}

/** @param original From the picture that was looked at to 0..1 of the upright original. */
export function groupingsOf(
  { alternatives, chosen, reason }: PlaneProposals,
  original: (point: FractionPoint) => FractionPoint,
): Groupings {
  const distinct = new Map<number, Proposal>();
  const notes = new Map<number, string>();
  for (const proposal of alternatives) {
    const { planes, asked, note } = proposal;
    if (planes.length > 1 && !distinct.has(planes.length)) distinct.set(planes.length, proposal);
    if (note !== null) notes.set(asked, note);
  }
  const counts = [...distinct.keys()].sort((one, two) => one - two);
  return {
    all: counts.map((count) => grouped(distinct.get(count)?.planes ?? [], original)),
    chosenAt: Math.max(0, counts.indexOf(chosen.planes.length)),
    reason,
    notes,
  };
}

function grouped(planes: Proposal['planes'], original: (point: FractionPoint) => FractionPoint): Grouping {
  const outlines = planes.map(({ outline }, at) => ({ planeId: String(at), outline: [...outline] }));
  const { badges } = planePlaces(outlines);
  return planes.map(({ name, kind, outline }, at) => {
    const badge = badges.get(String(at));
    return { name, kind, outline: outline.map(original), numberAt: badge ? original(badge) : null };
  });
}

/** The sentence why no more planes are shown, or null where all numbers are. */
export function whyNoMore({ all, notes }: Groupings): string | null {
  const most = all.at(-1)?.length ?? 1;
  return notes.get(most + 1) ?? null;
}
