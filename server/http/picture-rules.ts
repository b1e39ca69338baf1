/**
 * Who may post and take back pictures. `DEVELOPERS.md` repeats it in its table of permissions.
 *
 * | | owner | host | teacher | painter | peer | viewer |
 * |---|---|---|---|---|---|---|
 * | post a reference | yes | yes | yes | no | no | no |
 * | post a painting | yes | yes | yes | yes | no | no |
 * | take a picture back | any | any | any | their own | their own | their own |
 * | note medium, drying, light of a painting | their own | any | any | their own | their own | no |
 *
 * A reference sets the task for everybody on the board, so it comes from whoever runs it. Whoever posted a
 * picture can always take it back, whatever they have become since. Pure.
 */
import type { PictureFields } from '../core/contract/requests.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import { Problem } from '../core/problem.ts';

const RUNS_THE_BOARD: ReadonlySet<BoardRole> = new Set(['owner', 'host', 'teacher']);

/** @throws Problem `not-allowed` with who may instead. */
export function refusePosting(role: BoardRole, kind: PictureFields['kind'] | null): void {
  if (RUNS_THE_BOARD.has(role)) return;
  if (role !== 'painter') {
    throw new Problem(
      'not-allowed',
      'Only painters, teachers, the owner and the host may post pictures here. Ask the owner for a painter’s invite.',
    );
  }
  if (kind === 'reference') {
    throw new Problem(
      'not-allowed',
      'Only teachers, the owner and the host may post a reference here. Post yours as a painting, or ask one of them.',
    );
  }
}

/** @param posted Person id of whoever posted the picture. @throws Problem `not-allowed` with who may instead. */
export function refuseTakingBack(role: BoardRole, personId: string, posted: string): void {
  if (RUNS_THE_BOARD.has(role) || personId === posted) return;
  throw new Problem(
    'not-allowed',
    'Only whoever posted this picture, a teacher, the owner and the host may take it back. Ask one of them.',
  );
}

/**
 * What a painting is may be noted by whoever may write in its painting room: its painter, a teacher, the host.
 *
 * @param posted Person id of whoever posted the picture. @throws Problem `not-allowed` with who may instead.
 */
export function refuseNoting(role: BoardRole, personId: string, posted: string): void {
  if (role === 'host' || role === 'teacher' || (personId === posted && role !== 'viewer')) return;
  throw new Problem(
    'not-allowed',
    'Only the painter of this picture, a teacher and the host may note what it is painted with. Ask one of them.',
  );
}

/** A reference says by what right it is here. @throws Problem `rights-missing`. */
export function refuseMissingRights({ kind, rights, credit }: PictureFields): void {
  if (kind !== 'reference') return;
  if (!rights) {
    throw new Problem(
      'rights-missing',
      'A reference needs a line on rights. Say whether it is yours, used with permission, or under a free licence.',
    );
  }
  if (rights === 'free' && !credit) {
    throw new Problem(
      'rights-missing',
      'A reference under a free licence needs a credit. Write who made it and under which licence.',
    );
  }
}
