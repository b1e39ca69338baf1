/**
 * `npm run -s plan -- PHOTO [--setup SETUP.json] [--json]`: frames and a planned ladder, without a browser or server.
 * `--count`, `--strength` and `--air` shape the ladder, as `wishes` of the setup do.
 *
 * Prints one JSON document or a table. IO: one or two files, standard output.
 */
import { planPicture } from '../core/plan/plan-picture.ts';
import { readPlate } from '../imaging/plate.ts';
import { planTable } from './plan-table.ts';
import { readPicture } from './read-picture.ts';
import { readSetup } from './read-setup.ts';
import { readWishes } from './read-wishes.ts';
import { readWords, runCommand, UsageError } from './run-command.ts';

async function plan(words: string[]): Promise<string> {
  const { values, positionals } = readWords(words, {
    setup: { type: 'string' },
    count: { type: 'string' },
    strength: { type: 'string' },
    air: { type: 'string' },
    json: { type: 'boolean', default: false },
  });
  const [photo] = positionals;
  if (positionals.length !== 1 || !photo) {
    throw new UsageError(`One picture is needed; ${positionals.length} given.`);
  }
  const setup = values.setup === undefined ? null : await readSetup(values.setup);
  const wishes = readWishes(values, setup?.wishes ?? {});
  const planned = planPicture(await readPicture(photo, readPlate), setup, undefined, wishes);
  return values.json ? JSON.stringify(planned) : planTable(planned);
}

await runCommand(plan, {
  usage:
    'Usage: npm run -s plan -- PHOTO [--setup SETUP.json] [--count N] [--strength S] [--air AIR] [--json]',
  failed: 'No plan could be made',
});
