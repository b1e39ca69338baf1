/** The headless proposal of planes, spawned: the document of the contract on a good run, one plain sentence on a bad one. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod/mini';
import { Outline, PlaneKind } from '#server/core/contract/setup.ts';
import { proposalScenes } from '#tests/fixtures/proposals/scenes.ts';
import { encodeScene, renderScene, type SceneParameters } from '#tests/fixtures/scenes/render-scene.ts';
import { expectRefusal, runHeadless } from '#tests/helpers/headless.ts';

const PATIENT_MS = 120_000;

const Document = z.strictObject({
  width: z.number(),
  height: z.number(),
  planes: z.array(z.strictObject({ name: z.string(), kind: PlaneKind, outline: Outline })),
  note: z.optional(z.string()),
});

let folder = '';
let photo = '';
let grey = '';

const run = (...words: string[]) => runHeadless('planes', ...words);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'veilstep-planes-'));
  photo = join(folder, 'three-planes.png');
  const scene = renderScene(proposalScenes[0] as SceneParameters);
  const raw = { width: scene.widthPx, height: scene.heightPx, channels: 3 } as const;
  await sharp(encodeScene(scene), { raw }).png().toFile(photo);
  grey = join(folder, 'grey.png');
  await sharp({ create: { width: 300, height: 200, channels: 3, background: '#808080' } })
    .png()
    .toFile(grey);
});

afterAll(() => rm(folder, { recursive: true, force: true }));

describe('npm run planes', () => {
  it(
    'prints the document of the contract, with as many planes as asked, far to near',
    async () => {
      const { status, out, err } = await run(photo, '--count', '3', '--json');
      expect(err).toBe('');
      expect(status).toBe(0);
      const document = Document.parse(JSON.parse(out));
      const { widthPx, heightPx } = proposalScenes[0] as SceneParameters;
      expect([document.width, document.height]).toEqual([widthPx, heightPx]);
      expect(document.planes).toHaveLength(3);
      expect(document.planes[0]?.kind).toBe('sky');
      expect(document.note).toBeUndefined();
    },
    PATIENT_MS,
  );

  it(
    'decides the number itself and prints a table with the reason',
    async () => {
      const { status, out, err } = await run(photo);
      expect(err).toBe('');
      expect(status).toBe(0);
      expect(out).toMatch(/^plane +kind +share %/);
      expect(out).toMatch(/^sky +sky /m);
      expect(out).toMatch(/^Three planes: .+\.$/m);
    },
    PATIENT_MS,
  );

  it(
    'says why where fewer planes than asked can be found',
    async () => {
      const { status, out } = await run(grey, '--count', '4', '--json');
      expect(status).toBe(0);
      const document = Document.parse(JSON.parse(out));
      expect(document.planes).toHaveLength(1);
      expect(document.note).toMatch(/^Four planes were asked for and one found: .+even tone.+\.$/);
    },
    PATIENT_MS,
  );

  it(
    'takes a greyscale picture with transparency',
    async () => {
      const greyscale = join(folder, 'greyscale.png');
      await sharp(photo).greyscale().ensureAlpha(0.9).toColourspace('b-w').png().toFile(greyscale);
      expect((await sharp(greyscale).metadata()).channels).toBe(2);
      const { status, out, err } = await run(greyscale, '--count', '2', '--json');
      expect(err).toBe('');
      expect(status).toBe(0);
      expect(Document.parse(JSON.parse(out)).planes).toHaveLength(2);
    },
    PATIENT_MS,
  );

  it(
    'refuses a wrong use with status 2 and a wrong picture with status 1, in one line',
    async () => {
      const words = join(folder, 'words.jpg');
      await writeFile(words, 'only words');
      expectRefusal(await run(), /^One picture is needed; 0 given\. Usage: npm run -s planes/, 2);
      expectRefusal(await run(photo, '--count', '9'), /from 2 to 7, not '9'\. Usage:/, 2);
      expectRefusal(await run(photo, '--count', '1'), /from 2 to 7, not '1'\. Usage:/, 2);
      expectRefusal(await run(photo, '--count', '8'), /from 2 to 7, not '8'\. Usage:/, 2);
      expectRefusal(await run(photo, '--count', 'abc'), /from 2 to 7, not 'abc'\. Usage:/, 2);
      expectRefusal(await run(photo, '--count', '2.5'), /from 2 to 7, not '2\.5'\. Usage:/, 2);
      expectRefusal(await run(photo, '--cuont', '3'), /--cuont.*Usage:/, 2);
      expectRefusal(await run(join(folder, 'gone.jpg')), /gone\.jpg.*there is no such file/);
      expectRefusal(await run(words), /words\.jpg/);
    },
    PATIENT_MS,
  );
});
