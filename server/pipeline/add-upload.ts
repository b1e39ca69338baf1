/**
 * Puts what a worker made of an upload into the store, all of it or nothing.
 *
 * In the flow: upload → runner → [add-upload] → blobs and rows. IO: the data folder and the database.
 */
import { rm } from 'node:fs/promises';
import type { IncomingPicture } from '../core/contract/incoming.ts';
import type { UploadedPicture } from '../core/contract/responses.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import type { TakenIn } from '../imaging/take-in.ts';
import { removeUnshared } from '../store/blob-sweep.ts';
import { adoptBlob, putBlob, releaseBlobs } from '../store/blobs.ts';
import { addPicture, findPicture } from '../store/pictures.ts';

/**
 * @param incoming The upload; its temporary file is adopted or removed whatever happens.
 * @param read Reads the file; what it throws is passed on.
 * @throws Problem what `read` throws, `disk-full`, `picture-not-found` for an earlier state that is not there.
 */
export async function addUpload(
  incoming: IncomingPicture,
  read: (path: string, name: string) => Promise<TakenIn>,
): Promise<UploadedPicture> {
  const held: string[] = [];
  try {
    const taken = await read(incoming.temporaryPath, incoming.fileName);
    await refuseStrangeStates(incoming);
    await putAll(taken, held);
    const untouched =
      incoming.fields.keepUntouched === 'yes' ? await adoptBlob(incoming.temporaryPath) : null;
    if (untouched) held.push(untouched);
    const id = await addPicture(rowOf(incoming, taken, untouched));
    return { id, width: taken.width, height: taken.height };
  } finally {
    releaseBlobs(held);
    await rm(incoming.temporaryPath, { force: true });
    // After a success every hash is named by a row and stays; after a failure none is left behind.
    await removeUnshared(held);
  }
}

async function putAll(taken: TakenIn, held: string[]): Promise<void> {
  for (const { bytes, hash } of [taken.original, ...taken.renditions]) held.push(await putBlob(bytes, hash));
}

/** A state follows an earlier state of a painting of the same board. */
async function refuseStrangeStates({ boardId, fields }: IncomingPicture): Promise<void> {
  if (!fields.follows) return;
  const earlier = await findPicture(boardId, fields.follows);
  if (fields.kind === 'painting' && earlier?.kind === 'painting') return;
  throw new Problem(
    'picture-not-found',
    say`The earlier state that this picture should follow is not a painting on this board. Choose it again.`,
  );
}

function rowOf(incoming: IncomingPicture, taken: TakenIn, untouchedHash: string | null) {
  const { kind, follows, rights, credit, caption, medium, drying, light } = incoming.fields;
  const painted = kind === 'painting';
  return {
    boardId: incoming.boardId,
    painterId: incoming.painterId,
    kind,
    followsId: follows ?? null,
    rights: kind === 'reference' ? (rights ?? null) : null,
    credit: credit || null,
    caption: caption || null,
    medium: painted ? (medium ?? null) : null,
    drying: painted ? (drying ?? null) : null,
    light: painted ? (light ?? null) : null,
    widthPx: taken.width,
    heightPx: taken.height,
    originalHash: taken.original.hash,
    originalType: taken.original.mediaType,
    orientation: taken.original.orientation,
    untouchedHash,
    clippedHigh: taken.clipped.high,
    clippedLow: taken.clipped.low,
    renditions: taken.renditions.map(({ name, hash, mediaType, width, height, bytes }) => ({
      name,
      hash,
      mediaType,
      widthPx: width,
      heightPx: height,
      sizeBytes: bytes.length,
    })),
  };
}
