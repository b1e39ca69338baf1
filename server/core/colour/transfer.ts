/**
 * sRGB transfer function: encoded <-> linear light.
 *
 * In the flow: plate -> [transfer] -> blur, light, Lab. Pure.
 * Source: IEC 61966-2-1:1999.
 */

/** Encoded 0..1 to linear 0..1. Odd symmetry below zero. */
export function decodeSrgb(encoded: number): number {
  const size = Math.abs(encoded);
  const linear = size <= 0.04045 ? size / 12.92 : ((size + 0.055) / 1.055) ** 2.4;
  return Math.sign(encoded) * linear;
}

/** Linear 0..1 to encoded 0..1. Odd symmetry below zero; not clipped. */
export function encodeSrgb(linear: number): number {
  const size = Math.abs(linear);
  const encoded = size <= 0.0031308 ? size * 12.92 : 1.055 * size ** (1 / 2.4) - 0.055;
  return Math.sign(linear) * encoded;
}

/** Linear light of each 8-bit code. */
export const LINEAR_OF_CODE: Float64Array = Float64Array.from({ length: 256 }, (_, code) =>
  decodeSrgb(code / 255),
);

const CODE_STEPS = 65535;
const CODE_OF_LINEAR: Uint8Array = Uint8Array.from({ length: CODE_STEPS + 1 }, (_, step) =>
  Math.round(encodeSrgb(step / CODE_STEPS) * 255),
);

/**
 * Nearest 8-bit code of a linear value, clipped to 0..255.
 *
 * By table of 65,536 steps: 0.05 of a code at the steepest place, so it can differ from exact rounding only
 * within that distance of a tie.
 */
export function codeOfLinear(linear: number): number {
  if (!(linear > 0)) return 0;
  return CODE_OF_LINEAR[linear >= 1 ? CODE_STEPS : (linear * CODE_STEPS + 0.5) | 0] as number;
}
