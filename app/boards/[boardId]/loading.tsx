/** While a board is being read. */
import { PlainPage } from '#app/_enter/plain-page.tsx';
import { words } from '#app/_words/en.ts';

export default function BoardLoading() {
  return <PlainPage lead={words.board.loading} />;
}
