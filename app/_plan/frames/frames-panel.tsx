'use client';
/**
 * The pictures inside the photograph: those that were kept, the one under the hand, those that are proposed.
 *
 * In the flow: parts -> [frames-panel] -> kept list, stage, figures, contact sheet.
 */
import { useMemo, useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { judge } from '#server/core/plan/crops/judge.ts';
import { frameWords } from '#words/plan-frames.ts';
import { useKeptFrames } from '../kept-frames.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import { ContactSheet } from './contact-sheet.tsx';
import { FrameFigures } from './frame-figures.tsx';
import { choiceOf, FREE } from './frame-formats.ts';
import { FrameOnStage } from './frame-on-stage.tsx';
import { FramesOfPaintings } from './frames-of-paintings.tsx';
import { KeptList } from './kept-list.tsx';
import { useCropScene } from './use-crop-scene.ts';
import { useWorkingFrame } from './use-working-frame.ts';

/** Where a frame of one's own begins. */
const OWN: Box = [0.15, 0.15, 0.85, 0.85];

export function FramesPanel() {
  const { picture } = usePlanChoice();
  return picture ? <Frames key={picture.id} picture={picture} /> : null;
}

function Frames({ picture }: { picture: PictureView }) {
  const working = useWorkingFrame(picture);
  const { frames } = useKeptFrames();
  const { scene, failed } = useCropScene();
  const { frame } = working;
  const [besideWanted, setBeside] = useState(false);
  const beside = besideWanted && frames.length > 1;
  const judged = useMemo(() => (scene && frame ? judge(scene, frame.box) : null), [scene, frame]);
  return (
    <>
      {frame && !beside ? (
        <FrameOnStage working={working} box={frame.box} cut={judged?.cut.map(({ box }) => box) ?? []} />
      ) : null}
      <KeptList picture={picture} beside={beside} onBeside={setBeside} onWhole={working.putAway} />
      {frame ? (
        <FrameFigures working={working} frame={frame} picture={picture} judged={judged} failed={failed} />
      ) : (
        <div>
          <Button onClick={() => working.take(OWN, choiceOf(FREE), [])}>{frameWords.hand.own}</Button>
        </div>
      )}
      <ContactSheet picture={picture} working={working} />
      <FramesOfPaintings />
    </>
  );
}
