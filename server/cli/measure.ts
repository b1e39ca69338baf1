/**
 * `npm run -s measure -- REFERENCE PAINTING --setup SETUP.json [--json]`: the engine without a browser or server.
 *
 * Reads two pictures and a setup, prints one JSON document or a table. IO: files, standard output.
 */
import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { parseSetup } from '../core/contract/parse-setup.ts';
import type { Setup } from '../core/contract/setup.ts';
import { measurePair } from '../core/measure/measure-pair.ts';
import { Problem } from '../core/problem.ts';
import { readPaintingPlate, readPlate } from '../imaging/plate.ts';
import { measureTable } from './measure-table.ts';
import { readPicture, reasonOf } from './read-picture.ts';
import { plainLine, readWords, runCommand, UsageError } from './run-command.ts';

interface Arguments {
  readonly reference: string;
  readonly painting: string;
  readonly setup: string;
  readonly json: boolean;
}

function readArguments(words: string[]): Arguments {
  const { values, positionals } = readWords(words, {
    setup: { type: 'string' },
    json: { type: 'boolean', default: false },
  });
  const [reference, painting] = positionals;
  if (positionals.length !== 2 || !reference || !painting) {
    throw new UsageError(
      `Two pictures are needed, the reference and the painting; ${positionals.length} given.`,
    );
  }
  if (!values.setup) throw new UsageError('The setup is missing: --setup SETUP.json.');
  return { reference, painting, setup: values.setup, json: values.json };
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
    const where = plainLine(cause);
    throw new Problem('setup-invalid', `The setup ${name} is not JSON: ${where}. Correct it and try again.`, {
      cause,
    });
  }
  return parseSetup(input);
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

await runCommand(measure, {
  usage: 'Usage: npm run -s measure -- REFERENCE PAINTING --setup SETUP.json [--json]',
  failed: 'The pictures could not be measured',
});
