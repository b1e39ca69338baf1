/**
 * Rows of pictures with their renditions: add, read, list, remove.
 *
 * In the flow: imaging → [pictures] → pages, handlers, pipeline. Who may do so is decided in access/ and http/.
 * IO: the database; blobs are put before and removed after by the callers.
 */
import { randomUUID } from 'node:crypto';
import type { Picture } from '../../prisma/generated/client.ts';
import type { Drying, PhotoLight, Rights } from '../core/contract/picture-choices.ts';
import type { PictureFields, PictureNotes } from '../core/contract/requests.ts';
import type { PictureView } from '../core/contract/responses.ts';
import { pictureView } from './board-view.ts';
import { database } from './database.ts';

export type { Picture };

/** One rendition to store beside its picture. Sizes in pixels and bytes. */
export interface NewRendition {
  readonly name: string;
  readonly hash: string;
  readonly mediaType: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly sizeBytes: number;
}

/** Everything about a picture that is not its id or its day. */
export interface NewPicture {
  readonly boardId: string;
  readonly painterId: string;
  readonly kind: PictureFields['kind'];
  readonly followsId: string | null;
  readonly rights: Rights | null;
  readonly credit: string | null;
  readonly caption: string | null;
  readonly medium: string | null;
  readonly drying: Drying | null;
  readonly light: PhotoLight | null;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly originalHash: string;
  readonly originalType: string;
  /** EXIF orientation 1..8 that still has to be applied to the stored original. */
  readonly orientation: number;
  readonly untouchedHash: string | null;
  /** Shares of clipped pixels, 0..1. */
  readonly clippedHigh: number;
  readonly clippedLow: number;
  readonly renditions: readonly NewRendition[];
}

/** Adds the picture and its renditions, all or nothing. @returns Its new id. */
export async function addPicture(picture: NewPicture): Promise<string> {
  const { renditions, ...columns } = picture;
  const { id } = await database().picture.create({
    data: { id: randomUUID(), ...columns, renditions: { create: [...renditions] } },
    select: { id: true },
  });
  return id;
}

/** The row, or null when that board has no such picture. */
export async function findPicture(boardId: string, pictureId: string): Promise<Picture | null> {
  return database().picture.findFirst({ where: { id: pictureId, boardId } });
}

/** What people are told of a picture, or null when that board has no such picture. */
export async function readPictureView(boardId: string, pictureId: string): Promise<PictureView | null> {
  const row = await database().picture.findFirst({
    where: { id: pictureId, boardId },
    include: { painter: { select: { id: true, name: true } } },
  });
  return row && pictureView(row);
}

/** Puts notes about a painting in place of those before; what is not named stays. */
export async function notePicture(boardId: string, pictureId: string, notes: PictureNotes): Promise<void> {
  const { medium, drying, light } = notes;
  const data = {
    ...(medium === undefined ? {} : { medium }),
    ...(drying === undefined ? {} : { drying }),
    ...(light === undefined ? {} : { light }),
  };
  await database().picture.updateMany({ where: { id: pictureId, boardId, kind: 'painting' }, data });
}

/** Pictures of one kind on a board, in the order they were posted. */
export async function listPictures(boardId: string, kind: PictureFields['kind']): Promise<Picture[]> {
  return database().picture.findMany({
    where: { boardId, kind },
    orderBy: [{ createdAt: 'asc' }, { id: 'asc' }],
  });
}

/**
 * Removes the picture with its renditions and measures; a later state then follows the one before it.
 *
 * @returns Hashes of its blobs for `removeUnshared`; none when it was gone already.
 */
export async function removePicture(boardId: string, pictureId: string): Promise<string[]> {
  return database().$transaction(async (store) => {
    const row = await store.picture.findFirst({
      where: { id: pictureId, boardId },
      include: { renditions: { select: { hash: true } } },
    });
    if (!row) return [];
    const next = await store.picture.findFirst({ where: { followsId: pictureId }, select: { id: true } });
    // A look that was asked for, and homework, stay with the painting: with the state after this one, else the one before.
    const heirId = next?.id ?? row.followsId;
    if (heirId !== null) await store.ask.updateMany({ where: { pictureId }, data: { pictureId: heirId } });
    if (heirId !== null)
      await store.homework.updateMany({ where: { pictureId }, data: { pictureId: heirId } });
    const unanswered = { answerId: null, answeredAt: null };
    await store.homework.updateMany({ where: { answerId: pictureId }, data: unanswered });
    await store.picture.updateMany({ where: { followsId: pictureId }, data: { followsId: row.followsId } });
    await store.picture.delete({ where: { id: pictureId } });
    const untouched = row.untouchedHash ? [row.untouchedHash] : [];
    return [row.originalHash, ...untouched, ...row.renditions.map(({ hash }) => hash)];
  });
}
