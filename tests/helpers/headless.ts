/** A headless command, spawned as a user would, and what a refusal of one looks like. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

export interface Outcome {
  status: number | null;
  out: string;
  err: string;
}

/** Runs `server/cli/<name>.ts` with these words behind it. */
export function runHeadless(name: 'measure' | 'planes' | 'plan', ...words: string[]): Promise<Outcome> {
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, ['--import', 'tsx', `server/cli/${name}.ts`, ...words], {
      cwd: ROOT,
    });
    let [out, err] = ['', ''];
    child.stdout.on('data', (chunk) => (out += chunk));
    child.stderr.on('data', (chunk) => (err += chunk));
    child.on('error', failed);
    child.on('close', (status) => done({ status, out, err }));
  });
}

/** One line on standard error with no trace in it, nothing on standard output, and the status. */
export function expectRefusal({ status, out, err }: Outcome, sentence: RegExp, expectedStatus = 1): void {
  expect(err).toMatch(sentence);
  expect(err.trimEnd().split('\n')).toHaveLength(1);
  expect(err).not.toMatch(/\bat .*:\d+:\d+|node:internal|Error:/);
  expect({ status, out }).toEqual({ status: expectedStatus, out: '' });
}
