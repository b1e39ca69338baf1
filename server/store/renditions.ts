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
