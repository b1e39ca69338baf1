/**
 * What a class keeps back until its time: references and figures until they are revealed, first impressions until the
 * silent look is over.
 *
 * In the flow: handlers -> [veil] -> services. Everybody on the board gets the same answer, whoever they are. IO: the
 * main process.
 */
import type { ImpressionView } from '../core/contract/impressions.ts';
import { Problem } from '../core/problem.ts';
import { namesOf } from '../store/people.ts';
import { findPicture } from '../store/pictures.ts';
import { services } from './services.ts';

/** As `refuseVeiled`, for the bytes of a picture: paintings are shown at any time. */
export async function refuseVeiledReference(boardId: string, pictureId: string): Promise<void> {
  if ((await services().isVeiled(boardId)) && (await findPicture(boardId, pictureId))?.kind === 'reference') {
    refuseNow();
  }
}

/** @throws Problem 'not-yet' while the board's class looks at a painting alone. */
export async function refuseVeiled(boardId: string): Promise<void> {
  if (await services().isVeiled(boardId)) refuseNow();
}

function refuseNow(): never {
  throw new Problem(
    'not-yet',
    'The class is looking at the painting alone. The reference and the figures come when the class reaches that step.',
  );
}

/** @throws Problem 'not-yet' until that painting's silent look is over. */
export async function revealedImpressions(
  boardId: string,
  pictureId: string,
  { visitor, role }: OnBoard,
): Promise<ImpressionView[]> {
  const impressions = await services().impressionsOf(boardId, pictureId);
  if (impressions === null) {
    throw new Problem(
      'not-yet',
      'First impressions of this painting are kept back until its silent look is over. Ask again then.',
    );
  }
  const names = await namesOf(impressions.map(({ personId }) => personId));
  return impressions.map(({ personId, text }) => {
    return { person: { id: personId, name: names.get(personId) ?? '' }, text };
  });
}
