/** The hand-traced set is sound: outlines that can be filled, planes that count, halves by the rule, credits. */
import { createHash } from 'node:crypto';
import { readdirSync, statSync } from 'node:fs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import { countLabels, drawLabelMap, NO_PLANE } from '#server/core/planes/label-map.ts';
import { decodeTraced, tracedCredits, tracedPictures } from '#tests/fixtures/traced/traced.ts';

const FOLDER = new URL('../../../fixtures/traced/', import.meta.url);
const all = tracedPictures();

describe('the hand-traced set', () => {
  it('holds at least eight pictures, below 5 MB together, and no picture without a trace', () => {
    expect(all.length).toBeGreaterThanOrEqual(8);
    const files = readdirSync(FOLDER);
    expect(files.filter((file) => file.endsWith('.jpg')).sort()).toEqual(
      all.map(({ picture }) => picture).sort(),
    );
    const bytes = files.reduce((sum, file) => sum + statSync(new URL(file, FOLDER)).size, 0);
    expect(bytes).toBeLessThan(5e6);
  });

  it('is split in halves by the rule in the header of the loader', () => {
    const hash = (name: string) => createHash('sha256').update(name).digest('hex');
    const batches = [...new Set(all.map(({ batch }) => batch))];
    const tune = batches.flatMap((batch) => {
      const pictures = all.filter((traced) => traced.batch === batch).map(({ picture }) => picture);
      return pictures.sort((a, b) => (hash(a) < hash(b) ? -1 : 1)).slice(0, pictures.length / 2);
    });
    expect(tracedPictures('tune').map(({ picture }) => picture)).toEqual(tune.sort());
    expect(tracedPictures('report')).toHaveLength(all.length - tune.length);
  });

  describe.each(all)('$picture', (traced) => {
    it('has outlines that can be filled and follow a contour with enough points', () => {
      for (const { name, outline } of traced.planes) {
        checkOutline(name, outline);
        for (const [x, y] of outline) {
          expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
          expect(Math.max(x, y)).toBeLessThanOrEqual(1);
        }
      }
      const [, ...contours] = traced.planes;
      expect(contours.every(({ outline }) => outline.length >= 12)).toBe(true);
    });

    it('covers the picture with planes of at least 1 % each, the sky first', async () => {
      const { widthPx, heightPx } = await decodeTraced(traced);
      expect(Math.max(widthPx, heightPx)).toBeLessThanOrEqual(1024);
      const outlines = traced.planes.map(({ outline }) => outline);
      const labels = drawLabelMap(widthPx, heightPx, outlines);
      const shares = countLabels(labels, outlines.length).map((count) => count / labels.length);
      expect(Math.min(...shares)).toBeGreaterThanOrEqual(0.01);
      expect(labels.includes(NO_PLANE)).toBe(false);
      // All pictures show sky; a picture without one would have no sky plane at all.
      expect(traced.planes.map(({ kind }) => kind).lastIndexOf('sky')).toBe(0);
      expect(new Set(traced.planes.map(({ name }) => name)).size).toBe(outlines.length);
    });

    it('is stored in full colour resolution without metadata', async () => {
      const path = new URL(traced.picture, FOLDER).pathname;
      const { chromaSubsampling, exif, icc, xmp, iptc } = await sharp(path).metadata();
      expect({ chromaSubsampling, exif, icc, xmp, iptc }).toEqual({ chromaSubsampling: '4:4:4' });
    });

    it('has a credit and a free licence', () => {
      const line = tracedCredits().get(traced.picture);
      expect(line?.credit).toMatch(/\w{3}/);
      expect(line?.licence).toMatch(/^(public domain|CC0 1\.0|CC-BY(-SA)? 4\.0)$/);
    });
  });
});
