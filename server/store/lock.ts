/**
 * One process for one data folder: a local socket named from the folder's real path.
 *
 * The operating system frees a socket when its process dies, however it dies; on Unix the file it leaves
 * behind is removed once nobody answers on it. The same socket lets `npm run host-link` ask the running
 * server for something. In the flow: start -> [lock] -> open-database. IO: a local socket.
 */
import { createHash } from 'node:crypto';
import { existsSync, realpathSync } from 'node:fs';
import { chmod, rename, rm } from 'node:fs/promises';
import { connect, createServer, type Server, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Problem } from '../core/problem.ts';

const ANSWER_TIMEOUT_MS = 2_000;
const MOST_REQUEST_BYTES = 200;

/** Answers one word from another process of the same user, such as `host-link`. */
export type Answerer = (request: string) => Promise<string>;

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
  // Losing a race for a stale file, one meets the winner at the next try.
  for (let tries = 0; tries < 3; tries += 1) {
    if (await listens(server, path)) {
      if (process.platform !== 'win32') await chmod(path, 0o600);
      return { release: () => release(server) };
    }
    const other = (await ask(path, 'process')) ?? (await clearStale(path));
    if (other !== null) throw busy(other, folderName);
  }
  throw busy('unknown', folderName);
}

/**
 * Removes the file of a process that died. It is moved aside first and asked once more there, so that the
 * socket of somebody who took the folder in this very moment is put back instead of lost.
 *
 * @returns That somebody's process number, or null when the file was stale.
 */
async function clearStale(path: string): Promise<string | null> {
  if (process.platform === 'win32') return null;
  const aside = `${path}.${process.pid}`;
  try {
    await rename(path, aside);
  } catch {
    return null;
  }
  const other = await ask(aside, 'process');
  if (other === null) await rm(aside, { force: true });
  else await rename(aside, path);
  return other;
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
    else if (request.includes('\n')) reply(socket, request.trim(), answer);
  });
}

function reply(socket: Socket, request: string, answer: Answerer): void {
  if (request === 'process') socket.end(String(process.pid));
  else
    answer(request).then(
      (text) => socket.end(text),
      () => socket.destroy(),
    );
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
