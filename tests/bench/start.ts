/**
 * Rows about starting: time to the first page, and a second start that prepares nothing. IO: child processes.
 */
import { spawn, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { startAServer } from '#tests/helpers/a-server.ts';
import { median, ROUNDS, row, times } from './measured.ts';
import type { BenchRow } from './row.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const FIRST_PAGE_LIMIT_MS = 3_000;
/** Also builds what the servers of the bench serve, should anything have changed. */
const PREPARE = ['server/prepare/prepare.mjs', 'bench'];
const BARE_SERVER =
  "require('node:http').createServer((q,s)=>s.end('ok')).listen(0,function(){console.log(this.address().port)})";

/** @param dataFolder Of a server that ran before; it is there afterwards. */
export async function startRows(dataFolder: string): Promise<BenchRow[]> {
  return [
    await row('second start prepares nothing', secondStart),
    await row('start (already built) to first page', () => firstPageRow(dataFolder)),
  ];
}

/** What `npm start` does before the server, when nothing changed since the last time. */
async function secondStart(): Promise<Omit<BenchRow, 'name'>> {
  timed(PREPARE);
  const bareMs = timed(['-e', '0']).ms;
  const { ms, printed } = timed(PREPARE);
  const silent = printed === '';
  return {
    measured: `${ms.toFixed(0)} ms${silent ? ', nothing done' : `, did: ${printed.split('\n')[0]}`}`,
    yardstick: `node -e 0: ${bareMs.toFixed(0)} ms`,
    ratio: times(ms / bareMs),
    target: 'nothing done',
    met: silent,
  };
}

function timed(args: string[]): { ms: number; printed: string } {
  const started = performance.now();
  const { stdout, stderr, status } = spawnSync(process.execPath, args, { cwd: ROOT, encoding: 'utf8' });
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${status}.`);
  return { ms: performance.now() - started, printed: `${stdout}${stderr}`.trim() };
}

/** Server and bare server in turn, each started anew; medians. */
async function firstPageRow(dataFolder: string): Promise<Omit<BenchRow, 'name'>> {
  const took = { server: [] as number[], bare: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    took.bare.push(await bareServerMs());
    const started = performance.now();
    const server = await startAServer({ dataFolder });
    await firstPage(server.url);
    took.server.push(performance.now() - started);
    await server.stop({ keepData: true });
  }
  return startRow(median(took.server), median(took.bare));
}

async function firstPage(url: string): Promise<void> {
  const answer = await fetch(url);
  await answer.text();
  if (!answer.ok) throw new Error(`The first page answered ${answer.status}.`);
}

function startRow(ms: number, bareMs: number): Omit<BenchRow, 'name'> {
  return {
    measured: `${ms.toFixed(0)} ms`,
    yardstick: `bare node:http server: ${bareMs.toFixed(0)} ms`,
    ratio: times(ms / bareMs),
    target: `≤ ${FIRST_PAGE_LIMIT_MS} ms`,
    met: ms <= FIRST_PAGE_LIMIT_MS,
  };
}

/** From starting Node.js with the smallest HTTP server to its first answer. */
async function bareServerMs(): Promise<number> {
  const started = performance.now();
  const child = spawn(process.execPath, ['-e', BARE_SERVER], { stdio: ['ignore', 'pipe', 'inherit'] });
  try {
    const port = await new Promise<string>((resolve, reject) => {
      child.stdout.once('data', (chunk) => resolve(String(chunk).trim()));
      child.once('exit', (code) => reject(new Error(`The bare server ended with ${code}.`)));
    });
    await firstPage(`http://localhost:${port}`);
    return performance.now() - started;
  } finally {
    child.kill();
  }
}
