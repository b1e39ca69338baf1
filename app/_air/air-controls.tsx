'use client';
/** The line under the pictures while the colour of the air is picked. In the flow: easel bar -> [air-controls]. */
import bar from '#app/_easel/easel-bar.module.css';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { airWords } from '#words/air.ts';

export function AirControls() {
  const { setTool } = useTools();
  return (
    <>
      <p className={bar.sentence}>{airWords.colour.how}</p>
      <Button weight="word" onClick={() => setTool('look')}>
        {airWords.colour.stop}
      </Button>
    </>
  );
}
