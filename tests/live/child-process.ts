/** Starts a script of ours as a process of its own, and ends it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

export interface Child<T> {
  /** What it printed as its first line. */
  told: T;
  /** Ends it with a signal and waits until it is gone. */
  end(signal: 'SIGKILL' | 'SIGTERM'): Promise<void>;
}

/**
 * @param script A file of this folder.
 * @throws Error with what it wrote on standard error when it ends before it has printed a line.
 */
export async function startChild<T>(script: string, args: string[]): Promise<Child<T>> {
  const file = fileURLToPath(new URL(script, import.meta.url));
  const child = spawn(process.execPath, ['--import', 'tsx', file, ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let troubles = '';
  child.stderr.on('data', (chunk) => {
    troubles += chunk;
  });
  const line = await Promise.race([
    new Promise<string>((resolve) => createInterface({ input: child.stdout }).once('line', resolve)),
    gone(child).then(() => Promise.reject(new Error(`${script} ended before it listened: ${troubles}`))),
  ]);
  return {
    told: JSON.parse(line) as T, // our own script's line
    async end(signal) {
      const over = gone(child);
      child.kill(signal);
      await over;
    },
  };
}

function gone(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => child.once('exit', () => resolve()));
}
