/** An address where there is nothing. */
import Link from 'next/link';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { words } from '#words/shell.ts';

export default function NotFound() {
  return (
    <PlainPage title={words.trouble.notFoundTitle} lead={words.trouble.notFound}>
      <p>
        <Link href="/">{words.enter.back}</Link>
      </p>
    </PlainPage>
  );
}
