/**
 * `npm run -s measure -- REFERENCE PAINTING --setup SETUP.json [--json]`: the engine without a browser or server.
 *
 * Reads two pictures and a setup, prints one JSON document or a table. IO: files, standard output. A trouble
 * is one plain line on standard error: status 1, or 2 for wrong usage.
 */
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { parseSetup } from '../core/contract/parse-setup.ts';
import type { Setup } from '../core/contract/setup.ts';
import type { MeasurablePlate } from '../core/image/raster.ts';
import { measurePair } from '../core/measure/measure-pair.ts';
import { isProblem, Problem } from '../core/problem.ts';
import { readPaintingPlate, readPlate } from '../imaging/plate.ts';
import { measureTable } from './measure-table.ts';

const USAGE = 'Usage: npm run -s measure -- REFERENCE PAINTING --setup SETUP.json [--json]';

class UsageError extends Error {}

interface Arguments {
  readonly reference: string;
  readonly painting: string;
  readonly setup: string;
  readonly json: boolean;
}

function readArguments(words: string[]): Arguments {
  let parsed: { values: { setup?: string; json?: boolean }; positionals: string[] };
  try {
    parsed = parseArgs({
      args: words,
      allowPositionals: true,
      options: { setup: { type: 'string' }, json: { type: 'boolean', default: false } },
    });
  } catch (cause) {
    throw new UsageError(cause instanceof Error ? cause.message : String(cause), { cause });
  }
  const { values, positionals } = parsed;
  const [reference, painting] = positionals;
  if (positionals.length !== 2 || !reference || !painting) {
    throw new UsageError(
      `Two pictures are needed, the reference and the painting; ${positionals.length} given.`,
    );
  }
  if (!values.setup) throw new UsageError('The setup is missing: --setup SETUP.json.');
  return { reference, painting, setup: values.setup, json: values.json ?? false };
}

async function readSetup(path: string): Promise<Setup> {
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
    const where = cause instanceof Error ? cause.message : String(cause);
    throw new Problem('setup-invalid', `The setup ${name} is not JSON: ${where}. Correct it and try again.`, {
      cause,
    });
  }
  return parseSetup(input);
}

/** A system error in words where it is a common one. */
function reasonOf(thrown: unknown): string {
  const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : '';
  const words: Record<string, string> = {
    ENOENT: 'there is no such file',
    EISDIR: 'it is a folder',
    EACCES: 'reading it is not allowed',
  };
  const message = thrown instanceof Error ? thrown.message : String(thrown);
  return words[code] ?? (code || message);
}

/** Two pictures were given, so what is wrong with one has to say which. */
function namingFile(problem: Problem, name: string): Problem {
  const ofPicture = problem.code.startsWith('picture-') || problem.code.startsWith('file-');
  if (!ofPicture || problem.message.includes(name)) return problem;
  return new Problem(problem.code, `${name}: ${problem.message}`, { cause: problem });
}

/** A file that isn't there is told in words; what is wrong with a picture, `readPlate` tells. */
async function readPicture(
  path: string,
  read: (path: string) => Promise<MeasurablePlate>,
): Promise<MeasurablePlate> {
  try {
    return await read(path);
  } catch (cause) {
    const name = basename(path);
    if (isProblem(cause)) throw namingFile(cause, name);
    throw new Problem(
      'picture-unreadable',
      `The picture ${name} could not be read (${reasonOf(cause)}). Check its path.`,
      {
        cause,
      },
    );
  }
}

async function measure(words: string[]): Promise<string> {
  const { reference, painting, setup: setupPath, json } = readArguments(words);
  const setup = await readSetup(setupPath);
  const document = measurePair({
    reference: await readPicture(reference, readPlate),
    painting: await readPicture(painting, (path) => readPaintingPlate(path, setup.photo)),
    setup,
  });
  return json ? JSON.stringify(document) : measureTable(document);
}

/** One line, whatever was thrown. */
function plainLine(thrown: unknown): string {
  const text = thrown instanceof Error ? thrown.message : String(thrown);
  return text.replace(/\s*\n\s*/g, ' ').trim();
}

try {
  process.stdout.write(`${await measure(process.argv.slice(2))}\n`);
} catch (thrown) {
  if (thrown instanceof UsageError) {
    process.stderr.write(`${plainLine(thrown)} ${USAGE}\n`);
    process.exitCode = 2;
  } else {
    const sentence = isProblem(thrown)
      ? plainLine(thrown)
      : `The pictures could not be measured: ${plainLine(thrown)}`;
    process.stderr.write(`${sentence}\n`);
    process.exitCode = 1;
  }
}
