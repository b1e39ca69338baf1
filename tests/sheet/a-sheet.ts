/** A made-up critique to be set on a page, and stored pictures for it. For tests of the sheet and its bench. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { PlaneMeasures, PlaneResult } from '#server/core/contract/measures.ts';
import { ladderGeometry } from '#server/core/ladder/geometry.ts';
import type { CritiqueSheet, SheetCard, SheetPicture, SheetRemark } from '#server/core/sheet/content.ts';

/** A plate of a plain landscape: bands from light to dark, with a little grain. @param folder Where its file goes. */
export async function aPlate(
  folder: string,
  name: string,
  { width = 1600, height = 1200, grain = 12 }: { width?: number; height?: number; grain?: number } = {},
): Promise<SheetPicture> {
  const samples = new Uint8ClampedArray(width * height * 3);
  let seed = 7;
  for (let at = 0; at < width * height; at++) {
    seed = (seed * 1103515245 + 12345) & 0x7fffffff;
    const band = Math.floor((Math.floor(at / width) / height) * 5);
    const light = 225 - band * 42;
    // Each colour has a grain of its own, as in a photograph.
    const own = (shift: number) => ((seed >> shift) % (grain + 1)) - grain / 2;
    samples.set([light * 0.96 + own(8), light + own(12), light * (1 - band * 0.08) + own(16)], at * 3);
  }
  const platePath = join(folder, `${name}.png`);
  await writeFile(
    platePath,
    await sharp(samples, { raw: { width, height, channels: 3 } })
      .png()
      .toBuffer(),
  );
  return { platePath, photo: null, box: null };
}

const NO_FIGURES = {
  ...{
    share: 0.2,
    spread: null,
    munsellValue: null,
    chroma: null,
    strong: null,
    hue: null,
    a: null,
    b: null,
  },
  ...{ warmCool: null, detail: null, edge: null, hueShares: null, airDistance: null, airShare: null },
  ...{ doubt: {}, notes: [] },
};

/** Figures of a plane from its darks, middle and lights alone. */
function planeOf(dark: number, mid: number, light: number): PlaneMeasures {
  const grey = (lightness: number) => {
    const code = Math.round(lightness * 2.55)
      .toString(16)
      .padStart(2, '0');
    return `#${code}${code}${code}`;
  };
  return {
    ...NO_FIGURES,
    dark,
    mid,
    light,
    colours: { dark: grey(dark), mid: grey(mid), light: grey(light) },
  };
}

/** Planes that climb from near to far, the painting a little darker. @param names Far to near. */
export function aLadder(names: readonly string[]): NonNullable<CritiqueSheet['ladder']> {
  const planes = names.map((name, at): PlaneResult => {
    const mid = 80 - (60 * at) / Math.max(1, names.length - 1);
    return {
      ...{ name, gap: null, recession: null },
      reference: planeOf(mid - 8, mid, mid + 8),
      painting: planeOf(mid - 20, mid - 8, mid + 4),
    };
  });
  return {
    geometry: ladderGeometry(planes),
    planes: names.map((name, at) => ({
      name,
      words: at === 1 ? 'about half a step darker than in the reference' : 'holds',
    })),
    against: 'The painting against the reference.',
    key: { target: 'reference', painting: 'painting' },
  };
}

export const aRemark = (number: number, words: string, at: [number, number]): SheetRemark => ({
  ...{ number, at, kind: 'pin', points: [at], who: 'Runa', words, state: '' },
});

export const aCard = (letter: string, headline: string, at: [number, number] | null): SheetCard => ({
  ...{ letter, at, headline, healthLine: false, answer: '' },
  how: 'Lay a thin, light veil over its darks and let it dry before you judge it.',
  check: 'Squint: the ridge should now be lighter than the wood in front of it.',
});

/** A whole critique: three cards, four remarks, five planes. */
export function aCritique(painting: SheetPicture, reference: SheetPicture | null): CritiqueSheet {
  return {
    about: 'critique',
    title: 'Massif after the first snow',
    byline: 'Ottoline Brandvold, state 2 of 2, posted 12 November 2026',
    board: 'The valley in October',
    painting,
    reference: reference
      ? { picture: reference, caption: 'Reference: R. Halden, CC BY 4.0' }
      : { picture: null, why: 'Painted without a reference photograph.' },
    intention: 'The cold coming down from the massif into a meadow that is still warm.',
    conditions: 'Snow, low sun.',
    capture: { headline: 'Photo of the painting: B', sentence: 'Amounts hold to about half a step.' },
    works: 'The meadow keeps its darks for the nearest grass, so the ground lies down and leads in.',
    cards: [
      { ...aCard('A', 'Far ridge, darks: lift about half a step', [0.5, 0.35]), healthLine: true },
      aCard('B', 'Wood, colour: grey it a little', [0.4, 0.62]),
      aCard('C', 'The whole picture, big shapes: join the lights of the meadow', null),
    ],
    noCards: '',
    remarks: [
      aRemark(1, 'The far ridge is as dark as the wood; it comes forward.', [0.7, 0.33]),
      aRemark(2, 'Lovely soft edge here.', [0.22, 0.42]),
      aRemark(3, 'This post leads out of the picture.', [0.93, 0.8]),
    ],
    moreRemarks: '',
    ladder: aLadder(['Sky', 'Far ridge', 'Massif', 'Wood', 'Meadow']),
    noLadder: '',
    foot: 'From the board “The valley in October”. Sheet of 29 November 2026.',
  };
}
