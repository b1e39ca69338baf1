/**
 * In which picture planes may be looked for, and what taking them would do there.
 *
 * A set of planes belongs to the board and is taken from the reference, or from the painting where there is none; on a
 * painting the board's own planes get outlines. In the flow: live board -> [find-target] -> chooser. Pure.
 */
import type { Permissions } from '#app/_live/board-live-types.ts';
import type { PictureView } from '#server/core/contract/responses.ts';

export interface FindTarget {
  picture: PictureView;
  /** set = a set of planes may be taken; match = only outlines for the planes that are there. */
  way: 'set' | 'match';
}

interface Easel {
  reference: PictureView | null;
  painting: PictureView | null;
  /** How many planes the board has. */
  planes: number;
  may: Pick<Permissions, 'setup' | 'painting'>;
}

/** The reference before the painting; empty where this person may write nothing. */
export function findTargets({ reference, painting, planes, may }: Easel): FindTarget[] {
  const targets: FindTarget[] = [];
  if (reference && may.setup) targets.push({ picture: reference, way: 'set' });
  if (!painting || !may.painting(painting.id)) return targets;
  if (!reference && may.setup) targets.push({ picture: painting, way: 'set' });
  else if (planes > 0) targets.push({ picture: painting, way: 'match' });
  return targets;
}

/** Where to begin: in the first picture without outlines, else in the first. */
export function firstTarget(
  targets: readonly FindTarget[],
  outlines: (pictureId: string) => number,
): FindTarget | null {
  return targets.find(({ picture }) => outlines(picture.id) === 0) ?? targets[0] ?? null;
}
