/**
 * The data folder: made, checked for room and for the right to write, before anything is opened in it.
 *
 * In the flow: start -> [data folder] -> lock -> open-database; healthz. IO: the data folder.
 */
import { randomBytes } from 'node:crypto';
import { mkdir, rm, statfs, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Problem } from '../core/problem.ts';
import { diskFull, isDiskFull } from './trouble.ts';

const MEGABYTE = 1024 * 1024;
/** An empty database takes 40 MB, its log up to as much again; the rest is room for the first pictures. */
const LEAST_FREE_MEGABYTES = 200;

export interface DataFolder {
  /** Absolute path. */
  dataFolder: string;
  /** As it was written in the environment. */
  dataFolderName: string;
}

/**
 * Makes the folder when it is not there and makes sure that it can be used.
 *
 * @throws Problem 'disk-full' with the megabytes that are free, 'environment-invalid' when it cannot be written.
 */
export async function prepareDataFolder(
  { dataFolder, dataFolderName }: DataFolder,
  leastFreeMegabytes = LEAST_FREE_MEGABYTES,
): Promise<void> {
  try {
    await mkdir(dataFolder, { recursive: true, mode: 0o700 });
    await refuseLittleSpace(dataFolder, dataFolderName, leastFreeMegabytes);
    await tryWriting(dataFolder);
  } catch (thrown) {
    throw folderProblem(thrown, dataFolderName);
  }
}

/** Whether a file can be written in the data folder now. */
export async function dataFolderAnswers(dataFolder: string): Promise<boolean> {
  try {
    await tryWriting(dataFolder);
    return true;
  } catch {
    return false;
  }
}

async function refuseLittleSpace(dataFolder: string, name: string, leastMegabytes: number): Promise<void> {
  const { bavail, bsize } = await statfs(dataFolder);
  const freeMegabytes = Math.floor((bavail * bsize) / MEGABYTE);
  if (freeMegabytes >= leastMegabytes) return;
  throw new Problem(
    'disk-full',
    `The disk that holds the folder ${name} has ${freeMegabytes} MB free and Veilstep needs at least ` +
      `${leastMegabytes} MB to start safely. Free some space, or set VEILSTEP_DATA to a folder on another disk.`,
  );
}

async function tryWriting(dataFolder: string): Promise<void> {
  const probe = join(dataFolder, `.probe-${randomBytes(6).toString('hex')}`);
  try {
    await writeFile(probe, 'veilstep');
  } finally {
    await rm(probe, { force: true });
  }
}

function folderProblem(thrown: unknown, name: string): unknown {
  if (isDiskFull(thrown)) return diskFull(thrown);
  const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : '';
  const why = FOLDER_TROUBLE[code];
  if (!why) return thrown;
  return new Problem(
    'environment-invalid',
    `The data folder ${name} cannot be used: ${why} (${code}). Correct that, or set VEILSTEP_DATA to another folder.`,
    { cause: thrown },
  );
}

const FOLDER_TROUBLE: Record<string, string | undefined> = {
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'the disk is read-only',
  EEXIST: 'a file of that name is in the way',
  ENOTDIR: 'a part of the path is a file',
};
