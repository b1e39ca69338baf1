/**
 * `npm run -s plan -- PHOTO [--setup SETUP.json] [--json]`: frames and a planned ladder, without a browser or server.
 *
 * Prints one JSON document or a table. IO: one or two files, standard output.
 */
import { planPicture } from '../core/plan/plan-picture.ts';
import { readPlate } from '../imaging/plate.ts';
import { planTable } from './plan-table.ts';
import { readPicture } from './read-picture.ts';
import { readSetup } from './read-setup.ts';
import { readWords, runCommand, UsageError } from './run-command.ts';

async function plan(words: string[]): Promise<string> {
  const { values, positionals } = readWords(words, {
    setup: { type: 'string' },
    json: { type: 'boolean', default: false },
  });
  const [photo] = positionals;
  if (positionals.length !== 1 || !photo) {
    throw new UsageError(`One picture is needed; ${positionals.length} given.`);
  }
  const setup = values.setup === undefined ? null : await readSetup(values.setup);
  const planned = planPicture(await readPicture(photo, readPlate), setup);
  return values.json ? JSON.stringify(planned) : planTable(planned);
}

await runCommand(plan, {
  usage: 'Usage: npm run -s plan -- PHOTO [--setup SETUP.json] [--json]',
  failed: 'No plan could be made',
});
