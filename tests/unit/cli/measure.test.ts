/** The headless command, spawned: one document on a good run, one plain sentence on a bad one. */
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { expectRefusal, runHeadless } from '#tests/helpers/headless.ts';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const PHOTO = join(ROOT, 'tests/fixtures/photos/canyon-river.jpg');
const PATIENT_MS = 120_000;

type Outline = [number, number][];
const sky: Outline = [
  [0, 0],
  [1, 0],
  [1, 0.3],
  [0, 0.3],
];
const land: Outline = [
  [0, 0.3],
  [1, 0.3],
  [1, 1],
  [0, 1],
];
const GOOD = {
  planes: [
    { name: 'sky', kind: 'sky', reference: sky },
    { name: 'far ridge', reference: land },
  ],
};

let folder = '';
let painting = '';

const run = (...words: string[]) => runHeadless('measure', ...words);

async function file(name: string, content: string | Uint8Array): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, content);
  return path;
}

async function setupFile(name: string, setup: unknown): Promise<string> {
  return file(name, JSON.stringify(setup));
}

/** One plain line, no stack trace, nothing on standard output. */
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'veilstep-measure-'));
  painting = join(folder, 'painting.png');
  // Half of the light of the photo, in code.
  await sharp(PHOTO).linear(0.8, 0).png().toFile(painting);
});

afterAll(() => rm(folder, { recursive: true, force: true }));

describe('measure', () => {
  it(
    'prints one JSON document',
    async () => {
      const { status, out, err } = await run(
        PHOTO,
        painting,
        '--setup',
        await setupFile('good.json', GOOD),
        '--json',
      );
      expect({ status, err }).toEqual({ status: 0, err: '' });
      const document: MeasureDocument = JSON.parse(out);
      expect(document).toMatchObject({
        version: 1,
        target: 'reference',
        capture: { grade: 'C', reasons: ['no neutral', 'too small or soft'] },
      });
      expect(document.planes.map(({ name }) => name)).toEqual(['sky', 'far ridge']);
      for (const { gap } of document.planes) expect(gap?.mid).toBeLessThan(0);
      expect(document.steps).toHaveLength(1);
    },
    PATIENT_MS,
  );

  it(
    'prints a table to read without --json',
    async () => {
      const { status, out } = await run(PHOTO, painting, '--setup', await setupFile('table.json', GOOD));
      expect(status).toBe(0);
      expect(out).toMatch(/^plane +picture +share % +dark L\* +mid L\*/);
      expect(out).toMatch(/far ridge +reference/);
      expect(out).toContain('far ridge: darker than in the reference');
    },
    PATIENT_MS,
  );

  it(
    'squares and measures a photographed painting',
    async () => {
      const photo = {
        corners: [
          [0.1, 0.1],
          [0.9, 0.1],
          [0.9, 0.9],
          [0.1, 0.9],
        ],
        size: [16, 12],
      };
      const { status, out } = await run(
        PHOTO,
        painting,
        '--setup',
        await setupFile('photo.json', { ...GOOD, photo }),
        '--json',
      );
      expect(status).toBe(0);
      expect(JSON.parse(out).planes[1].painting.share).toBeCloseTo(0.7, 2);
    },
    PATIENT_MS,
  );

  it(
    'refuses what is no picture',
    async () => {
      const setup = await setupFile('pictures.json', GOOD);
      const whole = await readFile(PHOTO);
      expectRefusal(await run(PHOTO, await file('words.jpg', 'only words'), '--setup', setup), /words\.jpg/);
      expectRefusal(
        await run(PHOTO, await file('half.jpg', whole.subarray(0, whole.length / 2)), '--setup', setup),
        /half\.jpg/,
      );
      expectRefusal(
        await run(PHOTO, await file('empty.jpg', ''), '--setup', setup),
        /empty\.jpg has 0 bytes/,
      );
      expectRefusal(
        await run(PHOTO, join(folder, 'gone.jpg'), '--setup', setup),
        /gone\.jpg.*there is no such file/,
      );
    },
    PATIENT_MS,
  );

  it(
    'refuses a setup that is not right, by name',
    async () => {
      const wrong = async (name: string, setup: unknown) =>
        run(PHOTO, painting, '--setup', await setupFile(name, setup));
      expectRefusal(
        await wrong('key.json', { planes: [{ name: 'sky', plnes: 1, reference: sky }] }),
        /^The setup has an unknown key 'plnes' at planes\[0\]\. Remove it or correct its spelling\.$/m,
      );
      expectRefusal(
        await wrong('two.json', { planes: [{ name: 'far ridge', reference: sky.slice(0, 2) }] }),
        /^The outline of 'far ridge' on the reference has 2 points\./,
      );
      expectRefusal(
        await wrong('cross.json', {
          planes: [
            {
              name: 'far ridge',
              reference: [
                [0, 0],
                [1, 1],
                [1, 0],
                [0, 1],
              ],
            },
          ],
        }),
        /^The outline of 'far ridge' crosses itself between points 1 and 3\. Move one of them\.$/m,
      );
      expectRefusal(
        await wrong('corners.json', {
          ...GOOD,
          photo: {
            corners: [
              [0, 0],
              [1, 1],
              [1, 0],
              [0, 1],
            ],
          },
        }),
        /^The 4 corners cross over/,
      );
      expectRefusal(
        await run(PHOTO, painting, '--setup', await file('text.json', '{ "planes": ')),
        /text\.json is not JSON/,
      );
      expectRefusal(
        await run(PHOTO, painting, '--setup', join(folder, 'none.json')),
        /none\.json could not be read/,
      );
    },
    PATIENT_MS,
  );

  it(
    'tells its usage, with status 2',
    async () => {
      expectRefusal(await run(PHOTO), /Two pictures are needed.*1 given\. Usage: npm run -s measure/, 2);
      expectRefusal(await run(PHOTO, painting), /The setup is missing.*Usage:/, 2);
      expectRefusal(await run(PHOTO, painting, '--stup', 'x'), /--stup.*Usage:/, 2);
    },
    PATIENT_MS,
  );
});
