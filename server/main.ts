/**
 * Starts the process and stops it in reverse: environment, data folder, lock, port, database, rooms and
 * workers, Next. Every expected trouble at start is one sentence and exit 1.
 *
 * In the flow: `npm start` -> [main] -> everything. IO: everything.
 */
import { fileURLToPath } from 'node:url';
import { makeHostLink } from './access/host-link.ts';
import { isProblem } from './core/problem.ts';
import { startDailyRounds } from './daily.ts';
import { type Environment, environment } from './env.ts';
import { type Handlers, listen } from './http/web-server.ts';
import { logError, logEvent, say } from './log.ts';
import { makeBackup } from './outward/backup.ts';
import { startParts } from './parts.ts';
import { prepareDataFolder } from './store/data-folder.ts';
import { lockFolder } from './store/lock.ts';
import { closeDatabase, openDatabase } from './store/open-database.ts';
import { removeExpired } from './store/sessions.ts';

const dev = process.argv.includes('--dev');
const ROOT = fileURLToPath(new URL('..', import.meta.url));
/** Running requests may end for this long after a stop was asked for. */
const GRACE_MS = 2_000;
/** After this long a stop gives up waiting; what was shown to anyone is stored already. */
const STOP_LIMIT_MS = 10_000;
/** By then whoever opened the first page has it, with its scripts and pictures. */
const WARM_AFTER_MS = 5_000;

/** What has to be undone at the stop, in the order in which it was done. */
const undo: (() => Promise<void>)[] = [];
let stopping = false;

async function start(): Promise<void> {
  const settings = environment();
  await prepareDataFolder(settings);
  let address = '';
  const lock = await lockFolder(settings.dataFolder, settings.dataFolderName, async (request) => {
    if (address === '' || stopping) return 'not yet';
    if (request === 'backup') return makeBackup().catch(backupFailed);
    return request === 'host-link' ? makeHostLink(address) : 'open';
  });
  undo.push(() => lock.release());

  let handOver: (handlers: Handlers) => void = () => {};
  const handlers = new Promise<Handlers>((resolve) => {
    handOver = resolve;
  });
  const web = await listen({ port: settings.port, origin: settings.origin, dev, handlers });

  // The database is read and compiled while Next loads; neither needs the other.
  const [pages] = await Promise.all([startPages(web.port), openStore(settings)]);
  address = settings.origin ?? `http://localhost:${web.port}`;
  const parts = await startParts(settings);
  undo.push(() => parts.stop());
  undo.push(async () => {
    web.refuseNewWork();
    await Promise.all([web.close(GRACE_MS), parts.closeRooms()]);
  });
  undo.push(startDailyRounds());
  const warming = afterFirstPage(pages.page, () => void parts.warm());
  undo.push(warming.stop);
  handOver({ ...pages, page: warming.page, live: parts.live });
  // Only the first start paints it; whoever opens the first link finds it there.
  await parts.makeDemo();
  await greet(settings, address);
}

function backupFailed(thrown: unknown): never {
  logError('backup-failed', thrown);
  throw thrown;
}

async function openStore(settings: Environment): Promise<void> {
  const opened = await openDatabase(settings);
  undo.push(closeDatabase);
  if (opened.backup) logEvent('backed-up', { folder: opened.backup });
  for (const migration of opened.migrated) logEvent('migrated', { migration });
  await removeExpired(new Date());
}

async function startPages(port: number): Promise<Omit<Handlers, 'live'>> {
  // Imported late: Next looks at NODE_ENV while it is being loaded.
  const { default: next } = await import('next');
  const app = next({ dev, dir: ROOT, port, quiet: !dev });
  await app.prepare();
  undo.push(() => app.close());
  const page = app.getRequestHandler();
  return {
    page: (request, response) => page(request, response),
    devTools: dev ? app.getUpgradeHandler() : null,
  };
}

/** Pages as they are; and a while after the first was sent, when nobody waits for the next, one act. */
function afterFirstPage(page: Handlers['page'], act: () => void) {
  let timer: NodeJS.Timeout | undefined;
  let begun = false;
  const begin = () => {
    if (begun || stopping) return;
    begun = true;
    timer = setTimeout(act, WARM_AFTER_MS).unref();
  };
  return {
    page: ((request, response) => {
      response.once('finish', begin);
      return page(request, response);
    }) satisfies Handlers['page'],
    stop: async () => clearTimeout(timer),
  };
}

async function greet(settings: Environment, address: string): Promise<void> {
  say(`Veilstep is open at ${address}`);
  if (settings.hostKey) say('The host enters with VEILSTEP_HOST_KEY.');
  else say(`Host link, works once: ${await makeHostLink(address)}`);
}

async function stop(exitCode: number): Promise<void> {
  if (stopping) return;
  stopping = true;
  setTimeout(() => {
    logEvent('stop-gave-up', { afterMs: STOP_LIMIT_MS });
    process.exit(1);
  }, STOP_LIMIT_MS).unref();
  for (const step of undo.reverse()) {
    await step().catch((thrown) => logError('stop-step-failed', thrown));
  }
  process.exit(exitCode);
}

// Next's types call NODE_ENV read-only; here is where it is decided. Nothing may report to anyone outside.
Object.assign(process.env, {
  NODE_ENV: process.env.NODE_ENV ?? (dev ? 'development' : 'production'),
  NEXT_TELEMETRY_DISABLED: '1',
});
process.on('SIGTERM', () => void stop(0));
process.on('SIGINT', () => void stop(0));
process.on('uncaughtException', (thrown) => {
  logError('uncaught', thrown);
  void stop(1);
});
process.on('unhandledRejection', (thrown) => logError('unhandled-rejection', thrown));
// Whoever read our output may go; that is no reason to stop serving.
process.stdout.on('error', () => {});
process.stderr.on('error', () => {});

start().catch((thrown) => {
  if (isProblem(thrown)) process.stderr.write(`${thrown.message}\n`);
  else logError('start-failed', thrown);
  void stop(1);
});
