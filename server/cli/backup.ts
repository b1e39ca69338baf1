/**
 * `npm run -s backup -- FILE`: writes one file that holds everything, of a running server too.
 *
 * The running server makes it and sends it over the lock's socket, which is its own user's alone; when none runs, the
 * store is opened here. The file is read once more before it counts as written. IO: the socket or the store, FILE.
 */
import { createWriteStream, existsSync } from 'node:fs';
import { open, rename, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { setTimeout } from 'node:timers/promises';
import { Problem } from '../core/problem.ts';
import { type Environment, environment } from '../env.ts';
import { makeBackup, openWholeBackup } from '../outward/backup.ts';
import { askRunning, lockFolder, streamFromRunning } from '../store/lock.ts';
import { closeDatabase, openDatabase } from '../store/open-database.ts';
import { readWords, runCommand, UsageError } from './run-command.ts';

/** Where a word behind an npm command is meant from. */
const HERE = process.env.INIT_CWD ?? process.cwd();

/** How long a running server is asked for an answer, and how long apart. */
const PATIENCE_MS = 90_000;
const PAUSE_MS = 500;

async function backup(words: string[]): Promise<string> {
  const { positionals } = readWords(words, {});
  const [file] = positionals;
  if (positionals.length !== 1 || !file) throw new UsageError('One file to write is needed.');
  const target = resolve(HERE, file);
  if (existsSync(target)) {
    throw new UsageError(`The file ${file} is there already, and a backup never writes over anything.`);
  }
  const settings = environment();
  const beside = `${target}.making`;
  try {
    await fromServerOrStore(settings, (stream) => writeFile(stream, beside));
    const { archive, manifest } = await openWholeBackup(beside);
    archive.close();
    await rename(beside, target);
    const files = manifest.files.length - manifest.tables.length;
    return `Written to ${file}: ${manifest.tables.reduce((sum, { rows }) => sum + rows, 0)} rows and ${files} files, as of ${manifest.at}.`;
  } finally {
    await rm(beside, { force: true });
  }
}

async function fromServerOrStore(
  settings: Environment,
  write: (stream: Readable) => Promise<void>,
): Promise<void> {
  const { dataFolder, dataFolderName } = settings;
  if (!existsSync(settings.databaseUrl ? dataFolder : join(dataFolder, 'database')))
    throw nothingThere(settings);
  if (await isOpenElsewhere(dataFolder)) {
    const stream = await streamFromRunning(dataFolder, 'backup');
    if (stream) return write(stream);
  }
  const lock = await lockFolder(dataFolder, dataFolderName, async () => 'busy');
  try {
    await openDatabase({ ...settings, asItIs: true });
    await write(await makeBackup());
  } finally {
    await closeDatabase();
    await lock.release();
  }
}

/** A server that has much to do may take its time to answer, and so may one that is just starting. */
async function isOpenElsewhere(dataFolder: string): Promise<boolean> {
  const until = Date.now() + PATIENCE_MS;
  for (;;) {
    const answer = await askRunning(dataFolder, 'state');
    if (answer === null || answer === 'open') return answer === 'open';
    if (Date.now() > until) throw notOpen();
    await setTimeout(PAUSE_MS);
  }
}

async function writeFile(stream: Readable, path: string): Promise<void> {
  await pipeline(stream, createWriteStream(path, { mode: 0o600 }));
  const written = await open(path, 'r');
  await written.sync().finally(() => written.close());
}

function nothingThere({ dataFolderName }: Environment): Problem {
  return new Problem(
    'environment-invalid',
    `There is nothing in the folder ${dataFolderName} to back up. Set VEILSTEP_DATA to the folder that the server uses.`,
  );
}

function notOpen(): Problem {
  return new Problem(
    'data-folder-busy',
    'Veilstep is running and does not answer: it is just starting or stopping, or has very much to do. Try again in a minute.',
  );
}

await runCommand(backup, {
  usage: 'Usage: npm run -s backup -- FILE',
  failed: 'The backup could not be written',
});
