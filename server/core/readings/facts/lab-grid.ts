/**
 * A picture as the facts need it: CIELAB on a grid of cells, and which plane each cell belongs to.
 *
 * In the flow: prepared plate + eroded label map -> [grid] -> facts. Types only.
 */
export interface LabGrid {
  readonly columns: number;
  readonly rows: number;
  /** CIELAB (D65) of each cell, row by row, `columns * rows` of each; slightly blurred, as for the figures. */
  readonly L: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  /** Plane of each cell, far to near from 0; 255 = none, or in the rim between planes, or glare. */
  readonly labels: Uint8Array;
  /** Names of the planes by label. */
  readonly names: readonly string[];
}

/** Label of a cell that belongs to no plane. */
export const NO_CELL = 255;
