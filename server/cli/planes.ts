/**
 * `npm run -s planes -- PHOTO [--count N] [--json]`: proposes planes, far to near, without a browser or server.
 *
 * Prints one JSON document or a table. IO: one file, standard output. A trouble is one plain line on standard
 * error: status 1, or 2 for wrong usage.
 */
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import type { EncodedRaster } from '../core/image/raster.ts';
import {
  FEWEST_PLANES,
  MOST_PLANES,
  type PlaneProposals,
  type Proposal,
  proposePlanes,
} from '../core/planes/propose/propose.ts';
import { isProblem, Problem } from '../core/problem.ts';
import { readPlate } from '../imaging/plate.ts';
import { planesTable } from './planes-table.ts';

const USAGE = 'Usage: npm run -s planes -- PHOTO [--count N] [--json]';

class UsageError extends Error {}

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
  let parsed: { values: { count?: string; json?: boolean }; positionals: string[] };
  try {
    parsed = parseArgs({
      args: words,
      allowPositionals: true,
      options: { count: { type: 'string' }, json: { type: 'boolean', default: false } },
    });
  } catch (cause) {
    throw new UsageError(cause instanceof Error ? cause.message : String(cause), { cause });
  }
  const { values, positionals } = parsed;
  const [photo] = positionals;
  if (positionals.length !== 1 || !photo) {
    throw new UsageError(`One picture is needed; ${positionals.length} given.`);
  }
  const count = values.count === undefined ? null : readCount(values.count);
  return { photo, count, json: values.json ?? false };
}

/** A file that isn't there is told in words; what is wrong with a picture, `readPlate` tells. */
async function readPhoto(path: string): Promise<EncodedRaster> {
  try {
    return (await readPlate(path)).raster;
  } catch (cause) {
    if (isProblem(cause)) throw cause;
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
    const reason = code === 'ENOENT' ? 'there is no such file' : plainLine(cause);
    throw new Problem(
      'picture-unreadable',
      `The picture ${basename(path)} could not be read (${reason}). Check its path.`,
      { cause },
    );
  }
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
  const proposals = proposePlanes(await readPhoto(photo));
  const proposal = proposalFor(proposals, count);
  if (json) return JSON.stringify(document(proposals, proposal));
  return planesTable(proposals, proposal, count === null ? proposals.reason : null);
}

/** One line, whatever was thrown. */
function plainLine(thrown: unknown): string {
  const text = thrown instanceof Error ? thrown.message : String(thrown);
  return text.replace(/\s*\n\s*/g, ' ').trim();
}

try {
  process.stdout.write(`${await propose(process.argv.slice(2))}\n`);
} catch (thrown) {
  if (thrown instanceof UsageError) {
    process.stderr.write(`${plainLine(thrown)} ${USAGE}\n`);
    process.exitCode = 2;
  } else {
    const sentence = isProblem(thrown)
      ? plainLine(thrown)
      : `No planes could be proposed: ${plainLine(thrown)}`;
    process.stderr.write(`${sentence}\n`);
    process.exitCode = 1;
  }
}
