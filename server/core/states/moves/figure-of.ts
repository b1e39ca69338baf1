/**
 * Which figure of a plane a piece of advice is about, and which way it should go.
 *
 * In the flow: actions of a card -> [figure-of] -> moves-made. What has no figure of its own (shadows, big shapes, a
 * single spot) is left to the eye. Pure.
 */
import type { CardAction, CardDirection, CardPart } from '../../contract/critique.ts';
import type { GapKey } from '../../contract/measures.ts';

export interface Aim {
  readonly key: GapKey;
  readonly sign: 1 | -1;
}

const AIMS: Partial<Record<`${CardPart}/${CardDirection}`, Aim>> = {
  'whole/lift': { key: 'mid', sign: 1 },
  'whole/deepen': { key: 'mid', sign: -1 },
  'darks/lift': { key: 'dark', sign: 1 },
  'lights/deepen': { key: 'light', sign: -1 },
  'contrast/narrow': { key: 'spread', sign: -1 },
  'contrast/widen': { key: 'spread', sign: 1 },
  'colour/grey': { key: 'strong', sign: -1 },
  'colour/cool': { key: 'warmCool', sign: -1 },
  'colour/warm': { key: 'warmCool', sign: 1 },
  'colour/toward-air': { key: 'airDistance', sign: -1 },
  'colour/back-from-air': { key: 'b', sign: 1 },
  'detail/soften': { key: 'detail', sign: -1 },
  'edge/soften': { key: 'edge', sign: -1 },
};

/** Null where no figure of a plane tells it. */
export function aimOf({ part, direction }: Pick<CardAction, 'part' | 'direction'>): Aim | null {
  return AIMS[`${part}/${direction}`] ?? null;
}

/** Figures of lightness, in L*. */
export function isLightness(key: GapKey): boolean {
  return key === 'dark' || key === 'mid' || key === 'light' || key === 'spread';
}
