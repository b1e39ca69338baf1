/** The headless plan, spawned: the document of the contract on a good run, one plain sentence on a bad one. */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod/mini';
import { FractionPoint, PlannedPlane } from '#server/core/contract/setup.ts';
import { framedScene } from '#tests/fixtures/plan/framed-scenes.ts';
import { expectRefusal, runHeadless } from '#tests/helpers/headless.ts';

const PATIENT_MS = 240_000;

const Document = z.strictObject({
  crops: z.array(
    z.strictObject({
      format: z.string(),
      box: z.tuple([z.number(), z.number(), z.number(), z.number()]),
      sky: z.number(),
      foreground: z.number(),
      reasons: z.array(z.string()),
    }),
  ),
  balance: z.strictObject({
    lever: z.number(),
    heavier: z.enum(['left', 'right', 'even']),
    heaviness: z.strictObject({ left: z.number(), right: z.number() }),
  }),
  ridges: z.array(
    z.strictObject({
      name: z.string(),
      span: z.number(),
      slopeDeg: z.number(),
      peaks: z.array(FractionPoint),
      points: z.array(FractionPoint),
    }),
  ),
  readings: z.array(
    z.strictObject({
      id: z.string(),
      kind: z.string(),
      planes: z.array(z.string()),
      severity: z.number(),
      sentence: z.string(),
      why: z.string(),
      source: z.string(),
      muted: z.nullable(z.string()),
      at: z.array(FractionPoint),
    }),
  ),
  ladder: z.array(PlannedPlane),
  notes: z.array(z.string()),
});

let folder = '';
let photo = '';
const scene = framedScene(7300);
const SETUP = {
  planes: scene.planes.map(({ name, kind, outline }) => ({ name, kind, reference: outline })),
  focus: [0.5, 0.5],
};

const run = (...words: string[]) => runHeadless('plan', ...words);
async function file(name: string, content: string): Promise<string> {
  await writeFile(join(folder, name), content);
  return join(folder, name);
}
async function grey(name: string, width: number, height: number): Promise<string> {
  const path = join(folder, name);
  await sharp({ create: { width, height, channels: 3, background: '#808080' } })
    .png()
    .toFile(path);
  return path;
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'veilstep-plan-'));
  photo = join(folder, 'meadow.png');
  const raw = { width: scene.widthPx, height: scene.heightPx, channels: 3 } as const;
  await sharp(scene.samples, { raw }).png().toFile(photo);
});

afterAll(() => rm(folder, { recursive: true, force: true }));

describe('npm run plan', () => {
  it(
    'prints the document of the contract for the planes of a setup',
    async () => {
      const { status, out, err } = await run(
        photo,
        '--setup',
        await file('good.json', JSON.stringify(SETUP)),
        '--json',
      );
      expect({ status, err }).toEqual({ status: 0, err: '' });
      const document = Document.parse(JSON.parse(out));
      expect(document.ladder.map(({ name }) => name)).toEqual(['sky', 'meadow', 'near field']);
      expect(document.ridges.map(({ name }) => name)).toEqual(['meadow', 'near field']);
      expect(document.readings.map(({ kind }) => kind)).toContain('focus-centred');
      expect(new Set(document.crops.map(({ format }) => format))).toContain('golden upright');
      // The ladder goes into a setup as it is printed.
      const again = await file('again.json', JSON.stringify({ ...SETUP, plan: document.ladder }));
      expect((await run(photo, '--setup', again, '--json')).status).toBe(0);
    },
    PATIENT_MS,
  );

  it(
    'plans by the wishes of the setup, and by words that go before them',
    async () => {
      const wishes = {
        count: 3,
        strength: 0,
        air: 'photograph',
        handles: { meadow: { dark: 12, chroma: 0.5 } },
      };
      const setup = await file('wishes.json', JSON.stringify({ ...SETUP, wishes }));
      const plain = await file('plain.json', JSON.stringify({ ...SETUP, wishes: { strength: 0 } }));
      const ladderOf = async (...words: string[]) =>
        Document.parse(JSON.parse((await run(photo, '--json', ...words)).out)).ladder;
      const [own, usual] = [await ladderOf('--setup', setup), await ladderOf('--setup', plain)];
      expect(own[1]?.dark).toBeCloseTo(12, 0);
      expect(own[1]?.chroma).toBeCloseTo((usual[1]?.chroma ?? 0) / 2, 1);
      expect(own[2]?.mid).toBeCloseTo(usual[2]?.mid ?? 0, 6);
      const more = await ladderOf('--setup', setup, '--strength', '2', '--air', '80,10,-6', '--count', '2');
      expect(more[1]?.warmCool).not.toBeCloseTo(own[1]?.warmCool ?? 0, 0);
      expect(more[1]?.mid).toBeCloseTo(more[2]?.mid ?? 0, 6);
      // Measuring takes the same setup, and leaves the wishes alone.
      const taken = await file('taken.json', JSON.stringify({ ...SETUP, wishes, plan: own }));
      const measured = await runHeadless('measure', photo, photo, '--setup', taken, '--json');
      expect(JSON.parse(measured.out)).toMatchObject({ target: 'plan' });
      expect(JSON.parse(measured.out).planes[1].planned.dark).toBeCloseTo(12, 0);
    },
    PATIENT_MS,
  );

  it(
    'refuses wishes that say nothing, unknown ones by name',
    async () => {
      expectRefusal(
        await run(photo, '--count', '2.5'),
        /--count is a whole number from 1 to 12, not '2\.5'/,
        2,
      );
      expectRefusal(await run(photo, '--strength', 'much'), /--strength is 0 to 4, not 'much'/, 2);
      expectRefusal(
        await run(photo, '--air', 'pea soup'),
        /--air is one of photograph, blue, .*not 'pea soup'/,
        2,
      );
      expectRefusal(await run(photo, '--air', '80,-2'), /--air is one of/, 2);
      const odd = await file('odd.json', JSON.stringify({ ...SETUP, wishes: { mood: 'calm' } }));
      expectRefusal(await run(photo, '--setup', odd), /unknown key 'mood' at wishes/);
      const handle = { ...SETUP, wishes: { handles: { meadow: { hue: 3 } } } };
      expectRefusal(
        await run(photo, '--setup', await file('handle.json', JSON.stringify(handle))),
        /unknown key 'hue' at wishes\.handles\.meadow/,
      );
    },
    PATIENT_MS,
  );

  it(
    'proposes planes without a setup, and prints tables to read',
    async () => {
      const { status, out } = await run(photo);
      expect(status).toBe(0);
      expect(out).toMatch(/^frame +format +left +top +right +bottom +sky % +nearest %/);
      expect(out).toMatch(/\nbalance: lever -?0\.\d\d, /);
      expect(out).toMatch(/\nplane +dark L\* +mid L\*/);
    },
    PATIENT_MS,
  );

  it(
    'stays usable where there are no planes or few pixels, and says so',
    async () => {
      const flat = Document.parse(JSON.parse((await run(await grey('grey.png', 640, 480), '--json')).out));
      expect(flat).toMatchObject({ crops: [], readings: [], balance: { lever: 0, heavier: 'even' } });
      expect(flat.notes.join(' ')).toMatch(/Nothing in the picture stands out/);
      const tiny = await run(await grey('tiny.png', 120, 90), '--json');
      expect(tiny.status).toBe(0);
      expect(Document.parse(JSON.parse(tiny.out)).notes.join(' ')).toMatch(/120 by 90 pixels.*300/);
    },
    PATIENT_MS,
  );

  it(
    'refuses what it cannot use in one line',
    async () => {
      expectRefusal(await run(), /One picture is needed; 0 given\. Usage: npm run -s plan/, 2);
      expectRefusal(await run(photo, photo), /2 given/, 2);
      expectRefusal(await run(photo, '--frames', '3'), /--frames/, 2);
      expectRefusal(await run(join(folder, 'gone.png')), /gone\.png.*there is no such file/);
      expectRefusal(await run(await file('words.jpg', 'only words')), /words\.jpg/);
      expectRefusal(await run(photo, '--setup', await file('no.json', '{')), /no\.json is not JSON/);
      expectRefusal(await run(photo, '--setup', join(folder, 'gone.json')), /gone\.json could not be read/);
      const unknown = await file('key.json', JSON.stringify({ ...SETUP, crops: [] }));
      expectRefusal(await run(photo, '--setup', unknown), /unknown key 'crops' at its top level/);
      const crossed = {
        planes: [
          {
            name: 'sky',
            reference: [
              [0, 0],
              [1, 1],
              [1, 0],
              [0, 1],
            ],
          },
        ],
      };
      expectRefusal(
        await run(photo, '--setup', await file('x.json', JSON.stringify(crossed))),
        /'sky' crosses itself/,
      );
    },
    PATIENT_MS,
  );
});
