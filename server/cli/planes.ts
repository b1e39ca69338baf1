/**
 * `npm run -s planes -- PHOTO [--count N] [--json]`: proposes planes, far to near, without a browser or server.
 *
 * Prints one JSON document or a table. IO: one file, standard output.
 */
import {
  FEWEST_PLANES,
  MOST_PLANES,
  type PlaneProposals,
  type Proposal,
  proposePlanes,
} from '../core/planes/propose/propose.ts';
import { readPlate } from '../imaging/plate.ts';
import { planesTable } from './planes-table.ts';
import { readPicture } from './read-picture.ts';
import { readWords, runCommand, UsageError } from './run-command.ts';

interface Arguments {
  readonly photo: string;
  readonly count: number | null;
  readonly json: boolean;
}

function readCount(text: string): number {
  const count = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (!(count >= FEWEST_PLANES && count <= MOST_PLANES)) {
    throw new UsageError(
      `The number of planes is a whole number from ${FEWEST_PLANES} to ${MOST_PLANES}, not '${text}'.`,
    );
  }
  return count;
}

function readArguments(words: string[]): Arguments {
  const { values, positionals } = readWords(words, {
    count: { type: 'string' },
    json: { type: 'boolean', default: false },
  });
  const [photo] = positionals;
  if (positionals.length !== 1 || !photo) {
    throw new UsageError(`One picture is needed; ${positionals.length} given.`);
  }
  return { photo, count: values.count === undefined ? null : readCount(values.count), json: values.json };
}

function proposalFor({ alternatives, chosen }: PlaneProposals, count: number | null): Proposal {
  return alternatives.find(({ asked }) => asked === count) ?? chosen;
}

/** The document of the headless contract; `note` is there where fewer planes than asked were found. */
function document({ widthPx, heightPx }: PlaneProposals, { planes, note }: Proposal) {
  return { width: widthPx, height: heightPx, planes, ...(note === null ? {} : { note }) };
}

async function propose(words: string[]): Promise<string> {
  const { photo, count, json } = readArguments(words);
  const proposals = proposePlanes((await readPicture(photo, readPlate)).raster);
  const proposal = proposalFor(proposals, count);
  if (json) return JSON.stringify(document(proposals, proposal));
  return planesTable(proposals, proposal, count === null ? proposals.reason : null);
}

await runCommand(propose, {
  usage: 'Usage: npm run -s planes -- PHOTO [--count N] [--json]',
  failed: 'No planes could be proposed',
});
