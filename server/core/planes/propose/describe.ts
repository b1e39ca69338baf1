/**
 * Likely kind and a plain name for each proposed plane.
 *
 * In the flow: tiers -> [describe] -> proposals. Rules of thumb on colour, texture and shape (common practice, no
 * source): a guess for a person to correct, so nothing is measured by it before somebody accepted it. Pure.
 */
import type { PlaneKind } from '../../contract/setup.ts';
import type { Columns } from './columns.ts';
import { skiesAmong, type TierLook, tierLook } from './tier-look.ts';
import type { Tops } from './tiers.ts';

const ORDER_WORDS: readonly (readonly string[])[] = [
  [],
  ['near'],
  ['far', 'near'],
  ['far', 'middle', 'near'],
  ['far', 'second', 'middle', 'near'],
  ['farthest', 'far', 'middle', 'near', 'nearest'],
  ['farthest', 'far', 'far middle', 'near middle', 'near', 'nearest'],
  ['farthest', 'far', 'far middle', 'middle', 'near middle', 'near', 'nearest'],
];
const SKY_WORDS: readonly (readonly string[])[] = [
  [],
  ['sky'],
  ['upper sky', 'lower sky'],
  ['upper sky', 'middle sky', 'lower sky'],
];

function kindOf(look: TierLook, sky: TierLook | undefined): PlaneKind {
  if (look.lightness > 78 && Math.hypot(look.a, look.b) < 9) return 'snow';
  const likeSky = sky ? Math.hypot(look.a - sky.a, look.b - sky.b) < 14 : look.b < -4;
  const level = look.relief < 0.025 && look.height > 0.45;
  if (likeSky && level && look.texture < 2.2 && look.b < 8) return 'water';
  const green = look.a < 2 && look.b > 0;
  if (look.lightness < 44 && look.texture > 1.2 && (green || look.texture > 2.5)) return 'wood';
  return 'land';
}

const NOUNS: Record<PlaneKind, string> = {
  sky: 'sky',
  wood: 'wood',
  water: 'water',
  snow: 'snow',
  built: 'buildings',
  land: 'ground',
};

/** A word for the shape of land: a ridge far off, a slope, a meadow close by when it is green or golden. */
function nounOf(kind: PlaneKind, look: TierLook, place: number): string {
  if (kind !== 'land') return NOUNS[kind];
  if (place < 0.5) return 'ridge';
  if (look.relief > 0.05 && place < 1) return 'slope';
  return look.b > 12 && look.lightness > 40 ? 'meadow' : NOUNS.land;
}

export interface Described {
  readonly name: string;
  readonly kind: PlaneKind;
}

/** Kind and name of each tier, far to near; no two names are alike. */
export function describePlanes(columns: Columns, tops: Tops): Described[] {
  const looks = tops.map((_, k) => tierLook(columns, tops, k));
  const skies = Math.min(skiesAmong(looks), SKY_WORDS.length - 1);
  const grounds = looks.length - skies;
  return looks.map((look, k): Described => {
    if (k < skies) return { name: (SKY_WORDS[skies] as readonly string[])[k] as string, kind: 'sky' };
    const place = grounds > 1 ? (k - skies) / (grounds - 1) : 1;
    const kind = kindOf(look, looks[skies - 1]);
    const order = (ORDER_WORDS[grounds] as readonly string[])[k - skies] as string;
    return { name: `${order} ${nounOf(kind, look, place)}`, kind };
  });
}
