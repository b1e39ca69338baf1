/** Whole sentences for what carrying over could not do. In the flow: carry-planes -> [why] -> screen. Pure. */
import { say } from '../../say/say.ts';

export const notInPainting = (name: string): string =>
  say`'${name}' lies outside what the painting shows, so it is left out.`;

export const inPieces = (name: string): string =>
  say`The ridge of '${name}' could not be laid on the painting in one piece, so it is left out. Draw it by hand.`;

/** @param tone standard deviation of L*. */
export const tooEven = (tone: number): string =>
  say`The painting is nearly one even tone (lightness varies by ${tone.toFixed(1)} L*), so nothing shows where the planes belong. They lie as in the other picture; move them by hand.`;

export const STRANGE = say`The two pictures have too little in common to find where the planes belong. They lie as in the other picture; move them by hand.`;

export const HARDLY = say`Hardly any ridge found its edge. The painting may show something else, or the planes lie in another place; move them by hand, or draw them anew.`;
