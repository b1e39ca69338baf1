/**
 * Likely kind and a plain name for each proposed plane.
 *
 * In the flow: tiers -> [describe] -> proposals. Rules of thumb on colour, texture, lines and shape (common practice, no
 * source): a guess for a person to correct, so nothing is measured by it before somebody accepted it. Pure.
 */
import type { PlaneKind } from '../../contract/setup.ts';
import { say } from '../../say/say.ts';
import type { Columns } from './columns.ts';
import { type Lines, linesIn } from './lines.ts';
import { skiesAmong, type TierLook, tierLook } from './tier-look.ts';
import type { Tops } from './tiers.ts';

type Named = (noun: string) => string;

const farthest: Named = (noun) => say`farthest ${noun}`;
const far: Named = (noun) => say`far ${noun}`;
const farMiddle: Named = (noun) => say`far middle ${noun}`;
const middle: Named = (noun) => say`middle ${noun}`;
const nearMiddle: Named = (noun) => say`near middle ${noun}`;
const near: Named = (noun) => say`near ${noun}`;
const nearest: Named = (noun) => say`nearest ${noun}`;

const IN_ORDER: readonly (readonly Named[])[] = [
  [],
  [near],
  [far, near],
  [far, middle, near],
  [farthest, far, middle, near],
  [farthest, far, middle, near, nearest],
  [farthest, far, farMiddle, nearMiddle, near, nearest],
  [farthest, far, farMiddle, middle, nearMiddle, near, nearest],
];
const SKY_WORDS: readonly (readonly string[])[] = [
  [],
  [say`sky`],
  [say`upper sky`, say`lower sky`],
  [say`upper sky`, say`middle sky`, say`lower sky`],
];

interface Look extends TierLook {
  /** Share of its edges that run upright, and level, 0..1. */
  readonly upright: number;
  readonly level: number;
}

function isWater({ height, relief, a, b, texture, level }: Look): boolean {
  const lies = height > 0.55 && relief < 0.03;
  return lies && b < 14 && a > -11 && (texture < 2.3 || level > 0.3);
}

function kindOf(look: Look): PlaneKind {
  const { lightness, a, b, texture } = look;
  if (lightness > 78 && Math.hypot(a, b) < 9) return 'snow';
  if (isWater(look)) return 'water';
  if (lightness < 37 && a < -3 && b > 4 && texture > 2.5) return 'wood';
  return look.upright > 0.16 && texture > 2.2 && a > -4 ? 'built' : 'land';
}

const NOUNS: Record<Exclude<PlaneKind, 'land'>, string> = {
  sky: say`sky`,
  wood: say`wood`,
  water: say`water`,
  snow: say`snow`,
  built: say`buildings`,
};
/** What needs no word for its place when there is but one of it. */
const ALONE: readonly PlaneKind[] = ['water', 'built'];

/** A word for the shape of land: a ridge or a plain far off, a slope, a field close by when it is green or golden. */
function nounOf(kind: PlaneKind, { relief, b, lightness }: TierLook, place: number): string {
  if (kind !== 'land') return NOUNS[kind];
  if (place < 0.5) return relief < 0.012 ? say`plain` : say`ridge`;
  if (relief > 0.05) return say`slope`;
  return b > 12 && lightness > 35 ? say`field` : say`ground`;
}

export interface Described {
  readonly name: string;
  readonly kind: PlaneKind;
}

/** Kind and name of each tier, far to near; no two names are alike. @param lines at the places of `columns`. */
export function describePlanes(columns: Columns, lines: Lines, tops: Tops): Described[] {
  const looks = tops.map(
    (_, k): Look => ({ ...tierLook(columns, tops, k), ...linesIn(lines, tops, k, columns.rows) }),
  );
  const skies = Math.min(skiesAmong(looks), SKY_WORDS.length - 1);
  const grounds = looks.length - skies;
  const kinds = looks.map((look, k) => (k < skies ? 'sky' : kindOf(look)));
  return looks.map((look, k): Described => {
    const kind = kinds[k] as PlaneKind;
    if (k < skies) return { name: (SKY_WORDS[skies] as readonly string[])[k] as string, kind };
    const noun = nounOf(kind, look, grounds > 1 ? (k - skies) / (grounds - 1) : 1);
    const alone = ALONE.includes(kind) && kinds.indexOf(kind) === kinds.lastIndexOf(kind);
    const inOrder = (IN_ORDER[grounds] as readonly Named[])[k - skies] as Named;
    return { name: alone ? noun : inOrder(noun), kind };
  });
}
