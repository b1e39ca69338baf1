/**
 * The data folder of a first start, with the demo board on it. Painting it takes the longest of all, so it is kept in the
 * ignored folder for as long as whatever makes it is the same. IO: files, a server for as long as it takes.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { cp, mkdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { anEmptyFolder, startAServer } from './a-server.ts';

/** Five paintings are painted before a first server opens, perhaps beside other work. */
const FIRST_START_MS = 600_000;
/** What is measured of it is measured anew where formulas changed, so those are left out. */
const MAKES_IT = [
  ...['demo', 'imaging', 'store', 'core/live', 'core/contract'].map((folder) => `server/${folder}`),
  'prisma/migrations',
  'prisma/schema.prisma',
];
const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const OUT = fileURLToPath(new URL('../.out/', import.meta.url));

/** @returns A copy of its own. The caller removes it; a server that is stopped does. */
export async function aFirstStart(): Promise<string> {
  const dataFolder = await anEmptyFolder();
  await cp(await kept(), dataFolder, { recursive: true });
  return dataFolder;
}

async function kept(): Promise<string> {
  const folder = `${OUT}first-start-${hashOf(MAKES_IT).slice(0, 16)}`;
  if (existsSync(folder)) return folder;
  const made = await anEmptyFolder();
  const server = await startAServer({ dataFolder: made, startLimitMs: FIRST_START_MS });
  await server.stop({ keepData: true });
  await mkdir(OUT, { recursive: true });
  // Renamed when it is whole, so that a run that was cut short leaves no half of it.
  await cp(made, `${folder}-being-made`, { recursive: true });
  await rename(`${folder}-being-made`, folder);
  await rm(made, { recursive: true, force: true });
  return folder;
}

/** Of names and contents of files and folders, relative to the project. */
function hashOf(paths: readonly string[]): string {
  const hash = createHash('sha256');
  for (const file of paths.flatMap(filesUnder))
    hash.update(`${file}\0`).update(readFileSync(join(ROOT, file)));
  return hash.digest('hex');
}

function filesUnder(path: string): string[] {
  if (!statSync(join(ROOT, path)).isDirectory()) return [path];
  return readdirSync(join(ROOT, path))
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}
