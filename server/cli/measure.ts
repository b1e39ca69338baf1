/**
 * `npm run -s measure -- REFERENCE PAINTING --setup SETUP.json [--json]`: the engine without a browser or server.
 *
 * Reads two pictures and a setup, prints one JSON document or a table. IO: files, standard output.
 */
import { measurePair } from '../core/measure/measure-pair.ts';
import { readPaintingPlate, readPlate } from '../imaging/plate.ts';
import { measureTable } from './measure-table.ts';
import { readPicture } from './read-picture.ts';
import { readSetup } from './read-setup.ts';
import { readWords, runCommand, UsageError } from './run-command.ts';

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
