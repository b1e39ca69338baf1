'use client';
/** The line under the pictures while the focus is set. In the flow: easel-bar -> [focus-controls]. */
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { critiqueWords } from '#words/critique.ts';
import bar from './easel-bar.module.css';

const { focus: words } = critiqueWords;

export function FocusControls() {
  const { setTool } = useTools();
  return (
    <>
      <p className={bar.sentence}>{words.how}</p>
      <Button weight="word" onClick={() => setTool('look')}>
        {words.notNow}
      </Button>
    </>
  );
}
