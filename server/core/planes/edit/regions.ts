/**
 * Adding patches of a picture to a plane, or taking them away from it.
 *
 * In the flow: patches under the hand -> [regions] -> relabel -> live outlines. What is added is taken from whatever
 * was seen there, so nearer planes give way; what is taken away goes, patch by patch, to the plane beside it that it
 * is most like. Pure.
 */
import { NO_PLANE } from '../label-map.ts';
import { type Layers, layersOf, type Ring } from './layers.ts';
import type { Patches, Stroke } from './patches.ts';
import { relabelled } from './relabel.ts';
import { takenAway } from './take-away.ts';

/**
 * Why nothing was done: `nothing` = all of it is so already; `apart` = it hangs on nothing of the plane; `inside` = it
 * lies in the middle of another plane (or, taken away, of its own); `cuts` = a plane would fall in two;
 * `swallows` = a plane would be gone. `plane` is the one that it is about.
 */
export interface EditTrouble {
  readonly trouble: 'nothing' | 'apart' | 'inside' | 'cuts' | 'swallows';
  readonly plane: number;
}

export interface Edited {
  /** New rings by plane, far to near; planes that are not named keep theirs. */
  readonly rings: ReadonlyMap<number, Ring>;
}

/** @param rings far to near; null where a plane has no outline on this picture. */
export function paintedOver(
  rings: readonly (Ring | null)[],
  patches: Patches,
  stroke: Stroke,
): Edited | EditTrouble {
  const layers = layersOf(rings, patches.grid);
  const wanted = stroke.way === 'add' ? added(layers, patches, stroke) : takenAway(layers, patches, stroke);
  const outcome = relabelled(layers, wanted);
  const trouble = troubleOf(layers, wanted, stroke, outcome);
  return trouble ?? { rings: outcome.rings };
}

function added({ seen }: Layers, { labels }: Patches, { plane, picked }: Stroke): Uint8Array {
  const wanted = seen.slice();
  const joins = new Uint8Array(1 + Math.max(...picked, 0));
  for (const patch of picked) joins[patch] = 1;
  for (let cell = 0; cell < wanted.length; cell++)
    if (joins[labels[cell] as number] === 1) wanted[cell] = plane;
  return wanted;
}

/** What makes the outcome another one than a painter would have meant; null when it is what was asked. */
function troubleOf(
  { seen }: Layers,
  wanted: Uint8Array,
  { plane, way }: Stroke,
  outcome: ReturnType<typeof relabelled>,
): EditTrouble | null {
  let [asked, got] = [0, 0];
  const [before, after] = [new Uint32Array(256), new Uint32Array(256)];
  for (let cell = 0; cell < seen.length; cell++) {
    const [was, is] = [seen[cell] as number, outcome.seen[cell] as number];
    before[was] = (before[was] as number) + 1;
    after[is] = (after[is] as number) + 1;
    if (wanted[cell] === was) continue;
    asked++;
    if (wanted[cell] === is) got++;
  }
  if (asked === 0) return { trouble: way === 'add' ? 'nothing' : 'inside', plane };
  const gone = before.findIndex((count, label) => label !== NO_PLANE && count > 0 && after[label] === 0);
  if (gone >= 0) return { trouble: 'swallows', plane: gone };
  const cut = outcome.cutOff.findIndex((cells) => cells > asked);
  if (cut >= 0) return { trouble: 'cuts', plane: cut };
  if (got > 0) return null;
  return { trouble: outcome.refused.inside > outcome.refused.apart ? 'inside' : 'apart', plane };
}
