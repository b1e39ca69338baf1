/** What a browser sends about askings, phrases and looking; parsed at the border and trusted afterwards. Pure. */
import { z } from 'zod';
import { say } from '../say/say.ts';
import { isDay } from './day.ts';
import { ASK_LIMIT, MOST_UNSEEN, PHRASE_LIMIT, VECTOR_LIMIT } from './own-time-limits.ts';

const Id = z.string().min(1).max(64);

export const AskRequest = z.strictObject({
  picture: Id,
  /** Person id of the teacher who is asked; null = any teacher. */
  of: Id.nullable(),
  words: z.string().trim().max(ASK_LIMIT, say`A line to the teacher has at most ${ASK_LIMIT} characters.`),
});

/** A day promised or taken back, or that the look was given. */
export const AskChange = z.union([
  z.strictObject({ promisedFor: z.string().refine(isDay, say`Write a day as 2026-12-31.`).nullable() }),
  z.strictObject({ answered: z.literal(true) }),
]);

const PhraseWords = z
  .string()
  .trim()
  .min(1, say`Write the phrase.`)
  .max(PHRASE_LIMIT, say`A phrase has at most ${PHRASE_LIMIT} characters.`);

export const PhraseRequest = z.strictObject({ words: PhraseWords });

/** Other words, or another place: before the phrase named, null = at the end. */
export const PhraseChange = z.union([
  z.strictObject({ words: PhraseWords }),
  z.strictObject({ before: Id.nullable() }),
]);

const RoomSeen = z.string().max(VECTOR_LIMIT);

/** How far the rooms that are open in the browser were seen, as Yjs state vectors in base64, and what was not. */
export const LookedRequest = z.strictObject({
  rooms: z
    .record(z.string().regex(/^(setup|marks|painting\/[0-9a-z-]{1,64})$/), RoomSeen)
    .refine((rooms) => Object.keys(rooms).length <= 60, say`At most 60 rooms.`),
  unseen: z.array(Id).max(MOST_UNSEEN),
});
export type LookedRequest = z.infer<typeof LookedRequest>;
