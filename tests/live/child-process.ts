/** Starts a script of ours as a process of its own, asks how much memory it holds, and ends it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { on } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

export interface Child<T> {
  /** What it printed as its first line. */
  told: T;
  /** Bytes that it still holds once its garbage is collected; for scripts that called `tellMemory`. */
  heldBytes(): Promise<number>;
  /** Ends it with a signal and waits until it is gone. */
  end(signal: 'SIGKILL' | 'SIGTERM'): Promise<void>;
}

/**
 * @param script A file of this folder.
 * @throws Error with what it wrote on standard error when it ends before it has printed a line.
 */
export async function startChild<T>(script: string, args: string[]): Promise<Child<T>> {
  const file = fileURLToPath(new URL(script, import.meta.url));
  const child = spawn(process.execPath, ['--expose-gc', '--import', 'tsx', file, ...args], {
    stdio: ['pipe', 'pipe', 'pipe'],
  });
  let troubles = '';
  child.stderr.on('data', (chunk) => {
    troubles += chunk;
  });
  // A child that was killed no longer reads; whoever asked it hears so from its end.
  child.stdin.on('error', () => undefined);
  const over = gone(child);
  const lines = on(createInterface({ input: child.stdout }), 'line');
  const nextLine = async (): Promise<string> => {
    const line = await Promise.race([
      lines.next(),
      over.then(() => Promise.reject(new Error(`${script} ended: ${troubles}`))),
    ]);
    return String(line.value[0]);
  };
  return {
    told: JSON.parse(await nextLine()) as T, // our own script's line
    async heldBytes() {
      child.stdin.write('memory\n');
      return Number(await nextLine());
    },
    async end(signal) {
      child.kill(signal);
      await over;
    },
  };
}

/** In the child: answers each question about memory with a line, after collecting garbage. */
export function tellMemory(): void {
  createInterface({ input: process.stdin }).on('line', () => {
    globalThis.gc?.();
    const { heapUsed, external } = process.memoryUsage();
    process.stdout.write(`${heapUsed + external}\n`);
  });
}

function gone(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => child.once('exit', () => resolve()));
}
