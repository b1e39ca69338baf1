/**
 * Whether somebody sees a mark: what is hidden, and sketches over a painting that no longer allows them.
 *
 * In the flow: mark, its thread's first mark, what is said of remarks on the picture -> [mark-sight] -> screens. The
 * documents themselves reach everybody on the board; see DEVELOPERS. Pure.
 */
import type { Mark } from './marks.ts';
import { mayWrite, type Writer } from './permission.ts';

/** What is said of the remarks on one picture; null = not known yet. */
export interface PictureRemarks {
  isReference: boolean;
  hidden: ReadonlySet<string>;
  allowsSketch: boolean;
}

/**
 * shown = like any other; hidden = still seen by this person, with a word that it is hidden; kept = a sketch that its
 * author alone still sees; away = not for this person.
 */
export type Sight = 'shown' | 'hidden' | 'kept' | 'away';

/** @param onlooker `paints` = whether the picture is theirs. @param root The first mark of the thread, may be `mark`. */
export function sightOf(mark: Mark, root: Mark, remarks: PictureRemarks | null, onlooker: Writer): Sight {
  if (remarks === null) return 'away';
  const own = mark === root ? 'shown' : sightOf(root, root, remarks, onlooker);
  if (own === 'away') return 'away';
  if (mark.kind === 'sketch' && !remarks.allowsSketch) {
    return mark.author === onlooker.personId ? 'kept' : 'away';
  }
  if (!remarks.hidden.has(mark.id)) return own;
  return mark.author === onlooker.personId || mayHide(onlooker, remarks) ? 'hidden' : 'away';
}

/** Whoever may hide remarks on a picture also sees which are hidden there. */
export function mayHide(onlooker: Writer, { isReference }: Pick<PictureRemarks, 'isReference'>): boolean {
  return mayWrite(onlooker, isReference ? 'setup' : 'painting', 'hidden');
}
