/** No such board, or no access: the same words for both. */
import Link from 'next/link';
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { words } from '#words/shell.ts';

export default function BoardNotFound() {
  return (
    <PlainPage title={words.board.notFoundTitle} lead={words.board.notFound}>
      <p>
        <Link href="/">{words.enter.back}</Link>
      </p>
    </PlainPage>
  );
}
