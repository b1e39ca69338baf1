/** What a browser sends about homework; parsed at the border and trusted afterwards. Pure. */
import { z } from 'zod';
import { say } from '../say/say.ts';
import { isDay } from './day.ts';
import { ANSWERS_AS, HOMEWORK_CHECK_LIMIT, HOMEWORK_LIMIT } from './homework.ts';

const Day = z.string().refine(isDay, say`Write a day as 2026-12-31.`);

export const HomeworkRequest = z.strictObject({
  /** Any state of the painting. */
  picture: z.string().min(1).max(64),
  /** Key of the card it comes from; null = free words. */
  card: z
    .string()
    .regex(/^(plane-[0-9A-Za-z-]{1,64}|own-[0-9A-Za-z-]{1,64}|picture|photo)$/)
    .nullable(),
  words: z
    .string()
    .trim()
    .min(1, say`Write what there is to try.`)
    .max(HOMEWORK_LIMIT, say`Homework has at most ${HOMEWORK_LIMIT} characters.`),
  check: z
    .string()
    .trim()
    .max(HOMEWORK_CHECK_LIMIT, say`A check has at most ${HOMEWORK_CHECK_LIMIT} characters.`),
  dueOn: Day,
  answerAs: z.enum(ANSWERS_AS),
});
export type HomeworkRequest = z.infer<typeof HomeworkRequest>;

/** Another day, or closed and opened again. */
export const HomeworkChange = z.union([
  z.strictObject({ dueOn: Day }),
  z.strictObject({ closed: z.boolean() }),
]);
export type HomeworkChange = z.infer<typeof HomeworkChange>;
