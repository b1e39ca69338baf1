/**
 * Files by the hash of their content: `<data>/blobs/ab/<sha256>`.
 *
 * In the flow: upload → imaging → [blobs] → handlers, pipeline. IO: the data folder.
 * A blob is written beside its place, synced, renamed, and its folder synced, so that a name never stands for
 * half a file. Whoever puts a blob holds it until the row that names it is there; nobody removes a held blob.
 */
import { createHash, randomBytes } from 'node:crypto';
import { createReadStream, type ReadStream } from 'node:fs';
import { access, mkdir, open, readdir, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { environment } from '../env.ts';
import { storeProblem } from './trouble.ts';

const STATE = Symbol.for('veilstep.blobs');
const TEMPORARY = '.half-';

/** Folder of uploads on their way in; emptied at every start. */
export function incomingFolder(): string {
  return join(environment().dataFolder, 'incoming');
}

/** @param hash SHA-256 in 64 hexadecimal digits. @throws Error for anything else: a bug. */
export function blobPath(hash: string): string {
  if (!/^[0-9a-f]{64}$/.test(hash)) throw new Error('A blob is named by its SHA-256.');
  return join(blobFolder(), hash.slice(0, 2), hash);
}

/** SHA-256 of some bytes, 64 hexadecimal digits. */
export function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/**
 * Puts bytes, and holds them until `release`.
 *
 * @param hash Their `hashOf`, when a worker has worked it out already.
 * @throws Problem `disk-full`; the half-written file is gone then.
 */
export async function putBlob(bytes: Uint8Array, hash = hashOf(bytes)): Promise<string> {
  await hold(hash);
  try {
    await writeOnce(blobPath(hash), async (beside) => {
      const file = await open(beside, 'wx', 0o600);
      try {
        await file.writeFile(bytes);
        await file.sync();
      } finally {
        await file.close();
      }
    });
    return hash;
  } catch (thrown) {
    releaseBlobs([hash]);
    throw storeProblem(thrown);
  }
}

/** Takes a file of the data folder as a blob, and holds it until `release`. The file itself is gone afterwards. */
export async function adoptBlob(path: string): Promise<string> {
  const digest = createHash('sha256');
  for await (const chunk of createReadStream(path)) digest.update(chunk as Buffer);
  const hash = digest.digest('hex');
  await hold(hash);
  try {
    await writeOnce(blobPath(hash), async (beside) => {
      await rename(path, beside);
      await syncPath(beside);
    });
    await rm(path, { force: true });
    return hash;
  } catch (thrown) {
    releaseBlobs([hash]);
    throw storeProblem(thrown);
  }
}

/** Lets go of blobs that `putBlob` or `adoptBlob` held, once for each call. */
export function releaseBlobs(hashes: readonly string[]): void {
  const { holds } = blobState();
  for (const hash of hashes) {
    const count = (holds.get(hash) ?? 0) - 1;
    if (count > 0) holds.set(hash, count);
    else holds.delete(hash);
  }
}

/** Whether a blob must stay: somebody is putting or reading it, or a backup is being made. */
export function isHeld(hash: string): boolean {
  const { holds, pauses } = blobState();
  return pauses > 0 || holds.has(hash);
}

/** Holds blobs that are about to be read, until `releaseBlobs`; whoever lets go asks `removeUnshared` afterwards. */
export async function holdBlobs(hashes: readonly string[]): Promise<void> {
  for (const hash of hashes) await hold(hash);
}

/**
 * No blob is removed until what is returned is called; removals that had begun are waited for. What was to be removed
 * meanwhile is found by the next sweep.
 */
export async function pauseRemovals(): Promise<() => void> {
  const state = blobState();
  state.pauses++;
  await Promise.all(state.removals.values());
  let paused = true;
  return () => {
    if (paused) state.pauses--;
    paused = false;
  };
}

/** The blob as a stream. @throws Problem `picture-not-found` when the file is missing. */
export async function openBlob(hash: string): Promise<ReadStream> {
  const path = blobPath(hash);
  try {
    await access(path);
  } catch (cause) {
    throw blobMissing(hash, cause);
  }
  return createReadStream(path);
}

/** Removes one file. Ask `blob-sweep.ts` first whether a row still names it. */
export async function removeBlob(hash: string): Promise<void> {
  const { removals } = blobState();
  const removal = rm(blobPath(hash), { force: true });
  removals.set(hash, removal);
  try {
    await removal;
  } finally {
    removals.delete(hash);
  }
}

/** Removes an upload's temporary file; does nothing when it was adopted or is gone. */
export async function removeFile(path: string): Promise<void> {
  await rm(path, { force: true });
}

/** Hashes of all blobs that are there. */
export async function listBlobs(): Promise<string[]> {
  const found: string[] = [];
  for (const folder of await listFolder(blobFolder())) {
    const names = await listFolder(join(blobFolder(), folder));
    found.push(...names.filter((name) => /^[0-9a-f]{64}$/.test(name)));
  }
  return found;
}

/** Clears what a crash left: half-written blobs and uploads on their way. For the start, before any upload. */
export async function clearHalfWritten(): Promise<void> {
  await rm(incomingFolder(), { recursive: true, force: true });
  for (const folder of await listFolder(blobFolder())) {
    for (const name of await listFolder(join(blobFolder(), folder))) {
      if (name.startsWith(TEMPORARY)) await rm(join(blobFolder(), folder, name), { force: true });
    }
  }
}

function blobFolder(): string {
  return join(environment().dataFolder, 'blobs');
}

/** @param write Makes the whole, synced file at the temporary path it is given. */
async function writeOnce(path: string, write: (beside: string) => Promise<void>): Promise<void> {
  if (await isThere(path)) return;
  const folder = dirname(path);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const beside = join(folder, `${TEMPORARY}${randomBytes(8).toString('hex')}`);
  try {
    await write(beside);
    await rename(beside, path);
    await syncFolder(folder);
  } finally {
    await rm(beside, { force: true });
  }
}

/** A folder keeps new names only once it is synced itself; Windows has no such call and needs none. */
async function syncFolder(folder: string): Promise<void> {
  if (process.platform !== 'win32') await syncPath(folder);
}

async function syncPath(path: string): Promise<void> {
  const file = await open(path, 'r');
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}

async function isThere(path: string): Promise<boolean> {
  return access(path).then(
    () => true,
    () => false,
  );
}

async function listFolder(folder: string): Promise<string[]> {
  try {
    return await readdir(folder);
  } catch (thrown) {
    if (isMissing(thrown)) return [];
    throw thrown;
  }
}

function isMissing(thrown: unknown): boolean {
  return thrown instanceof Error && 'code' in thrown && thrown.code === 'ENOENT';
}

function blobMissing(hash: string, cause: unknown): Problem {
  return new Problem(
    'picture-not-found',
    say`The file of this picture (${hash.slice(0, 12)}…) is not in the data folder. Restore it from a backup, or remove the picture and post it again.`,
    { cause },
  );
}

interface BlobState {
  /** How many callers hold a hash. */
  readonly holds: Map<string, number>;
  /** Removals under way; whoever puts the same bytes waits for them. */
  readonly removals: Map<string, Promise<void>>;
  /** How many want nothing removed just now. */
  pauses: number;
}

/** Behind a global symbol: Next bundles its own copy of this module, and both must see the same holds. */
function blobState(): BlobState {
  const holder = globalThis as unknown as Record<symbol, BlobState | undefined>;
  holder[STATE] ??= { holds: new Map(), removals: new Map(), pauses: 0 };
  return holder[STATE];
}

async function hold(hash: string): Promise<void> {
  const { holds, removals } = blobState();
  holds.set(hash, (holds.get(hash) ?? 0) + 1);
  await removals.get(hash);
}
