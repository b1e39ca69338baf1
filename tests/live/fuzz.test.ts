/**
 * Hostile clients change nothing and disturb nobody. Forbidden updates are shortened here, for each needs a client
 * of its own; `VEILSTEP_FUZZ=full` sends a thousand.
 */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { CLOSE } from '#server/core/live/wire.ts';
import { closeStage, openStage, type Stage } from '#tests/access/cast.ts';
import { fuzzForbidden, fuzzMalformed } from './fuzz.ts';

const MALFORMED_FRAMES = 10_000;
const FORBIDDEN_UPDATES = process.env.VEILSTEP_FUZZ === 'full' ? 1000 : 150;

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => closeStage(stage));

test(`${FORBIDDEN_UPDATES} valid but forbidden updates from y-websocket clients of every role`, async () => {
  const report = await fuzzForbidden(stage, FORBIDDEN_UPDATES, 20_261_125);
  expect(report.taken).toEqual([]);
  expect(report.codes).toEqual(new Map([[CLOSE.notAllowed, FORBIDDEN_UPDATES]]));
  expect(report).toMatchObject({ sent: FORBIDDEN_UPDATES, heard: 0, disturbed: [] });
}, 300_000);

test(`${MALFORMED_FRAMES} malformed frames`, async () => {
  const report = await fuzzMalformed(stage, MALFORMED_FRAMES, 20_261_125);
  expect(report.taken).toEqual([]);
  expect(report.codes.has(CLOSE.malformed)).toBe(true);
  expect(report).toMatchObject({ sent: MALFORMED_FRAMES, heard: 0, disturbed: [] });
}, 300_000);
