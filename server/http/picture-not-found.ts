/** One sentence for a picture that never was on this board and for one that was taken back. Pure. */
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';

export function pictureNotFound(): Problem {
  return new Problem(
    'picture-not-found',
    say`There is no such picture on this board; it may have been taken back. Load the board again.`,
  );
}
