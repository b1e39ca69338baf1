/**
 * One process for one data folder: a local socket named from the folder's real path.
 *
 * The operating system frees a socket when its process dies, however it dies; on Unix the file it leaves
 * behind is removed once nobody answers on it. The same socket lets `npm run host-link` ask the running
 * server for something. In the flow: start -> [lock] -> open-database. IO: a local socket.
 */
import { createHash } from 'node:crypto';
import { existsSync, realpathSync } from 'node:fs';
import { chmod, mkdir, rm, stat } from 'node:fs/promises';
import { connect, createServer, type Server, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { setTimeout } from 'node:timers/promises';
import { Problem } from '../core/problem.ts';

const ANSWER_TIMEOUT_MS = 2_000;
const MOST_REQUEST_BYTES = 200;
/** How often, and how long apart, the folder is tried for while a dead process's socket is being cleared away. */
const MOST_TRIES = 60;
const PAUSE_MS = 50;
/** Clearing takes a moment; a sign of it that is older was left by a process that died. */
const FORGOTTEN_MS = 2_500;

/** Answers one word from another process of the same user, such as `host-link`: with a line, or with a stream. */
export type Answerer = (request: string) => Promise<string | Readable>;

export interface Lock {
  /** Lets the folder go. */
  release(): Promise<void>;
}

/**
 * Takes the folder for this process.
 *
 * @param folder Absolute path of an existing folder.
 * @param folderName How to call it in the message.
 * @throws Problem 'data-folder-busy' with the other process's number.
 */
export async function lockFolder(folder: string, folderName: string, answer: Answerer): Promise<Lock> {
  const path = socketPath(folder);
  const server = createServer((socket) => serve(socket, answer));
  for (let tries = 0; tries < MOST_TRIES; tries += 1) {
    if (await listens(server, path)) {
      if (process.platform !== 'win32') await chmod(path, 0o600);
      return { release: () => release(server) };
    }
    const other = await ask(path, 'process');
    if (other !== null) throw busy(other, folderName);
    // Nobody answers: what lies there was left by a process that died, or somebody is clearing it away just now.
    if (!(await clearStale(path))) await setTimeout(PAUSE_MS);
  }
  throw busy('unknown', folderName);
}

/**
 * Removes the socket file of a process that died. Only one process clears at a time, and it asks again before it
 * removes: while the file lies there nobody can take the folder, so what does not answer then is stale for sure.
 *
 * @returns False when somebody else is clearing just now.
 */
async function clearStale(path: string): Promise<boolean> {
  if (process.platform === 'win32') return false;
  const clearing = `${path}.clearing`;
  try {
    await mkdir(clearing);
  } catch {
    await dropForgotten(clearing);
    return false;
  }
  try {
    if ((await ask(path, 'process')) === null) await rm(path, { force: true });
  } finally {
    await rm(clearing, { recursive: true, force: true });
  }
  return true;
}

/** A process that died while it was clearing left its sign; after a while it counts for nothing. */
async function dropForgotten(clearing: string): Promise<void> {
  const sign = await stat(clearing).catch(() => null);
  if (sign && Date.now() - sign.mtimeMs > FORGOTTEN_MS) await rm(clearing, { recursive: true, force: true });
}

/**
 * Asks the process that holds the folder.
 *
 * @param request One word.
 * @returns Its answer, or null when no process holds the folder.
 */
export function askRunning(folder: string, request: string): Promise<string | null> {
  return ask(socketPath(folder), request);
}

/**
 * Asks the process that holds the folder for something long. Only the same user can: the socket is theirs alone.
 *
 * @returns What it sends, or null when no process holds the folder. A stream that ends early ends without an error.
 */
export function streamFromRunning(folder: string, request: string): Promise<Readable | null> {
  return new Promise((resolve) => {
    const socket = connect(socketPath(folder));
    socket.once('error', () => resolve(null));
    socket.once('connect', () => {
      socket.on('error', () => undefined);
      socket.write(`${request}\n`);
      resolve(socket);
    });
  });
}

function ask(path: string, request: string): Promise<string | null> {
  return new Promise((resolve) => {
    const socket = connect(path);
    let answer = '';
    socket.setTimeout(ANSWER_TIMEOUT_MS, () => socket.destroy());
    socket.setEncoding('utf8');
    socket.on('connect', () => socket.write(`${request}\n`));
    socket.on('data', (text) => {
      answer += text;
    });
    socket.on('error', () => resolve(null));
    // Silence from a socket that took the connection is a process too busy to answer, not a free folder.
    socket.on('close', (failed) => resolve(failed ? null : answer.trim() || 'unknown'));
  });
}

/**
 * Socket names are short on Unix (about 100 bytes), so the path is hashed. They lie in /tmp and not in
 * TMPDIR, which may differ between two processes of one user.
 */
function socketPath(folder: string): string {
  const name = `veilstep-${createHash('sha256').update(realpathSync(folder)).digest('hex').slice(0, 20)}`;
  return process.platform === 'win32'
    ? `\\\\.\\pipe\\${name}`
    : join(existsSync('/tmp') ? '/tmp' : tmpdir(), `${name}.sock`);
}

/** @returns Whether the server listens now; false when something lies at that name already. */
function listens(server: Server, path: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const failed = (thrown: NodeJS.ErrnoException) => {
      if (thrown.code === 'EADDRINUSE') resolve(false);
      else reject(thrown);
    };
    server.once('error', failed);
    server.listen({ path }, () => {
      server.off('error', failed);
      server.unref();
      resolve(true);
    });
  });
}

function serve(socket: Socket, answer: Answerer): void {
  let request = '';
  socket.setEncoding('utf8');
  socket.setTimeout(ANSWER_TIMEOUT_MS, () => socket.destroy());
  // A caller that goes away in mid-sentence is its own trouble.
  socket.on('error', () => socket.destroy());
  socket.on('data', (text) => {
    request += text;
    if (request.length > MOST_REQUEST_BYTES) socket.destroy();
    else if (request.includes('\n')) {
      // What is asked for may take its time; whoever asked waits for it.
      socket.setTimeout(0);
      reply(socket, request.trim(), answer);
    }
  });
}

function reply(socket: Socket, request: string, answer: Answerer): void {
  if (request === 'process') socket.end(String(process.pid));
  else
    answer(request).then(
      (answered) => send(socket, answered),
      () => socket.destroy(),
    );
}

async function send(socket: Socket, answered: string | Readable): Promise<void> {
  if (typeof answered === 'string') socket.end(answered);
  else await pipeline(answered, socket).catch(() => socket.destroy());
}

function release(server: Server): Promise<void> {
  return new Promise((resolve) => server.close(() => resolve()));
}

function busy(processNumber: string, folderName: string): Problem {
  return new Problem(
    'data-folder-busy',
    `Another Veilstep (process ${processNumber}) already uses the folder ${folderName}. Stop it or set ` +
      'VEILSTEP_DATA to another folder.',
  );
}
