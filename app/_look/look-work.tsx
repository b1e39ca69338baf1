'use client';
/**
 * The tools that point at one place of a picture: patches, a guess, the air colour, the focus.
 *
 * In the flow: easel-picture, loaded late -> [look-work] -> stage.
 */
import { useEasel } from '#app/_easel/easel-state.tsx';
import { useAirHand } from '#app/_easel/use-air-hand.ts';
import { useFocusHand } from '#app/_easel/use-focus-hand.ts';
import { type ToolHand, useGiveHand } from '#app/_easel/use-tool-hand.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { LookMarks } from './look-marks.tsx';
import type { PointingTool } from './pointing.ts';
import { useGuessHand } from './use-guess-hand.ts';
import { usePatchHand } from './use-patch-hand.ts';

interface LookWorkProps {
  picture: PictureView;
  tool: PointingTool;
  give: ToolHand['give'];
}

/** All four are asked for, since a hand holds state of its own. */
export function LookWork({ picture, tool, give }: LookWorkProps) {
  const { setSentence } = useEasel();
  const hands = {
    patch: usePatchHand(picture.id, setSentence),
    guess: useGuessHand(picture.id, setSentence),
    air: useAirHand(picture),
    focus: useFocusHand(picture),
  };
  useGiveHand(give, hands[tool]);
  return <LookMarks />;
}
