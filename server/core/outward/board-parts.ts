/**
 * What lies in the archive of a board beside its pictures: rows of the board, and what stood in its rooms.
 *
 * In the flow: board archive -> [board-parts] -> taking a board in. Everything is parsed anew there: an archive may
 * come from anybody. People are names and roles, nothing to sign in with. Pure.
 */
import { z } from 'zod';
import { DRYINGS, PHOTO_LIGHTS, RIGHTS } from '../contract/picture-choices.ts';
import { CONSENT_USES, MEMBER_ROLES } from '../contract/roles.ts';
import { ArchivePath, ManifestBase, Sha256 } from './manifest.ts';

/** Ids of boards, people and pictures: they are told apart by chance alone, so that no two servers share one. */
export const ArchivedId = z.uuid();
/** A moment between 1970 and 2199. */
const Day = z.iso.datetime().refine((day) => /^(19[7-9]|20|21)/.test(day), 'is a moment of our time');
/** Text without the one sign that the database cannot keep. */
const text = (most: number) =>
  z
    .string()
    .max(most)
    .refine((words) => !words.includes('\u0000'), 'is text');
const Words = (most: number) => text(most).nullable();
const Pixels = z.int().min(1).max(1_000_000);

export const ArchivedPerson = z.strictObject({
  id: ArchivedId,
  name: text(80).min(1),
  /** What they were on the board; null for who was no longer on it. */
  role: z.enum(['owner', ...MEMBER_ROLES]).nullable(),
});
export type ArchivedPerson = z.infer<typeof ArchivedPerson>;

const STORED_TYPES = ['image/jpeg', 'image/png', 'image/webp'] as const;

const ArchivedRendition = z.strictObject({
  name: z.string().regex(/^[a-z0-9-]{1,40}$/),
  mediaType: z.enum(STORED_TYPES),
  widthPx: Pixels,
  heightPx: Pixels,
  path: ArchivePath,
  sha256: Sha256,
  sizeBytes: z.int().min(1),
});

const ArchivedPicture = z.strictObject({
  id: ArchivedId,
  kind: z.enum(['reference', 'painting']),
  painterId: ArchivedId,
  followsId: ArchivedId.nullable(),
  rights: z.enum(RIGHTS).nullable(),
  credit: Words(400),
  caption: Words(400),
  medium: Words(80),
  drying: z.enum(DRYINGS).nullable(),
  light: z.enum(PHOTO_LIGHTS).nullable(),
  widthPx: Pixels,
  heightPx: Pixels,
  originalType: z.enum(STORED_TYPES),
  orientation: z.int().min(1).max(8),
  clippedHigh: z.number().min(0).max(1),
  clippedLow: z.number().min(0).max(1),
  createdAt: Day,
  original: z.strictObject({ path: ArchivePath, sha256: Sha256 }),
  renditions: z.array(ArchivedRendition).min(1).max(40),
});
export type ArchivedPicture = z.infer<typeof ArchivedPicture>;

const ArchivedAsk = z.strictObject({
  pictureId: ArchivedId,
  askedById: ArchivedId,
  askedOfId: ArchivedId.nullable(),
  words: text(2000),
  askedAt: Day,
  promisedFor: z.iso.date().nullable(),
  promisedById: ArchivedId.nullable(),
  answeredAt: Day.nullable(),
  answeredById: ArchivedId.nullable(),
  withdrawnAt: Day.nullable(),
});

const ArchivedHomework = z.strictObject({
  pictureId: ArchivedId,
  painterId: ArchivedId,
  setById: ArchivedId,
  setAt: Day,
  cardKey: Words(100),
  words: text(4000),
  check: text(4000),
  dueOn: z.iso.date(),
  answerAs: z.enum(['state', 'exercise']),
  answerId: ArchivedId.nullable(),
  answeredAt: Day.nullable(),
  closedAt: Day.nullable(),
  withdrawnAt: Day.nullable(),
});

/** `board.json`. */
export const BoardPart = z.strictObject({
  id: ArchivedId,
  title: text(120).min(1),
  scenario: Words(20_000),
  createdAt: Day,
  overAt: Day.nullable(),
  people: z.array(ArchivedPerson).max(20_000),
  pictures: z.array(ArchivedPicture).max(2000),
  consents: z
    .array(z.strictObject({ personId: ArchivedId, use: z.enum(CONSENT_USES), given: z.boolean(), at: Day }))
    .max(20_000),
  asks: z.array(ArchivedAsk).max(5000),
  homework: z.array(ArchivedHomework).max(5000),
});
export type BoardPart = z.infer<typeof BoardPart>;

/** The manifest of a board's archive. */
export const BoardManifest = ManifestBase.extend({
  format: z.literal('veilstep board'),
  title: z.string().max(120),
  /** Sentences about what was left out. */
  leftOut: z.array(z.string().max(1000)).max(5000),
  /** Made over the list of files by the server that wrote it: only that server knows its people again. */
  seal: Sha256,
});
export type BoardManifest = z.infer<typeof BoardManifest>;

/** Where things lie in the archive. */
export const BOARD_PATH = 'board.json';
export const MEASURES_PATH = 'measures.json';
export const roomPath = (room: string): string => `rooms/${room.replace('/', '-')}.json`;
