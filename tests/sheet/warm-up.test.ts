/** The sheets' thread makes ready before anybody waits for it. */
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { createSheets } from '#server/pipeline/sheets.ts';
import { warmUp } from '#server/sheet/warm-up.ts';

describe('making ready for the first sheet', () => {
  it('lays out a page and draws it, so that typeface, layout and drawing have all been used once', async () => {
    const { format, width = 0, height = 0 } = await sharp(await warmUp()).metadata();
    expect(format).toBe('png');
    // A6 is 105 × 148 mm (ISO 216).
    expect(width / height).toBeCloseTo(105 / 148, 2);
  });

  it('never fails, not even once the server stops', async () => {
    const sheets = createSheets();
    await sheets.stop();
    await expect(sheets.warm()).resolves.toBeUndefined();
  });
});
