/**
 * All facts of one picture that the readings need besides its plane figures.
 *
 * In the flow: prepared plate + planes -> [side facts] -> readings. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import type { Prepared } from '../../measure/prepare.ts';
import type { SideFacts } from '../picture-facts.ts';
import { accentFacts } from './accents.ts';
import { type Boundaries, focusEdgeFacts } from './focus-edges.ts';
import type { LabGrid } from './lab-grid.ts';
import { lightShadeFacts } from './light-shade.ts';
import { lightnessEnds, valueMapOf } from './value-map.ts';

export interface SideInput {
  grid: LabGrid;
  prepared: Prepared;
  boundaries: Boundaries;
  /** Share of the picture that each plane covers, 0..1. */
  shares: readonly number[];
  /** The painter's focus, 0..1 of this picture; null where none was set, and for the reference. */
  focus: FractionPoint | null;
}

export function sideFactsOf({ grid, prepared, boundaries, shares, focus }: SideInput): SideFacts {
  return {
    ends: lightnessEnds(grid.L),
    valueMap: valueMapOf(grid),
    lightShade: lightShadeFacts(grid, shares),
    edges: focusEdgeFacts(prepared, boundaries, grid.names, focus),
    accents: accentFacts(grid),
  };
}
