/**
 * G1-G9: whether the photograph of the painting can be trusted at all. Always first.
 *
 * In the flow: capture facts -> [rules] -> findings. Limits are those of the capture grade (measure.md section 1);
 * nothing is said about what is not known. Pure. Source: practice of photographing paintings, common practice.
 */
import { say } from '../../say/say.ts';
import { NO_SOURCE } from '../no-source.ts';
import type { CaptureFacts } from '../picture-facts.ts';
import type { Finding, Rule } from '../rule.ts';
import type { Scene } from '../scene.ts';

const percent = (share: number) => Math.round(share * 100);

/** What one capture rule sees: how much, of which limit, and what to say; null = nothing. */
interface Seen {
  amount: number;
  limit: number;
  sentence: string;
  planes?: string[];
}

interface CaptureRule extends Pick<Rule, 'id' | 'name' | 'inputs' | 'threshold' | 'why'> {
  look(capture: CaptureFacts, scene: Scene): Seen | null;
}

function captureRule({ look, ...texts }: CaptureRule): Rule {
  return {
    ...texts,
    group: 1,
    family: null,
    noise: 'none: a fact of the photograph itself',
    mutedBy: {},
    colour: false,
    source: NO_SOURCE,
    find(scene): Finding[] {
      const seen = look(scene.facts.capture, scene);
      if (!seen || seen.amount <= seen.limit) return [];
      return [
        {
          planes: seen.planes ?? [],
          difference: seen.amount,
          threshold: seen.limit,
          form: 'finding',
          sentence: seen.sentence,
          restsOn: [],
          levers: [{ plane: null, part: 'photo', direction: 'again', amountL: null }],
        },
      ];
    },
  };
}

/** A yes-or-no fact as an amount over a limit of one. */
const plain = (fact: boolean | null, sentence: string): Seen | null =>
  fact ? { amount: 2, limit: 1, sentence } : null;

export const G1 = captureRule({
  id: 'G1',
  name: say`No neutral in the picture`,
  inputs: 'whether a card or white stands in the photo',
  threshold: 'none at all',
  why: say`Without a grey or white to go by, the lamp and the paint cannot be told apart.`,
  look: ({ neutral }) =>
    plain(
      neutral === false,
      say`No grey or white stands beside the painting, so colour can’t be trusted. Put a card in and photograph again.`,
    ),
});

const CLIPPED_SKY = 0.005;
const CLIPPED_DARKS = 0.02;

export const G2 = captureRule({
  id: 'G2',
  name: say`Clipping`,
  inputs: 'share of the sky with a channel at 254 or more; share of the painting with all at 1 or less',
  threshold: 'more than 0.5 % of the sky, or 2 % of the darks',
  why: say`Where the camera runs out of light or dark, the true value is lost and only a bound is left.`,
  look: ({ clippedSky, clippedDarks }) => {
    const [sky, darks] = [clippedSky ?? 0, clippedDarks ?? 0];
    const skyLeads = sky / CLIPPED_SKY >= darks / CLIPPED_DARKS;
    return {
      amount: skyLeads ? sky : darks,
      limit: skyLeads ? CLIPPED_SKY : CLIPPED_DARKS,
      sentence: skyLeads
        ? say`The lightest parts are burnt out in this photo. Expose a little darker and photograph again.`
        : say`The darkest parts are crushed in this photo. Expose a little lighter and photograph again.`,
    };
  },
});

export const G3 = captureRule({
  id: 'G3',
  name: say`Glare`,
  inputs: 'glare pixels of a plane',
  threshold: 'more than 1 % of a plane',
  why: say`Glare lies in the darks, exactly where depth is judged.`,
  look: ({ glare }, scene) => {
    if (!glare) return null;
    const label = scene.planes.find(({ name }) => name === glare.plane)?.label;
    return {
      amount: glare.share,
      limit: 0.01,
      sentence:
        label === undefined
          ? say`Glare covers ${percent(glare.share)} % of the painting. Move the lamp farther round and photograph again.`
          : say`Glare covers ${percent(glare.share)} % of the ${label}. Move the lamp farther round and photograph again.`,
      planes: [glare.plane],
    };
  },
});

export const G4 = captureRule({
  id: 'G4',
  name: say`Uneven light`,
  inputs: 'change of light across cards or border',
  threshold: 'more than 8 %',
  why: say`Light that falls off looks like a change of value in the paint.`,
  look: ({ unevenness }) => ({
    amount: unevenness ?? 0,
    limit: 0.08,
    sentence: say`The light changes by ${percent(unevenness ?? 0)} % across the painting. Use two like lamps or open shade.`,
  }),
});

const CROOKED_DEG = 5;
const SIDE_RATIO = 0.03;

export const G5 = captureRule({
  id: 'G5',
  name: say`Crooked`,
  inputs: 'corners of the painting; typed size',
  threshold: 'a corner more than 5 degrees off, or a side ratio off by more than 3 %',
  why: say`A crooked view squeezes one side, and shapes and shares go wrong with it.`,
  look: ({ crookedDeg, sideRatioError }) => {
    const bySide = (sideRatioError ?? 0) / SIDE_RATIO > (crookedDeg ?? 0) / CROOKED_DEG;
    return {
      amount: (bySide ? sideRatioError : crookedDeg) ?? 0,
      limit: bySide ? SIDE_RATIO : CROOKED_DEG,
      sentence: bySide
        ? say`The sides don’t fit the size you gave, by ${percent(sideRatioError ?? 0)} %. Check the corners and the size.`
        : say`The photo is taken ${Math.round(crookedDeg ?? 0)} degrees off square. Set the corners, or photograph straight on.`,
    };
  },
});

const SHORT_SIDE_PX = 1200;

export const G6 = captureRule({
  id: 'G6',
  name: say`Too small or soft`,
  inputs: 'short side in pixels; focus',
  threshold: 'under 1200 pixels, or out of focus',
  why: say`Detail and edges cannot be judged from a small or soft photo.`,
  look: ({ shortSidePx, fillsPhoto, soft }) => {
    if (soft)
      return plain(
        true,
        say`The photo is soft. Hold the camera still, focus on the paint, and photograph again.`,
      );
    if (shortSidePx === null) return null;
    return {
      amount: SHORT_SIDE_PX / Math.max(1, shortSidePx),
      limit: 1,
      sentence: fillsPhoto
        ? say`The painting fills this photo, but its shorter side has only ${Math.round(shortSidePx)} pixels. Take or save a larger photo, ${SHORT_SIDE_PX} pixels or more.`
        : say`The shorter side of the painting has only ${Math.round(shortSidePx)} pixels in this photo. Step closer so that it fills the frame.`,
    };
  },
});

export const G7 = captureRule({
  id: 'G7',
  name: say`Mixed light`,
  inputs: 'distance of two cards in a*, b*',
  threshold: 'more than 5',
  why: say`Daylight and lamp together tint one half against the other.`,
  look: ({ cardsApart }) => ({
    amount: cardsApart ?? 0,
    limit: 5,
    sentence: say`Two kinds of light fall on the painting. Switch off the lamp or leave the window, and photograph again.`,
  }),
});

export const G8 = captureRule({
  id: 'G8',
  name: say`Wet, or matt and glossy`,
  inputs: 'state noted by the painter; patches seen',
  threshold: 'noted or seen',
  why: say`Wet paint glints and sunk paint looks lighter and greyer than it is.`,
  look: ({ wet }) =>
    plain(
      wet,
      say`The surface is wet or patchy in gloss, so darks may look too light. Judge them again when dry.`,
    ),
});

export const G9 = captureRule({
  id: 'G9',
  name: say`Reference tone-mapped`,
  inputs: 'halos and separate treatment of sky and land in the reference',
  threshold: 'seen',
  why: say`A phone that treats sky and land apart makes relations between planes false.`,
  look: ({ toneMapped }, scene) =>
    scene.document.target === 'reference'
      ? plain(
          toneMapped,
          say`The photo you worked from looks tone-mapped; its values between sky and land may be false.`,
        )
      : null,
});
