/**
 * Rows of renditions: which blob holds which smaller copy of a picture. IO: the database.
 *
 * In the flow: imaging → pictures → [renditions] → picture handler, pipeline.
 */
import type { Rendition } from '../../prisma/generated/client.ts';
import { database } from './database.ts';

export type { Rendition };

/** @param name '640', '1280', '2560', 'lossless-640', 'plate' or 'clip-map'. */
export async function findRendition(
  boardId: string,
  pictureId: string,
  name: string,
): Promise<Rendition | null> {
  return database().rendition.findFirst({ where: { pictureId, name, picture: { boardId } } });
}

/** Picture id -> size of one of its copies, for every picture of a board. */
export async function copySizes(
  boardId: string,
  name: string,
): Promise<Map<string, { width: number; height: number }>> {
  const rows = await database().rendition.findMany({
    where: { name, picture: { boardId } },
    select: { pictureId: true, widthPx: true, heightPx: true },
  });
  return new Map(
    rows.map(({ pictureId, widthPx, heightPx }) => [pictureId, { width: widthPx, height: heightPx }]),
  );
}
