/** An archive that lies is refused in one sentence, with nothing of it kept. */
import { randomUUID } from 'node:crypto';
import { stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { isProblem } from '#server/core/problem.ts';
import { takeInBoard } from '#server/outward/take-in-board.ts';
import { readBoardView } from '#server/store/board-view.ts';
import { everythingCounted, letGo, takeAway, unzipped, zipped } from './an-archived-board.ts';
import { archiveStage, statesOn } from './archive-stage.ts';
import { type RawEntry, rawZip } from './raw-zip.ts';

const stage = archiveStage();

describe('an archive that is not what it should be', () => {
  let files: Map<string, Buffer>;
  let before: Record<string, number>;
  beforeEach(async () => {
    await letGo(stage.made.board.boardId, stage.made.otherId);
    files = await unzipped(await takeAway(stage.made, stage.folder));
    before = await everythingCounted();
  });

  async function expectRefused(path: string, sentence = /./): Promise<void> {
    const refusal = await takeInBoard(path, stage.made.board.painterId).then(
      () => null,
      (thrown: unknown) => thrown,
    );
    expect(refusal).toMatchObject({ code: 'archive-refused', message: expect.stringMatching(sentence) });
    expect(String(refusal)).not.toMatch(/\n/);
    expect(await everythingCounted()).toEqual(before);
  }

  const written = async (bytes: Uint8Array) => {
    const path = join(stage.folder, `${randomUUID()}.zip`);
    await writeFile(path, bytes);
    return path;
  };
  const entries = (): RawEntry[] => [...files].map(([name, bytes]) => ({ name, bytes }));
  const edited = (path: string, edit: (found: Record<string, never>) => void) => {
    const found = JSON.parse(String(files.get(path)));
    edit(found);
    files.set(path, Buffer.from(JSON.stringify(found)));
  };

  test('truncated, empty, or no archive at all', async () => {
    const whole = rawZip(entries());
    for (const share of [0, 0.1, 0.5, 0.9, 0.999])
      await expectRefused(await written(whole.subarray(0, whole.length * share)));
    await expectRefused(await written(Buffer.from('<html>')));
  });

  test('with names that climb out, links, encrypted, doubled or unnamed files', async () => {
    for (const name of ['../../evil', '/etc/evil', 'a\\..\\evil', 'C:/evil']) {
      await expectRefused(await written(rawZip([...entries(), { name, bytes: Buffer.from('x') }])));
    }
    await expectRefused(
      await written(rawZip([...entries(), { name: 'more.json', bytes: Buffer.from('x') }])),
      /does not name/,
    );
    const link = entries().map((entry) =>
      entry.name === 'board.json' ? { ...entry, mode: 0o120777 } : entry,
    );
    await expectRefused(await written(rawZip(link)), /no file/);
    const locked = entries().map((entry) => (entry.name === 'board.json' ? { ...entry, flags: 1 } : entry));
    await expectRefused(await written(rawZip(locked)));
    await expectRefused(await written(rawZip([...entries(), ...entries().slice(0, 2)])), /twice/);
  });

  test('made to burst: zeros by the hundred megabytes, false sizes, files that share their bytes', async () => {
    const zeros = Buffer.alloc(300_000_000);
    const bomb = entries().map((entry) =>
      entry.name === 'board.json' ? { ...entry, bytes: zeros, deflate: true } : entry,
    );
    const path = await written(rawZip(bomb));
    expect((await stat(path)).size).toBeLessThan(5_000_000);
    await expectRefused(path, /burst/);
    const small = entries().map((entry) =>
      entry.name === 'board.json' ? { ...entry, bytes: zeros, deflate: true, saidSize: 900 } : entry,
    );
    await expectRefused(await written(rawZip(small)));
    const huge = entries().map((entry) => ({ ...entry, saidSize: 4_000_000_000 }));
    await expectRefused(await written(rawZip(huge)), /more than|large|damaged/);
    const picture = entries().find(({ name }) => name.endsWith('plate.png'));
    const shared = Array.from({ length: 300 }, (_, at) => ({
      name: `copy-${at}`,
      bytes: picture?.bytes ?? Buffer.alloc(1),
    }));
    const honest = rawZip([...entries(), ...shared]);
    await expectRefused(await written(honest), /does not name/);
  });

  test('with another content than its list says, of another kind, or of a later version', async () => {
    const changed = new Map(files).set('board.json', Buffer.from('{}'));
    await expectRefused(
      await zipped(join(stage.folder, 'lied.zip'), changed, true),
      /something else than its list/,
    );
    const gone = new Map(files);
    gone.delete('measures.json');
    await expectRefused(await zipped(join(stage.folder, 'gone.zip'), gone, true), /lacks a part/);
    edited('manifest.json', (manifest) => Object.assign(manifest, { formatVersion: 2 }));
    await expectRefused(await zipped(join(stage.folder, 'later.zip'), files), /later version/);
    edited('manifest.json', (manifest) =>
      Object.assign(manifest, { formatVersion: 1, format: 'veilstep backup' }),
    );
    await expectRefused(await zipped(join(stage.folder, 'kind.zip'), files), /another kind/);
    files.set('manifest.json', Buffer.from('[{"'));
    await expectRefused(await written(rawZip(entries())), /cannot be read/);
  });

  test('with pictures that are none, that carry data of a camera, or lack a copy', async () => {
    const original = [...files.keys()].find((name) => name.endsWith('original.jpg')) ?? '';
    const board = JSON.parse(String(files.get('board.json')));
    const swap = async (name: string, bytes: Buffer, sentence: RegExp) => {
      const { createHash } = await import('node:crypto');
      const text = String(files.get('board.json'));
      const old = createHash('sha256')
        .update(files.get(name) ?? '')
        .digest('hex');
      const now = createHash('sha256').update(bytes).digest('hex');
      const lying = new Map(files).set(name, bytes).set('board.json', Buffer.from(text.replaceAll(old, now)));
      await expectRefused(await zipped(join(stage.folder, 'swap.zip'), lying), sentence);
    };
    await swap(
      original,
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'),
      /not what the archive says/,
    );
    const { burdenedJpeg } = await import('#tests/imaging/pictures.ts');
    await swap(original, await burdenedJpeg(), /not what the archive says/);
    await swap(
      original.replace('original', '640'),
      Buffer.from('<script>alert(1)</script>'),
      /not what the archive says/,
    );
    board.pictures[0].renditions = board.pictures[0].renditions.filter(
      ({ name }: { name: string }) => name !== 'plate',
    );
    files.set('board.json', Buffer.from(JSON.stringify(board)));
    await expectRefused(
      await zipped(join(stage.folder, 'lacks.zip'), files),
      /lacks a copy|belongs to nothing/,
    );
  });

  test('with rooms that hold what no room may hold', async () => {
    const marks = (
      edit: (roots: Record<string, Record<string, { map: Record<string, unknown> }>>) => void,
    ) => {
      const found = JSON.parse(String(files.get('rooms/marks.json')));
      edit(found.roots);
      return zipped(
        join(stage.folder, `${randomUUID()}.zip`),
        new Map(files).set('rooms/marks.json', Buffer.from(JSON.stringify(found))),
      );
    };
    const first = (roots: Record<string, Record<string, { map: Record<string, unknown> }>>) =>
      roots.marks?.['m-1']?.map ?? {};
    await expectRefused(
      await marks((roots) =>
        Object.assign(first(roots), {
          points: {
            value: [
              [9, 9],
              [1, 1],
            ],
          },
        }),
      ),
      /no board can hold/,
    );
    await expectRefused(
      await marks((roots) => Object.assign(first(roots), { text: { text: 'x'.repeat(5000) } })),
      /no board can hold/,
    );
    await expectRefused(
      await marks((roots) => Object.assign(first(roots), { author: { value: randomUUID() } })),
      /names somebody/,
    );
    await expectRefused(await marks((roots) => Object.assign(roots, { result: {} })), /no board can hold/);
    await expectRefused(
      await marks((roots) => Object.assign(roots, { nods: { [`m-1/${randomUUID()}`]: { value: true } } })),
      /names somebody/,
    );
  });

  test('mangled anywhere in its JSON, is refused or is a board like any other', async () => {
    const path = join(stage.folder, 'mangled.zip');
    const names = [...files.keys()].filter((name) => name.endsWith('.json') && name !== 'measures.json');
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...names),
        fc.nat(),
        fc.jsonValue({ maxDepth: 2 }),
        async (name, where, value) => {
          const found: unknown = JSON.parse(String(files.get(name)));
          const places = placesIn(found);
          const [holder, key] = places[where % places.length] as [Record<string, unknown>, string];
          holder[key] = value;
          const mangled = new Map(files).set(name, Buffer.from(JSON.stringify(found)));
          await zipped(path, mangled, name === 'manifest.json');
          const counted = await everythingCounted();
          const outcome = await takeInBoard(path, stage.made.board.painterId).catch(
            (thrown: unknown) => thrown,
          );
          if (outcome instanceof Error) {
            expect(isProblem(outcome) && outcome.code, `${outcome.stack}`).toBe('archive-refused');
            expect(await everythingCounted()).toEqual(counted);
            return;
          }
          const { id } = outcome as { id: string };
          expect(await readBoardView(id, { id: '', name: '' }, 'host')).not.toBeNull();
          await statesOn(id);
        },
      ),
      { numRuns: 60 },
    );
  }, 240_000);
});

function placesIn(found: unknown): [unknown, string][] {
  if (found === null || typeof found !== 'object') return [];
  return Object.entries(found).flatMap(([key, value]) => [
    [found, key] as [unknown, string],
    ...placesIn(value),
  ]);
}
