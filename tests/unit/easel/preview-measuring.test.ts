/**
 * The ladder while somebody draws: measured on the painting put right, not on its photo as it came.
 *
 * The luminance factor of a common grey card, 18 %, is common practice; the two planes are invented.
 */
import { describe, expect, test } from 'vitest';
import { type CanvasPixels, previewMeasuring } from '#app/_easel/preview-measuring.ts';
import type { PreviewSource } from '#app/_easel/preview-setup.ts';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { codeOfLinear, LINEAR_OF_CODE } from '#server/core/colour/transfer.ts';
import type { FractionPoint, Outline, PhotoCorrection } from '#server/core/contract/setup.ts';

type Rgb = readonly [number, number, number];
const FAR: Rgb = [132, 148, 170];
const NEAR: Rgb = [88, 104, 52];
/** Evening light on the wall, linear; no channel clips. */
const EVENING: Rgb = [1.15, 0.95, 0.6];
const NO_CAST: Rgb = [1, 1, 1];
/** a* and b*: the evening is made of red, green and blue, and taken away among the responses of the cones. */
const ADAPTED = 2.5;
/** Code of 18 % in sRGB. */
const CARD: Rgb = [118, 118, 118];
const WALL: Rgb = [150, 150, 150];

function pixels(colourAt: (x: number, y: number) => Rgb, light: Rgb): CanvasPixels {
  const [widthPx, heightPx] = [480, 360];
  const rgba = new Uint8ClampedArray(widthPx * heightPx * 4);
  for (let row = 0, at = 0; row < heightPx; row++) {
    for (let column = 0; column < widthPx; column++, at += 4) {
      const colour = colourAt((column + 0.5) / widthPx, (row + 0.5) / heightPx);
      for (let channel = 0; channel < 3; channel++) {
        const linear = (LINEAR_OF_CODE[colour[channel] as number] as number) * (light[channel] as number);
        rgba[at + channel] = codeOfLinear(linear);
      }
      rgba[at + 3] = 255;
    }
  }
  return { widthPx, heightPx, rgba };
}

const scene = (_x: number, y: number) => (y < 0.5 ? FAR : NEAR);
const reference = pixels(scene, NO_CAST);
/** The painting hangs in the middle of the photo, a card at its left. */
const [LEFT, TOP, RIGHT, BOTTOM] = [0.25, 0.25, 0.75, 0.75];
const photographed = pixels((x, y) => {
  if (x > LEFT && x < RIGHT && y > TOP && y < BOTTOM) return scene(x, (y - TOP) / (BOTTOM - TOP));
  return x > 0.05 && x < 0.2 && y > 0.3 && y < 0.7 ? CARD : WALL;
}, EVENING);
const corners: PhotoCorrection['corners'] = [
  [LEFT, TOP],
  [RIGHT, TOP],
  [RIGHT, BOTTOM],
  [LEFT, BOTTOM],
];
const cards: PhotoCorrection['cards'] = [{ box: [0.07, 0.33, 0.18, 0.67], Y: 0.18 }];

const band = (from: number, to: number): Outline => [
  [0, from],
  [1, from],
  [1, to],
  [0, to],
];
/** A band of the painting where it lies on its photo. */
const onPhoto = (outline: Outline): Outline =>
  outline.map(([x, y]): FractionPoint => [LEFT + x * (RIGHT - LEFT), TOP + y * (BOTTOM - TOP)]);
const planes = [
  { id: 'far', name: 'Far', kind: 'land', tilt: null, unreliable: null },
  { id: 'near', name: 'Near', kind: 'land', tilt: null, unreliable: null },
] as unknown as PlaneView[]; // What the setup reads of a plane.

function shown(photo: PhotoCorrection, moving: PreviewSource['moving']) {
  const measure = previewMeasuring(reference, photographed, photo);
  const onReference = new Map([
    ['far', band(0, 0.5)],
    ['near', band(0.5, 1)],
  ]);
  return measure({ planes, onReference, onPainting: new Map(), photo, moving });
}

describe('the ladder while somebody draws', () => {
  const nothing: PreviewSource['moving'] = { kind: 'reference', outlines: new Map() };

  test('stays in the light of the cards: a painting like its reference is shown like it', () => {
    const document = shown({ corners, cards }, nothing);
    expect(document?.planes).toHaveLength(2);
    for (const { painting, reference: there } of document?.planes ?? []) {
      expect(Math.abs((painting.mid ?? 99) - (there?.mid ?? 0))).toBeLessThan(0.7);
      expect(Math.abs((painting.a ?? 99) - (there?.a ?? 0))).toBeLessThan(ADAPTED);
      expect(Math.abs((painting.b ?? 99) - (there?.b ?? 0))).toBeLessThan(ADAPTED);
    }
  });

  test('an outline under the hand lies on the photo and is measured on the squared painting', () => {
    const outlines = new Map([['near', onPhoto(band(0.5, 1))]]);
    const document = shown({ corners, cards }, { kind: 'painting', outlines });
    const near = document?.planes[1];
    expect(near?.painting.share).toBeCloseTo(0.5, 1);
    expect(Math.abs((near?.painting.b ?? 99) - (near?.reference?.b ?? 0))).toBeLessThan(ADAPTED);
  });

  test('without a card the evening stays in it', () => {
    const far = shown({ corners }, nothing)?.planes[0];
    expect((far?.painting.b ?? 0) - (far?.reference?.b ?? 0)).toBeGreaterThan(10);
  });

  test('with corners that cannot be, nothing is shown', () => {
    const crossed: PhotoCorrection['corners'] = [
      [LEFT, TOP],
      [RIGHT, BOTTOM],
      [RIGHT, TOP],
      [LEFT, BOTTOM],
    ];
    expect(shown({ corners: crossed, cards }, nothing)).toBeNull();
  });
});
