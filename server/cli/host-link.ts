/**
 * `npm run -s host-link`: prints a fresh host link.
 *
 * While the server runs it makes the link (its database takes one process only); else the store is opened here.
 * In the flow: operator -> [host link] -> access. IO: the lock's socket or the database; standard output.
 */
import { existsSync } from 'node:fs';
import { makeHostLink } from '../access/host-link.ts';
import { isProblem, Problem } from '../core/problem.ts';
import { type Environment, environment } from '../env.ts';
import { prepareDataFolder } from '../store/data-folder.ts';
import { askRunning, lockFolder } from '../store/lock.ts';
import { closeDatabase, openDatabase } from '../store/open-database.ts';

async function hostLink(settings: Environment): Promise<string> {
  const running = existsSync(settings.dataFolder) ? await askRunning(settings.dataFolder, 'host-link') : null;
  if (running?.startsWith('http')) return running;
  if (running !== null) throw stillStarting();
  await prepareDataFolder(settings);
  const lock = await lockFolder(settings.dataFolder, settings.dataFolderName, async () => 'busy');
  try {
    await openDatabase(settings);
    return await makeHostLink(settings.origin ?? `http://localhost:${settings.port}`);
  } finally {
    await closeDatabase();
    await lock.release();
  }
}

function stillStarting(): Problem {
  return new Problem(
    'data-folder-busy',
    'Veilstep is just starting or stopping and cannot make a link yet. Try again in a few seconds.',
  );
}

try {
  process.stdout.write(`${await hostLink(environment())}\n`);
} catch (thrown) {
  if (!isProblem(thrown)) throw thrown;
  process.stderr.write(`${thrown.message}\n`);
  process.exitCode = 1;
}
