/**
 * What to do about each thing that is wrong with a photograph, kindly and in one sentence.
 *
 * In the flow: reasons of a capture grade -> [advice] -> screen. Pure. Source: practice of photographing paintings,
 * common practice.
 */
import { say } from '../say/say.ts';
import type { CaptureReason } from './reasons.ts';

export const ADVICE: Record<CaptureReason, string> = {
  'no neutral': say`Lay a grey card or plain white paper beside the painting, in the same light, and mark it here.`,
  clipping: say`Tap the lightest part of the painting and photograph it a little darker; keep the darks open.`,
  glare: say`Tilt the painting or move the lamp to the side, until no wet gleam lies on it.`,
  'uneven light': say`Stand in open shade, or put two like lamps at both sides, equally far away.`,
  crooked: say`Hold the camera level with the middle of the painting, and square to it.`,
  'too small or soft': say`Let the painting fill the frame, take the photo as large as the camera makes it, rest your elbows, and focus on the paint.`,
  'mixed light': say`Use one kind of light: switch off the lamp, or turn away from the window.`,
  wet: say`Let it dry and photograph it again; until then take the darks with a pinch of salt.`,
  'reference looks tone-mapped': say`Use the photo as the camera first saw it, or trust your eyes between sky and land.`,
  'one cast over everything': say`Mark a grey or white beside the painting, so that the lamp can be taken out.`,
};

/** The few steps that put most photographs of paintings right. */
export const RESHOOT_STEPS: readonly string[] = [
  say`Take the painting into open shade, out of the sun, without lamps.`,
  say`Lay a grey card at its left side and another at its right, flat in the same light.`,
  say`Stand straight before it, fill the frame, and leave a rim of plain wall.`,
  say`Tap the lightest part to expose, hold still, and take two or three.`,
];

/** The sentence for a reason. */
export function adviceFor(reason: CaptureReason): string {
  return ADVICE[reason];
}
