/**
 * Sentences of refusal about pictures, over the permission table, and the line on rights.
 *
 * A reference sets the task for everybody on the board, so it comes from whoever runs it. Whoever posted a
 * picture can always take it back, whatever they have become since. Pure.
 */
import type { PictureFields } from '../core/contract/requests.ts';
import type { BoardRole } from '../core/contract/roles.ts';
import { may, type Relation } from '../core/permissions/may.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';

/** @throws Problem `not-allowed` with who may instead. */
export function refusePosting(role: BoardRole, kind: PictureFields['kind'] | null): void {
  if (!may(role, 'painting.post')) {
    throw new Problem(
      'not-allowed',
      say`Only painters, teachers, the owner and the host may post pictures here. Ask the owner for a painter’s invite.`,
    );
  }
  if (kind === 'reference' && !may(role, 'reference.post')) {
    throw new Problem(
      'not-allowed',
      say`Only teachers, the owner and the host may post a reference here. Post yours as a painting, or ask one of them.`,
    );
  }
}

const relation = (personId: string, posted: string): Relation => (personId === posted ? 'own' : 'other');

/** @param posted Person id of whoever posted the picture. @throws Problem `not-allowed` with who may instead. */
export function refuseTakingBack(role: BoardRole, personId: string, posted: string): void {
  if (may(role, 'picture.withdraw', relation(personId, posted))) return;
  throw new Problem(
    'not-allowed',
    say`Only whoever posted this picture, a teacher, the owner and the host may take it back. Ask one of them.`,
  );
}

/**
 * What a painting is may be noted by whoever may write in its painting room: its painter, a teacher, the host.
 *
 * @param posted Person id of whoever posted the picture. @throws Problem `not-allowed` with who may instead.
 */
export function refuseNoting(role: BoardRole, personId: string, posted: string): void {
  if (may(role, 'painting.note', relation(personId, posted))) return;
  throw new Problem(
    'not-allowed',
    say`Only the painter of this picture, a teacher and the host may note what it is painted with. Ask one of them.`,
  );
}

/** A reference says by what right it is here. @throws Problem `rights-missing`. */
export function refuseMissingRights({ kind, rights, credit }: PictureFields): void {
  if (kind !== 'reference') return;
  if (!rights) {
    throw new Problem(
      'rights-missing',
      say`A reference needs a line on rights. Say whether it is yours, used with permission, or under a free licence.`,
    );
  }
  if (rights === 'free' && !credit) {
    throw new Problem(
      'rights-missing',
      say`A reference under a free licence needs a credit. Write who made it and under which licence.`,
    );
  }
}
