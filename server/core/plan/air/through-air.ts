/**
 * A picture's colours taken out of its own air and put into a planned one, in linear light.
 *
 * In the flow: cells of a plane + transmissions + two airs -> [through-air] -> rungs of the planned ladder. Pure.
 * Source: Koschmieder (1924) as in `colour/air-law.ts`, solved for the thing and applied again:
 * I' = (I − A (1 − t)) t'/t + A' (1 − t'). Least transmission 0.1: He, Sun & Tang (2009), t0.
 */
import { seenThroughAir } from '../../colour/air-law.ts';
import { rgbFromLab } from '../../colour/lab.ts';
import type { LabColour } from '../../contract/setup.ts';
import type { Triple } from '../../geometry/matrix3.ts';

/** A thing seen through more air than this can't be told from noise, so no transmission is taken as smaller. */
export const LEAST_THROUGH = 0.1;
/** A channel of air is never divided by less. */
const DARKEST_AIR = 0.02;
/** The sky's light is never multiplied by more: beyond, a thin channel would be nothing but noise. */
const MOST_GAIN = 4;

/** What happens to each channel: I' = I · gain + offset. */
export interface AirChange {
  readonly gain: Triple;
  readonly offset: Triple;
}

/** Air of one picture: its colour, and the share of a thing's light that comes through it, above 0 up to 1. */
export interface AirBefore {
  readonly air: LabColour;
  readonly through: number;
}

function eachChannel(of: (channel: 0 | 1 | 2) => number): Triple {
  return [of(0), of(1), of(2)];
}

/** From the photo's air into the planned one. With equal air and equal transmission nothing changes, to the last bit. */
export function airChange(photo: AirBefore, planned: AirBefore): AirChange {
  const [from, to] = [rgbFromLab(photo.air), rgbFromLab(planned.air)];
  const through = Math.max(photo.through, LEAST_THROUGH);
  const gain = planned.through / through;
  return {
    gain: [gain, gain, gain],
    offset: eachChannel(
      (channel) =>
        seenThroughAir(0, to[channel], planned.through) - gain * seenThroughAir(0, from[channel], through),
    ),
  };
}

/**
 * The sky is air alone, lit: where the air's colour is changed, its light is multiplied channel by channel, so that
 * the sky above the ridge takes the planned colour. Own choice, no source.
 */
export function skyChange(photo: LabColour, planned: LabColour): AirChange {
  const [from, to] = [rgbFromLab(photo), rgbFromLab(planned)];
  return {
    gain: eachChannel((channel) =>
      Math.min(MOST_GAIN, Math.max(to[channel], 0) / Math.max(from[channel], DARKEST_AIR)),
    ),
    offset: [0, 0, 0],
  };
}

/** Colours as a screen can show them, and how much had to be bent for that. */
export interface Changed {
  /** Linear RGB, interleaved, each 0..1. */
  readonly linear: Float32Array;
  /** Share of cells with a channel outside 0..1 by more than a hundredth, 0..1. */
  readonly outside: number;
}

/** Outside by less than this nobody sees. */
const SEEN = 0.01;

/** @param linear interleaved linear RGB. */
export function changeAir(linear: Float32Array, { gain, offset }: AirChange): Changed {
  const result = new Float32Array(linear.length);
  let outside = 0;
  for (let at = 0; at < linear.length; at += 3) {
    let bent = 0;
    for (let channel = 0; channel < 3; channel++) {
      const value =
        (linear[at + channel] as number) * (gain[channel] as number) + (offset[channel] as number);
      const shown = Math.min(1, Math.max(0, value));
      if (Math.abs(value - shown) > SEEN) bent = 1;
      result[at + channel] = shown;
    }
    outside += bent;
  }
  return { linear: result, outside: linear.length === 0 ? 0 : outside / (linear.length / 3) };
}
