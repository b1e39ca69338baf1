/**
 * A board's wall as one person may see it: paintings under letters, and the names only once they are shown.
 *
 * Whoever runs it sees no more than the others: a wall is looked at together. In the flow: http/wall -> [wall] -> store.
 * IO: the database.
 */

import type { BoardRole } from '../core/contract/roles.ts';
import type { WallPainting, WallState, WallView, WallWork } from '../core/contract/wall.ts';
import { readOutlinesOf, readPaintingOutlines } from '../core/live/outlines.ts';
import { readPhoto } from '../core/live/painting.ts';
import { readPlanes } from '../core/live/planes.ts';
import { readWall } from '../core/live/wall.ts';
import { isProblem } from '../core/problem.ts';
import { fractionMapper } from '../core/rectify/fraction-mapper.ts';
import { hang } from '../core/wall/hang.ts';
import { boardName } from '../store/boards.ts';
import { unshownPainters } from '../store/consents.ts';
import { readDocument } from '../store/live-documents.ts';
import { namesOf } from '../store/people.ts';
import { listPictures, type Picture } from '../store/pictures.ts';
import { unseenOn } from './block.ts';
import { hiddenPainters } from './consent.ts';
import { knownNames, namingFor } from './school.ts';
import type { Visitor } from './session.ts';

/** All of it but what the running class decides; null when the board went meanwhile. */
export async function wallAsSeen(
  boardId: string,
  { personId }: Visitor,
  role: BoardRole,
): Promise<Omit<WallView, 'veiled'> | null> {
  const [title, pictures, setup, unshown, hidden, unseen] = await Promise.all([
    boardName(boardId),
    listPictures(boardId, 'painting'),
    readDocument(boardId, 'setup'),
    unshownPainters(boardId),
    hiddenPainters(boardId, personId, role),
    unseenOn(boardId, personId, role),
  ]);
  if (title === null) return null;
  const { named, question } = readWall(setup);
  // What may not be shown in class is on nobody's wall, also not where somebody sees it on the board.
  const away = new Set([...unshown, ...hidden, ...unseen]);
  const chains = hang(
    boardId,
    pictures.map((picture) => ({ ...picture, follows: picture.followsId })),
  );
  const kept = chains.map(({ letter, states }) => ({
    letter,
    states: states.filter(({ painterId }) => !away.has(painterId)),
  }));
  const seenElsewhere = ({ painterId }: Picture) => !hidden.has(painterId) && !unseen.has(painterId);
  const nameOf = named ? await namesFor(boardId, { personId, role }, pictures) : () => null;
  return {
    ...{ boardId, title, meId: personId, role, named, question },
    withheld: pictures.some((picture) => unshown.includes(picture.painterId) && seenElsewhere(picture)),
    paintings: kept.flatMap(({ letter, states }): WallPainting[] => {
      const [first] = states;
      if (!first) return [];
      const mine = first.painterId === personId;
      return [{ letter, mine, painter: nameOf(first.painterId), states: states.map(stateView) }];
    }),
  };
}

function stateView({ id, widthPx, heightPx }: Picture): WallState {
  return { id, width: widthPx, height: heightPx };
}

/** The painters under the names by which this person knows them. */
async function namesFor(
  boardId: string,
  { personId, role }: { personId: string; role: BoardRole },
  pictures: readonly Picture[],
) {
  const names = await namesOf([...new Set(pictures.map(({ painterId }) => painterId))]);
  const people = [...names].map(([id, name]) => ({ id, name }));
  const naming = await namingFor(await knownNames({ boardId }, personId, role), people);
  const named = new Map(people.map((person) => [person.id, naming(person)]));
  return (painterId: string) => named.get(painterId) ?? null;
}

/**
 * Whether a painting hangs on the wall that this person sees.
 *
 * @returns The picture, or null alike for none, one that is not for them, and a reference.
 */
export async function hungPicture(
  boardId: string,
  { personId }: Visitor,
  role: BoardRole,
  pictureId: string,
): Promise<Picture | null> {
  const [pictures, unshown, hidden, unseen] = await Promise.all([
    listPictures(boardId, 'painting'),
    unshownPainters(boardId),
    hiddenPainters(boardId, personId, role),
    unseenOn(boardId, personId, role),
  ]);
  const picture = pictures.find(({ id }) => id === pictureId);
  if (!picture) return null;
  const { painterId } = picture;
  return unshown.includes(painterId) || hidden.has(painterId) || unseen.has(painterId) ? null : picture;
}

/** How a painting lies in its photograph. @param withPlanes Left out while a class keeps figures back. */
export async function workOf(boardId: string, pictureId: string, withPlanes: boolean): Promise<WallWork> {
  const painting = await readDocument(boardId, `painting/${pictureId}`);
  const photo = readPhoto(painting);
  return { photo, planes: withPlanes ? await planesOf(boardId, { photo, painting }) : [] };
}

/** As measuring takes them: a plane without an outline of its own has that of the reference. */
async function planesOf(
  boardId: string,
  { photo, painting }: Pick<WallWork, 'photo'> & { painting: Awaited<ReturnType<typeof readDocument>> },
): Promise<WallWork['planes']> {
  const setup = await readDocument(boardId, 'setup');
  const references = await listPictures(boardId, 'reference');
  const outlined = references.map(({ id }) => readOutlinesOf(setup, id)).find(({ size }) => size > 0);
  const own = readPaintingOutlines(painting);
  const { toSquared } = squaring(photo);
  return readPlanes(setup).flatMap(({ id, name, kind }) => {
    const outline = own.get(id)?.map(toSquared) ?? outlined?.get(id);
    return outline ? [{ name, kind, outline }] : [];
  });
}

/** Corners that no flat picture can have square nothing; the screen that sets them says so. */
function squaring(photo: WallWork['photo']) {
  try {
    return fractionMapper(photo);
  } catch (thrown) {
    if (isProblem(thrown)) return fractionMapper({});
    throw thrown;
  }
}
