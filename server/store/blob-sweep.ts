/**
 * Removes blobs that no row names: after a picture went, after a board went, after a crash between file and row.
 *
 * In the flow: pictures removed → [blob-sweep] → blobs. IO: the database, then the data folder.
 */
import { isHeld, listBlobs, removeBlob } from './blobs.ts';
import { database } from './database.ts';

/**
 * Removes those of the given blobs that nothing needs any more.
 *
 * @param hashes SHA-256 each; repeats are fine.
 * @returns How many files went.
 */
export async function removeUnshared(hashes: Iterable<string>): Promise<number> {
  let removed = 0;
  for (const hash of new Set(hashes)) {
    if (isHeld(hash) || (await isNamed(hash)) || isHeld(hash)) continue;
    await removeBlob(hash);
    removed++;
  }
  return removed;
}

/** Looks at every blob there is. For the start, and after a board with all its pictures went. */
export async function sweepBlobs(): Promise<number> {
  return removeUnshared(await listBlobs());
}

async function isNamed(hash: string): Promise<boolean> {
  const pictures = await database().picture.count({
    where: { OR: [{ originalHash: hash }, { untouchedHash: hash }] },
  });
  return pictures > 0 || (await database().rendition.count({ where: { hash } })) > 0;
}
