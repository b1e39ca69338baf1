'use client';
/** Opens the list of what the words mean, over the page one is on. In the flow: wherever figures stand -> [terms-button]. */
import { useState } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { late, useEver } from '#app/_ui/late.tsx';
import { termsAsked } from '#words/terms-asked.ts';

const TermList = late(() => import('./term-list.tsx').then((module) => module.TermList));

export function TermsButton() {
  const [open, setOpen] = useState(false);
  const asked = useEver(open);
  return (
    <>
      <Button weight="word" onClick={() => setOpen(true)}>
        {termsAsked}
      </Button>
      {asked ? <TermList open={open} onClose={() => setOpen(false)} /> : null}
    </>
  );
}
