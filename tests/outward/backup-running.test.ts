/**
 * Backup and restore as the operator runs them, of a server that people are writing to: nothing that was acknowledged
 * before the command began is lost.
 */
import { spawn } from 'node:child_process';
import { readdir, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import * as Y from 'yjs';
import { putMark, readMarks } from '#server/core/live/marks.ts';
import { type AServer, anEmptyFolder, startAServer } from '#tests/helpers/a-server.ts';
import { eventually } from '#tests/helpers/eventually.ts';
import { joinRoom } from '#tests/helpers/joined-room.ts';
import { burdenedJpeg } from '#tests/imaging/pictures.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const folders: string[] = [];
const servers: AServer[] = [];
afterAll(async () => {
  for (const server of servers) await server.stop().catch(() => null);
  for (const folder of folders) await rm(folder, { recursive: true, force: true });
});

function run(command: 'backup' | 'restore', file: string, dataFolder: string) {
  return new Promise<{ status: number | null; said: string }>((done) => {
    const env = { ...process.env, VEILSTEP_DATA: dataFolder, DATABASE_URL: '', INIT_CWD: ROOT };
    const child = spawn(process.execPath, ['--import', 'tsx', `server/cli/${command}.ts`, file], {
      cwd: ROOT,
      env,
    });
    let said = '';
    child.stdout.on('data', (chunk) => (said += chunk));
    child.stderr.on('data', (chunk) => (said += chunk));
    child.on('close', (status) => done({ status, said }));
  });
}

test('a backup of a server under load, restored, holds every mark that was shown before it began', async () => {
  const folder = await anEmptyFolder();
  folders.push(folder);
  const server = await startAServer();
  servers.push(server);
  const host = await server.enter('Hedda');
  const { id: boardId } = await server.json<{ id: string }>(host, '/api/boards', 'POST', { title: 'Weir' });
  const form = new FormData();
  form.set('kind', 'painting');
  form.set('file', new File([new Uint8Array(await burdenedJpeg())], 'study.jpg', { type: 'image/jpeg' }));
  const posted = await server.call(host, `/api/boards/${boardId}/pictures`, { method: 'POST', body: form });
  expect(posted.status).toBe(201);
  const { id: pictureId } = (await posted.json()) as { id: string };
  const picture = async (from: AServer, who: { cookie: string }) =>
    Buffer.from(
      await (
        await from.call(who as typeof host, `/api/boards/${boardId}/pictures/${pictureId}/640`)
      ).arrayBuffer(),
    );
  const bytes = await picture(server, host);

  // Six writers write on without a pause; one reader is shown what the server stored.
  const reader = await joinRoom(server.url, host, boardId, 'marks');
  let writing = true;
  const writers = Array.from({ length: 6 }, async (_, writer) => {
    const { doc, leave } = await joinRoom(server.url, host, boardId, 'marks');
    for (let at = 0; writing; at++) {
      const mark = {
        id: `w${writer}-${at}`,
        author: host.id,
        pictureId,
        kind: 'pin' as const,
        points: [[0.5, 0.5] as [number, number]],
      };
      putMark(doc, { ...mark, text: `said ${writer} ${at}`, planeId: null, parent: null, at });
      await new Promise((resolve) => setTimeout(resolve, 4));
    }
    leave();
  });
  const shown = () => readMarks(reader.doc).map(({ id, text }) => `${id} ${text}`);
  await eventually(() => shown().length > 60, 30_000);
  const before = shown();
  const file = join(folder, 'all.veilstep');
  const backed = await run('backup', file, server.dataFolder);
  const afterwards = shown().length;
  writing = false;
  await Promise.all(writers);
  reader.leave();
  expect(backed).toMatchObject({ status: 0, said: expect.stringMatching(/rows and \d+ files/) });
  expect(afterwards).toBeGreaterThan(before.length);
  expect((await stat(file)).mode & 0o077).toBe(0);
  expect(await readdir(join(server.dataFolder, 'incoming')).catch(() => [])).toEqual([]);

  expect(await run('backup', file, server.dataFolder)).toMatchObject({
    status: 2,
    said: expect.stringContaining('is there already'),
  });
  expect(await run('restore', file, server.dataFolder)).toMatchObject({
    status: 1,
    said: expect.stringMatching(/already uses|not empty/),
  });

  await server.stop();
  const dataFolder = join(folder, 'again');
  expect(await run('restore', file, dataFolder)).toMatchObject({ status: 0 });
  const again = await startAServer({ dataFolder });
  servers.push(again);
  // Whoever was in before still is.
  const list = await again.json<{ id: string; title: string }[]>(host, '/api/boards');
  expect(list).toEqual([expect.objectContaining({ id: boardId, title: 'Weir' })]);
  expect(await picture(again, host)).toEqual(bytes);
  const restored = await joinRoom(again.url, host, boardId, 'marks');
  const found = new Set(readMarks(restored.doc).map(({ id, text }) => `${id} ${text}`));
  expect(before.filter((mark) => !found.has(mark))).toEqual([]);
  expect(Y.encodeStateVector(restored.doc).length).toBeGreaterThan(1);
  restored.leave();

  await again.stop({ keepData: true });
  const stopped = join(folder, 'stopped.veilstep');
  expect(await run('backup', stopped, dataFolder)).toMatchObject({ status: 0 });
  expect(await run('backup', join(folder, 'none.veilstep'), join(folder, 'nowhere'))).toMatchObject({
    status: 1,
    said: expect.stringContaining('nothing in the folder'),
  });
  expect((await readdir(folder)).sort()).toEqual(['again', 'all.veilstep', 'stopped.veilstep']);
}, 240_000);
