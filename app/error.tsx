'use client';
/** A page that broke: said calmly, with a way to try again. */
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { Button } from '#app/_ui/button.tsx';
import { words } from '#words/shell.ts';

export default function ErrorPage({ reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <PlainPage title={words.trouble.title} lead={words.trouble.text}>
      <p>
        <Button weight="main" onClick={reset}>
          {words.trouble.again}
        </Button>
      </p>
    </PlainPage>
  );
}
