/**
 * From the live documents to the setup of one measurement.
 *
 * In the flow: rooms `setup` and `painting/<pictureId>` → [setupFrom] → pipeline (and the browser's preview).
 * Pure.
 */
import type * as Y from 'yjs';
import type { Setup, SetupPlane } from '../contract/setup.ts';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';
import { readOutlinesOf, readPaintingOutlines } from './outlines.ts';
import { readFocus, readMeant, readPhoto } from './painting.ts';
import { readPlanToMeasure } from './plan/taken-plan.ts';
import { MOST_PLANES, readPlanes } from './planes.ts';
import { readAir, readConditions, readUnreliable } from './scene.ts';

export interface LiveSetupSource {
  setup: Y.Doc;
  painting: Y.Doc;
  paintingId: string;
  /** The reference to measure against, or null when the board has none. */
  referenceId: string | null;
}

/**
 * The setup, planes far to near, twelve at most.
 *
 * Outlines and focus of the painting are in 0..1 of its **upright original**; whoever squares the photo maps
 * them. A plane without an outline on the reference is left out. A plane without one on the painting has no
 * `painting`: it takes the reference's outline, which is already in 0..1 of the squared painting. Without a
 * reference, `reference` repeats the painting's own outline.
 *
 * @throws Problem `planes-missing` when no plane has an outline.
 */
export function setupFrom(source: LiveSetupSource): Setup {
  const { setup, painting, referenceId, paintingId } = source;
  const onReference = referenceId === null ? null : readOutlinesOf(setup, referenceId);
  const onPainting = readPaintingOutlines(painting);
  const unreliable = readUnreliable(setup);
  const planes = readPlanes(setup).flatMap(({ id, name, kind, tilt }): SetupPlane[] => {
    const own = onPainting.get(id);
    const reference = onReference ? onReference.get(id) : own;
    if (!reference) return [];
    const plane = { name, kind, tilt, unreliable: unreliable.has(id), reference };
    return [own ? { ...plane, painting: own } : plane];
  });
  if (planes.length === 0) {
    throw new Problem(
      'planes-missing',
      referenceId === null
        ? say`No plane is outlined on the painting yet. Outline at least one, far to near.`
        : say`No plane is outlined on the reference yet. Outline at least one, far to near.`,
    );
  }
  const photo = readPhoto(painting);
  return {
    planes: planes.slice(0, MOST_PLANES),
    ...(Object.keys(photo).length > 0 ? { photo } : {}),
    conditions: readConditions(setup),
    air: airFrom(setup, referenceId, paintingId),
    focus: readFocus(painting),
    meant: meantFrom(painting, setup),
    plan: readPlanToMeasure(setup),
  };
}

function airFrom(setup: Y.Doc, referenceId: string | null, paintingId: string): Setup['air'] {
  const picked = readAir(setup);
  const reference = referenceId === null ? null : (picked.get(referenceId) ?? null);
  const painting = picked.get(paintingId) ?? null;
  return reference || painting ? { reference, painting } : null;
}

/** `V4` as it is, `V4-<planeId>` as `V4/<name of the plane>`; of a plane that is gone nothing is left. */
function meantFrom(painting: Y.Doc, setup: Y.Doc): string[] {
  const names = new Map(readPlanes(setup).map(({ id, name }) => [id, name]));
  return [...readMeant(painting).keys()].flatMap((key) => {
    const dash = key.indexOf('-');
    if (dash < 0) return [key];
    const name = names.get(key.slice(dash + 1));
    return name === undefined ? [] : [`${key.slice(0, dash)}/${name}`];
  });
}
