/**
 * What a class keeps back until its time: references and figures until they are revealed, first impressions until the
 * silent look is over.
 *
 * In the flow: handlers -> [veil] -> services. Everybody on the board gets the same answer, whoever they are. IO: the
 * main process.
 */
import { unseenOn } from '../access/block.ts';
import { knownNames, namingFor } from '../access/school.ts';
import type { ImpressionView } from '../core/contract/impressions.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { namesOf } from '../store/people.ts';
import { findPicture } from '../store/pictures.ts';
import { services } from './services.ts';
import type { OnBoard } from './visitor.ts';

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
    say`The class is looking at the painting alone. The reference and the figures come when the class reaches that step.`,
  );
}

/**
 * Those of people whom the caller sees, under the names by which they know them.
 *
 * @throws Problem 'not-yet' until that painting's silent look is over.
 */
export async function revealedImpressions(
  boardId: string,
  pictureId: string,
  { visitor, role }: OnBoard,
): Promise<ImpressionView[]> {
  const impressions = await services().impressionsOf(boardId, pictureId);
  if (impressions === null) {
    throw new Problem(
      'not-yet',
      say`First impressions of this painting are kept back until its silent look is over. Ask again then.`,
    );
  }
  const unseen = await unseenOn(boardId, visitor.personId, role);
  const shown = impressions.filter(({ personId }) => !unseen.has(personId));
  const names = await namesOf(shown.map(({ personId }) => personId));
  const people = shown.map(({ personId }) => ({ id: personId, name: names.get(personId) ?? '' }));
  const naming = await namingFor(await knownNames({ boardId }, visitor.personId, role), people);
  const named = new Map(people.map((person) => [person.id, naming(person)]));
  return shown.flatMap(({ personId, text }) => {
    const person = named.get(personId);
    return person ? [{ person, text }] : [];
  });
}
