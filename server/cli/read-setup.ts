/**
 * The setup named on a command's line: read and checked.
 *
 * In the flow: command -> [read-setup] -> core. IO: one file a call.
 */
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { parseSetup } from '../core/contract/parse-setup.ts';
import type { Setup } from '../core/contract/setup.ts';
import { Problem } from '../core/problem.ts';
import { reasonOf } from './read-picture.ts';
import { plainLine } from './run-command.ts';

/** @throws Problem `setup-invalid` that names the file, or what `parseSetup` says is wrong in it. */
export async function readSetup(path: string): Promise<Setup> {
  const name = basename(path);
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (cause) {
    throw new Problem(
      'setup-invalid',
      `The setup ${name} could not be read (${reasonOf(cause)}). Check its path.`,
      { cause },
    );
  }
  let input: unknown;
  try {
    input = JSON.parse(text);
  } catch (cause) {
    const where = plainLine(cause);
    throw new Problem('setup-invalid', `The setup ${name} is not JSON: ${where}. Correct it and try again.`, {
      cause,
    });
  }
  return parseSetup(input);
}
