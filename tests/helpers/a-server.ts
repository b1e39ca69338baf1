/**
 * A whole server as a child process: port 0, a data folder of its own, the pages from `.next-test`.
 *
 * `npm test` builds those pages first; without them Next answers in development mode, which is slow but the
 * same code, so that one test file can be run by itself.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { aDataFolder } from './a-store.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const START_LIMIT_MS = 90_000;
const HOST_KEY = 'a-host-key-for-tests-only';

/** Somebody who entered, with the cookie that says so. */
export interface Entered {
  id: string;
  name: string;
  boardId: string | null;
  cookie: string;
}

export interface AServer {
  /** Such as http://localhost:41234. */
  url: string;
  hostKey: string;
  dataFolder: string;
  process: ChildProcess;
  /** Everything it printed so far. */
  output(): string;
  /** Enters with a name; with the host key unless another key is given. */
  enter(name: string, key?: string): Promise<Entered>;
  /** A call as that person; the answer as it came. */
  call(who: Entered | null, path: string, init?: RequestInit): Promise<Response>;
  /** A JSON call as that person; the parsed body. Throws with the body when it was refused. */
  json<Body>(who: Entered | null, path: string, method?: string, body?: unknown): Promise<Body>;
  /** kill -9; resolves when it is gone. The data folder stays. */
  kill(): Promise<void>;
  /** TERM, and waits for the exit code; then removes the data folder unless it is to be kept. */
  stop(options?: { keepData?: boolean }): Promise<number | null>;
}

export interface AServerSettings {
  /**
   * An existing data folder, for instance of a server that was killed, or an empty one, which takes
   * some seconds longer, since the demo board is painted before it opens.
   */
  dataFolder?: string;
  environment?: Record<string, string>;
  /** The language of the house; English when left out. Another one has pages of its own build. */
  language?: 'de';
  /** How long a start may take; the first one on an empty folder paints the demo board. */
  startLimitMs?: number;
}

/** Starts a server and waits until it says that it is open. */
export async function startAServer(settings: AServerSettings = {}): Promise<AServer> {
  const dataFolder = settings.dataFolder ?? (await aDataFolder());
  const pages = settings.language ? `.next-test-${settings.language}` : '.next-test';
  const built = existsSync(join(ROOT, pages, 'BUILD_ID'));
  const child = spawn(process.execPath, [join(ROOT, 'server', 'start.mjs'), ...(built ? [] : ['--dev'])], {
    cwd: ROOT,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: {
      ...cleanEnvironment(),
      NODE_ENV: built ? 'production' : 'development',
      PORT: '0',
      VEILSTEP_DATA: dataFolder,
      VEILSTEP_HOST_KEY: HOST_KEY,
      VEILSTEP_BUILD: pages,
      ...(settings.language ? { VEILSTEP_LANGUAGE: settings.language } : {}),
      ...settings.environment,
    },
  });
  let printed = '';
  child.stdout.on('data', (chunk) => {
    printed += chunk;
  });
  child.stderr.on('data', (chunk) => {
    printed += chunk;
  });
  const url = await whenOpen(child, () => printed, settings.startLimitMs ?? START_LIMIT_MS);
  const call = (who: Entered | null, path: string, init: RequestInit = {}) =>
    fetch(`${url}${path}`, {
      redirect: 'manual',
      ...init,
      headers: { ...(who ? { cookie: who.cookie } : {}), ...(init.headers as Record<string, string>) },
    });
  return {
    url,
    hostKey: HOST_KEY,
    dataFolder,
    process: child,
    output: () => printed,
    call,
    json: (who, path, method, body) => jsonCall(call, who, path, method, body),
    enter: (name, key = HOST_KEY) => enter(url, name, key),
    kill: async () => {
      await ended(child, 'SIGKILL');
    },
    stop: async ({ keepData = false } = {}) => {
      const code = await ended(child, 'SIGTERM');
      if (!keepData) await rm(dataFolder, { recursive: true, force: true });
      return code;
    },
  };
}

/** An empty folder for whatever a test wants to break. The caller removes it. */
export function anEmptyFolder(): Promise<string> {
  return mkdtemp(join(tmpdir(), 'veilstep-test-'));
}

async function enter(url: string, name: string, key: string): Promise<Entered> {
  const response = await fetch(`${url}/api/enter`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ key, name }),
  });
  const text = await response.text();
  if (!response.ok) throw new Error(`Entering was refused with ${response.status}: ${text}`);
  const cookie = response.headers.get('set-cookie')?.split(';')[0] ?? '';
  return { ...(JSON.parse(text) as Omit<Entered, 'cookie'>), cookie };
}

async function jsonCall<Body>(
  call: AServer['call'],
  who: Entered | null,
  path: string,
  method = 'GET',
  body?: unknown,
): Promise<Body> {
  const init: RequestInit = { method };
  if (body !== undefined) {
    init.headers = { 'content-type': 'application/json' };
    init.body = JSON.stringify(body);
  }
  const response = await call(who, path, init);
  const text = await response.text();
  if (!response.ok) throw new Error(`${method} ${path} was refused with ${response.status}: ${text}`);
  return (text ? JSON.parse(text) : undefined) as Body;
}

/** What the test runner and npm put into the environment would change how the server behaves. */
function cleanEnvironment(): Record<string, string | undefined> {
  const ours = /^(npm_|VITEST|VEILSTEP_|PORT$|DATABASE_URL$|NODE_ENV$|NODE_OPTIONS$)/i;
  return Object.fromEntries(Object.entries(process.env).filter(([name]) => !ours.test(name)));
}

function whenOpen(child: ChildProcess, printed: () => string, limitMs: number): Promise<string> {
  return new Promise((resolve, reject) => {
    const failed = (why: string) => reject(new Error(`The server ${why}. It said:\n${printed()}`));
    const limit = setTimeout(() => failed('did not open in time'), limitMs);
    const look = () => {
      const url = /Veilstep is open at (\S+)/.exec(printed())?.[1];
      if (!url) return;
      clearTimeout(limit);
      child.stdout?.off('data', look);
      resolve(url);
    };
    child.stdout?.on('data', look);
    child.once('exit', (code) => {
      clearTimeout(limit);
      failed(`ended with ${code} before it opened`);
    });
  });
}

function ended(child: ChildProcess, signal: NodeJS.Signals): Promise<number | null> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve(child.exitCode);
  return new Promise((resolve) => {
    child.once('exit', (code) => resolve(code));
    child.kill(signal);
  });
}
