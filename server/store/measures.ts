/**
 * Results of measuring, kept under the hash of everything that went in.
 *
 * In the flow: pipeline → [measures] → pipeline, after a restart too. IO: the database.
 */

import type { Prisma } from '../../prisma/generated/client.ts';
import type { MeasureDocument } from '../core/contract/measures.ts';
import { database } from './database.ts';

/** Results kept for one picture: enough for undo and redo to find theirs again. */
const KEPT_PER_PICTURE = 20;

/** @param inputsHash SHA-256 of all inputs and of the formulas' version. */
export async function findMeasure(pictureId: string, inputsHash: string): Promise<MeasureDocument | null> {
  const row = await database().measure.findUnique({
    where: { pictureId_inputsHash: { pictureId, inputsHash } },
    select: { document: true },
  });
  // The column holds what `saveMeasure` wrote under the same formula version, and nothing else writes there.
  return row && (row.document as unknown as MeasureDocument);
}

/** The result that was measured last for each of these pictures; pictures that were never measured are left out. */
export async function newestMeasures(pictureIds: readonly string[]): Promise<Map<string, MeasureDocument>> {
  const ids = [...pictureIds];
  // Chosen by the database: twenty documents a picture are too much to be fetched for one.
  const newest = await database().$queryRaw<{ pictureId: string; inputsHash: string }[]>`
    SELECT DISTINCT ON ("pictureId") "pictureId", "inputsHash" FROM "Measure"
    WHERE "pictureId" = ANY(${ids}::text[]) ORDER BY "pictureId", "createdAt" DESC`;
  if (newest.length === 0) return new Map();
  const rows = await database().measure.findMany({
    where: { OR: newest },
    select: { pictureId: true, document: true },
  });
  // As above.
  return new Map(rows.map(({ pictureId, document }) => [pictureId, document as unknown as MeasureDocument]));
}

/** Saves a result; the oldest beyond those kept go. Does nothing when the picture went meanwhile. */
export async function saveMeasure(
  pictureId: string,
  inputsHash: string,
  formulaVersion: number,
  document: MeasureDocument,
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
