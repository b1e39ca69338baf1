/**
 * Neutral observations: key, span, colour as a whole, room, air. Shown in grey, never ranked, never faults.
 *
 * In the flow: scene -> [observations] -> screen. At grade C they speak of order only. Pure. Source: Parkhurst 1898
 * (a picture may be transposed up or down provided that relations hold).
 */
import type { Observation } from '../contract/critique.ts';
import { fitKeyAndSpan } from '../gaps/fit.ts';
import { median } from '../image/percentiles.ts';
import { say } from '../say/say.ts';
import { shows } from './gate.ts';
import { MORE_AIR, recessionAchieved } from './recession-achieved.ts';
import type { Scene } from './scene.ts';
import { inTarget, thanTarget } from './target-words.ts';
import { amountInWords, shortName } from './words.ts';

const KEY_L = 5;
const SPAN = 0.15;
const CHROMA_LOG = Math.log(1.2);
const ROOM = 0.08;
const SIZE = 1.25;
/** Planes under this share are too small for their size to be spoken of. */
const LEAST_SHARE = 0.02;

function withheld(scene: Scene): Observation[] {
  if (scene.noise.grade !== 'C') return [];
  const sentence = say`Colour readings and amounts are withheld: without a grey or white to trust, only the order of things is said.`;
  return [{ id: 'withheld', planes: [], sentence }];
}

function keyWords(higher: boolean, than: string, amount: string | null): string {
  if (amount === null) {
    return higher
      ? say`The painting sits in a higher key ${than}. That is a choice.`
      : say`The painting sits in a lower key ${than}. That is a choice.`;
  }
  return higher
    ? say`The painting sits in a higher key ${than}, by about ${amount}. That is a choice.`
    : say`The painting sits in a lower key ${than}, by about ${amount}. That is a choice.`;
}

function keyAndSpan(scene: Scene): Observation[] {
  const pairs = scene.planes.flatMap(({ target, painting }): [number, number][] =>
    target?.mid == null || painting.mid === null ? [] : [[target.mid, painting.mid]],
  );
  const { key, span } = fitKeyAndSpan(pairs);
  const middle = median(pairs.map(([r]) => r));
  if (key === null || span === null || middle === null) return [];
  const raised = key + (span - 1) * middle;
  const range = Math.max(...pairs.map(([r]) => r)) - Math.min(...pairs.map(([r]) => r));
  const found: Observation[] = [];
  const than = thanTarget(scene);
  if (shows(Math.abs(raised), KEY_L, scene.noise.absoluteL)) {
    const amount = amountInWords(raised, scene.noise.grade);
    found.push({ id: 'key', planes: [], sentence: keyWords(raised > 0, than, amount) });
  }
  if (shows(Math.abs(span - 1), SPAN, scene.noise.relationL / Math.max(range, 1))) {
    const sentence =
      span > 1
        ? say`The painting uses a wider span of values ${than}. That is a choice.`
        : say`The painting uses a narrower span of values ${than}. That is a choice.`;
    found.push({ id: 'span', planes: [], sentence });
  }
  return found;
}

function colourTurned(scene: Scene): Observation[] {
  if (scene.noise.grade === 'C') return [];
  const logs = scene.planes.flatMap(({ target, painting }) =>
    target?.chroma == null || painting.chroma === null || target.chroma < 5
      ? []
      : [{ ratio: Math.log(Math.max(2, painting.chroma) / target.chroma), chroma: painting.chroma }],
  );
  const turned = median(logs.map(({ ratio }) => ratio));
  const typical = median(logs.map(({ chroma }) => chroma));
  if (turned === null || typical === null || logs.length < 3) return [];
  if (!shows(Math.abs(turned), CHROMA_LOG, scene.noise.absoluteAb / Math.max(typical, 5))) return [];
  const sentence =
    turned > 0
      ? say`Colour is stronger all over than ${inTarget(scene)}. That is a choice.`
      : say`Colour is quieter all over than ${inTarget(scene)}. That is a choice.`;
  return [{ id: 'colour', planes: [], sentence }];
}

function moreAir(scene: Scene): Observation[] {
  return scene.document.planes.flatMap((plane, index) => {
    const achieved = recessionAchieved(plane.recession, scene.document.capture.grade);
    if (achieved === null || achieved <= MORE_AIR) return [];
    const sentence = say`You used more air ${thanTarget(scene)} on the ${shortName(plane.name, index)}.`;
    return [{ id: 'air' as const, planes: [plane.name], sentence }];
  });
}

/** Room and size come from the outlines, not from the camera, so no grade stands between. */
function roomAndSize(scene: Scene): Observation[] {
  return scene.document.planes.flatMap((plane, index): Observation[] => {
    const [r, p] = [plane.reference?.share ?? null, plane.painting.share];
    if (r === null || !(r >= LEAST_SHARE) || scene.document.target !== 'reference') return [];
    const label = shortName(plane.name, index);
    const times = Math.sqrt(p / r);
    const kind = scene.planes.find(({ name }) => name === plane.name)?.kind;
    if (kind !== 'sky' && times >= SIZE) {
      const sentence = say`The ${label} is about ${times.toFixed(1)} times as large as in the reference.`;
      return [{ id: 'size', planes: [plane.name], sentence }];
    }
    if (Math.abs(p - r) < ROOM) return [];
    const [takes, took] = [Math.round(p * 100), Math.round(r * 100)];
    const sentence =
      p > r
        ? say`The ${label} takes more room than in the reference: ${takes} % instead of ${took} %.`
        : say`The ${label} takes less room than in the reference: ${takes} % instead of ${took} %.`;
    return [{ id: 'room', planes: [plane.name], sentence }];
  });
}

export function observationsOf(scene: Scene): Observation[] {
  return [
    ...withheld(scene),
    ...keyAndSpan(scene),
    ...colourTurned(scene),
    ...moreAir(scene),
    ...roomAndSize(scene),
  ];
}
