/**
 * Results of measuring, of planning and of comparing states, kept under the hash of everything that went in.
 *
 * In the flow: pipeline → [measures] → pipeline, after a restart too. Plans of a photograph, and how a state lies on an
 * earlier one, stand beside the picture's own measures, under hashes with a sign of theirs. IO: the database.
 */

import type { Prisma } from '../../prisma/generated/client.ts';
import type { MeasureDocument } from '../core/contract/measures.ts';
import type { ComparedFacts } from '../core/contract/states.ts';
import type { PicturePlan } from '../core/plan/plan-picture.ts';
import { LANGUAGE } from '../core/say/language.ts';
import { database } from './database.ts';

/** Results kept for one picture: enough for undo and redo to find theirs again. */
const KEPT_PER_PICTURE = 20;

/**
 * Sign before the hash of every document that holds sentences, so that none is shown in another language than the
 * house's; English ones have none, as they had before there was a second language.
 */
export const OF_LANGUAGE = LANGUAGE === 'en' ? '' : `${LANGUAGE}:`;

/** Signs before a hash; the hash of a measure has none, nor a hyphen. */
const OF_PLAN = 'plan-';
const OF_STATES = 'states-';

/** What stands under that hash; the column holds what was saved under the same formula version. */
async function find(pictureId: string, inputsHash: string): Promise<unknown> {
  const row = await database().measure.findUnique({
    where: { pictureId_inputsHash: { pictureId, inputsHash } },
    select: { document: true },
  });
  return row?.document ?? null;
}

/** @param inputsHash SHA-256 of all inputs and of the formulas' version. */
export async function findMeasure(pictureId: string, inputsHash: string): Promise<MeasureDocument | null> {
  // Nothing but `saveMeasure` writes under such a hash.
  return (await find(pictureId, inputsHash)) as MeasureDocument | null;
}

/** As `findMeasure`, for the plan of a photograph. */
export async function findPlan(pictureId: string, inputsHash: string): Promise<PicturePlan | null> {
  // Nothing but `savePlan` writes under such a hash.
  return (await find(pictureId, OF_PLAN + inputsHash)) as PicturePlan | null;
}

/** As `findMeasure`, for how a state lies on an earlier one. */
export async function findCompared(pictureId: string, inputsHash: string): Promise<ComparedFacts | null> {
  // Nothing but `saveCompared` writes under such a hash.
  return (await find(pictureId, OF_STATES + inputsHash)) as ComparedFacts | null;
}

/**
 * The result that was measured last for each of these pictures, in the language of the house; pictures that were never
 * measured are left out.
 */
export async function newestMeasures(pictureIds: readonly string[]): Promise<Map<string, MeasureDocument>> {
  const ids = [...pictureIds];
  // Chosen by the database: twenty documents a picture are too much to be fetched for one.
  const newest = await database().$queryRaw<{ pictureId: string; inputsHash: string }[]>`
    SELECT DISTINCT ON ("pictureId") "pictureId", "inputsHash" FROM "Measure"
    WHERE "pictureId" = ANY(${ids}::text[]) AND "inputsHash" NOT LIKE ${'%-%'}
      AND strpos("inputsHash", ':') = ${OF_LANGUAGE.length}::int ORDER BY "pictureId", "createdAt" DESC`;
  if (newest.length === 0) return new Map();
  const rows = await database().measure.findMany({
    where: { OR: newest },
    select: { pictureId: true, document: true },
  });
  // As above.
  return new Map(rows.map(({ pictureId, document }) => [pictureId, document as unknown as MeasureDocument]));
}

/** Saves a result; the oldest beyond those kept go. Does nothing when the picture went meanwhile. */
export function saveMeasure(
  pictureId: string,
  inputsHash: string,
  formulaVersion: number,
  document: MeasureDocument,
): Promise<void> {
  return save(pictureId, inputsHash, formulaVersion, document);
}

/** As `saveMeasure`, for the plan of a photograph. */
export function savePlan(
  pictureId: string,
  inputsHash: string,
  formulaVersion: number,
  plan: PicturePlan,
): Promise<void> {
  return save(pictureId, OF_PLAN + inputsHash, formulaVersion, plan);
}

/** As `saveMeasure`, for how a state lies on an earlier one. */
export function saveCompared(
  pictureId: string,
  inputsHash: string,
  formulaVersion: number,
  facts: ComparedFacts,
): Promise<void> {
  return save(pictureId, OF_STATES + inputsHash, formulaVersion, facts);
}

async function save(
  pictureId: string,
  inputsHash: string,
  formulaVersion: number,
  document: MeasureDocument | PicturePlan | ComparedFacts,
): Promise<void> {
  if ((await database().picture.count({ where: { id: pictureId } })) === 0) return;
  const json = document as unknown as Prisma.InputJsonValue;
  await database().measure.upsert({
    where: { pictureId_inputsHash: { pictureId, inputsHash } },
    create: { pictureId, inputsHash, formulaVersion, document: json },
    update: { formulaVersion, document: json, createdAt: new Date() },
  });
  const surplus = await database().measure.findMany({
    where: { pictureId },
    orderBy: { createdAt: 'desc' },
    skip: KEPT_PER_PICTURE,
    select: { inputsHash: true },
  });
  if (surplus.length === 0) return;
  await database().measure.deleteMany({
    where: { pictureId, inputsHash: { in: surplus.map((row) => row.inputsHash) } },
  });
}
