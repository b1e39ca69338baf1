/**
 * Puts the pictures of an archive into the data folder as files, each looked at first: nothing is stored that an upload
 * could not have left there.
 *
 * In the flow: taking a board in -> [stored-pictures] -> blobs. IO: reads the archive, writes the data folder.
 */
import { randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdir, open, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { MAX_FILE_BYTES } from '../core/contract/upload-limits.ts';
import type { ArchivedPicture } from '../core/outward/board-parts.ts';
import { isProblem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { inspect } from '../imaging/inspect.ts';
import { originalOf } from '../imaging/original.ts';
import { SNIFF_BYTES, sniff } from '../imaging/sniff.ts';
import { adoptBlob, incomingFolder } from '../store/blobs.ts';
import { type Archive, archiveRefused } from './unpacking.ts';

/** A re-written TIFF may be larger as a PNG than it was as an upload. */
const MOST_BYTES = 10 * MAX_FILE_BYTES;

/** Copies without which a picture can be neither shown nor measured. */
const NEEDED = ['640', '1280', '2560', 'lossless-640', 'plate', 'clip-map'];

/**
 * Stores one picture with its copies, and adds the hash of each to `held` as soon as it is held.
 *
 * @throws Problem 'archive-refused' when a file is not what the archive says, or no such picture.
 */
export async function storePicture(
  archive: Archive,
  picture: ArchivedPicture,
  held: string[],
): Promise<void> {
  const names = picture.renditions.map(({ name }) => name);
  if (new Set(names).size !== names.length || NEEDED.some((name) => !names.includes(name))) {
    throw archiveRefused(say`lacks a copy of a picture`);
  }
  await storeFile(archive, picture.original, held, (path) => checkOriginal(path, picture));
  for (const copy of picture.renditions) {
    await storeFile(archive, copy, held, (path, sizeBytes) => {
      if (sizeBytes !== copy.sizeBytes) throw notWhatItSays(copy.path);
      return checkKind(path, copy);
    });
  }
}

type Check = (path: string, sizeBytes: number) => Promise<void>;

async function storeFile(
  archive: Archive,
  { path, sha256 }: { path: string; sha256: string },
  held: string[],
  check: Check,
): Promise<void> {
  await mkdir(incomingFolder(), { recursive: true, mode: 0o700 });
  const beside = join(incomingFolder(), randomUUID());
  try {
    const written = createWriteStream(beside, { flags: 'wx', mode: 0o600 });
    await pipeline(await archive.stream(path, MOST_BYTES), written);
    await check(beside, written.bytesWritten);
    const hash = await adoptBlob(beside);
    held.push(hash);
    if (hash !== sha256) throw notWhatItSays(path);
  } finally {
    await rm(beside, { force: true });
  }
}

/** An original is a still picture of that size, and pixels and profile alone. */
async function checkOriginal(path: string, picture: ArchivedPicture): Promise<void> {
  const { original, originalType, orientation, widthPx, heightPx } = picture;
  try {
    const found = await inspect(path, 'A picture', MOST_BYTES);
    const turned = orientation >= 5;
    const [width, height] = turned ? [found.height, found.width] : [found.width, found.height];
    const stored = await originalOf(path, found, 'A picture');
    const same = stored.mediaType === originalType && stored.bytes.equals(await readFile(path));
    if (found.orientation !== 1 || width !== widthPx || height !== heightPx || !same)
      throw notWhatItSays(original.path);
  } catch (thrown) {
    throw isProblem(thrown) && thrown.code !== 'archive-refused'
      ? notWhatItSays(original.path, thrown)
      : thrown;
  }
}

async function checkKind(
  path: string,
  { path: name, mediaType }: { path: string; mediaType: string },
): Promise<void> {
  const file = await open(path, 'r');
  const { buffer, bytesRead } = await file
    .read(Buffer.alloc(SNIFF_BYTES), 0, SNIFF_BYTES, 0)
    .finally(() => file.close());
  if (`image/${sniff(buffer.subarray(0, bytesRead)).type}` !== mediaType) throw notWhatItSays(name);
}

function notWhatItSays(path: string, cause?: unknown) {
  return archiveRefused(say`holds a picture that is not what the archive says of it (${path})`, cause);
}
