import { expect, test } from 'vitest';
import { killLoop } from './kill-loop.ts';

const KILLS = 5;

test(`after ${KILLS} × kill −9 under twelve writers nothing that anybody was shown is missing`, async () => {
  const report = await killLoop(KILLS, 20_260_201);
  expect(report.shown).toBeGreaterThan(KILLS * 12);
  expect(report.missing).toEqual([]);
  expect(report.refused).toEqual([]);
}, 400_000);
