/** Every word of the ladder and its table. Pure. */
import type { HueFamily } from '#server/core/contract/measures.ts';

export const ladderWords = {
  title: 'Ladder',
  about:
    'Far at the left, near at the right. Each bar runs from the plane’s darks up to its lights, in its own colours.',
  axis: 'value',
  target: { reference: 'reference', plan: 'plan', none: '' },
  against: {
    reference: 'The painting against the reference photograph.',
    plan: 'The painting against the plan.',
    none: 'Painted from life: the painting’s own values.',
  },
  painting: 'painting',
  steps:
    'One step is a tenth of the way from black to white (10 L*). Chroma is the strength of a colour, from grey up (C*ab). Warm–cool is + for warmer, − for cooler. Fine lines at the bars, and ±, are the doubt: the truth lies within them nine times in ten.',
  stepsOrderOnly:
    'One step is a tenth of the way from black to white (10 L*). Nothing neutral in the photo of the painting can be trusted, so only the order of lightness is said, and no colour. Fine lines at the bars are the doubt.',
  preview: 'roughly, while you draw',
  /** Where a bar stands, for those who do not see it. @param side Whose bar; values 0 black to 10 white. */
  barSaid: (side: string, dark: string, mid: string, light: string) =>
    `${side}: darks at value ${dark}, middle ${mid}, lights ${light}.`,
  chooseOn: (name: string) => `Find ${name} on the pictures`,
  /** Where no amount may be said. */
  order: { lighter: 'lighter', darker: 'darker', same: 'about the same' },
  rows: { light: 'lights', mid: 'middle', dark: 'darks', chroma: 'chroma', warmCool: 'warm–cool' },

  empty: {
    noPictures:
      'Once there are pictures and their planes are outlined, each plane stands here on the value scale.',
    noPainting: 'Post a painting, and its planes are measured here.',
    noPlanes:
      'Outline the planes, from the farthest to the nearest. Then each is measured, and shown here on the value scale.',
    noPlanesDo: 'Outline the first plane by hand',
    noPlanesLook: 'The painter or a teacher outlines the planes; then each is shown here on the value scale.',
    measuring: 'Measuring the planes …',
    connecting: 'Fetching the planes …',
  },

  tableCaption: {
    planes: 'Every measure, plane by plane, far to near',
    steps: 'The step from each plane to the next nearer one (near − far)',
    recession: 'How far back each plane goes, compared with the target (1 = as far)',
    whole: 'The picture as a whole',
  },
  column: {
    measure: 'Measure (unit)',
    plane: 'Plane',
    planes: 'From far to near',
    gap: 'difference',
    achieved: 'as one figure (ratio)',
    darks: 'by its darks (ratio)',
    spread: 'by its contrast (ratio)',
    chroma: 'by its chroma (ratio)',
    air: 'by its distance to the air (ratio)',
    notes: 'Notes',
  },
  measure: {
    share: 'part of the picture (%)',
    dark: 'darks, 5 % of it are darker (L*)',
    mid: 'middle (L*)',
    light: 'lights, 5 % of it are lighter (L*)',
    spread: 'lights − darks (L*)',
    munsellValue: 'middle on the Munsell value scale (0–10)',
    chroma: 'chroma, middle (C*ab)',
    strong: 'chroma of the strongest tenth (C*ab)',
    hue: 'hue angle (°)',
    a: 'a*, + red, − green',
    b: 'b*, + yellow, − blue',
    warmCool: 'warm–cool, + warm, − cool (Ou scale)',
    detail: 'fine detail (ratio to contrast)',
    edge: 'edge to what lies behind (L* per % of width)',
    airDistance: 'distance to the air colour (ΔE*ab)',
    airShare: 'share of air (%)',
  },
  hues: 'hues of what is coloured (%)',
  hueFamily: {
    red: 'red',
    orange: 'orange',
    yellow: 'yellow',
    green: 'green',
    blue: 'blue',
    violet: 'violet',
  } satisfies Record<HueFamily, string>,
  step: {
    mid: 'middle (L*)',
    dark: 'darks (L*)',
    light: 'lights (L*)',
    chroma: 'chroma (C*ab)',
    warmCool: 'warm–cool',
  },
  whole: {
    key: 'key: how much lighter (+) or darker (−) overall (L*)',
    span: 'span: range compared with the target (ratio)',
    air: 'air colour (L*, a*, b*)',
  },
  notTaken: 'A dash stands where a measure could not be taken; the notes say why.',
  between: (low: string, high: string) => `${low} to ${high}`,
  intervals:
    'After each figure stand the ends between which it truly lies nine times in ten, by how the plane varies and how far the photo can be trusted.',
  value: (value: string) => `value ${value}`,
  /** Half an interval of lightness, for `doubt`. */
  stepOff: (steps: string) => `${steps} step`,
  doubt: (parts: string) => `± ${parts}`,
  doubtTitle: 'How far off these figures may be, nine times in ten',
  untrusted: (reason: string) =>
    reason ? `The photo is not trusted here: ${reason}` : 'The photo is not trusted here.',
  views: 'How the planes are shown',
  view: { ladder: 'Ladder', air: 'Air', table: 'Table' },
} as const;
