import { spawn } from 'node:child_process';
import { mkdir, mkdtemp, rm, symlink } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { askRunning, type Lock, lockFolder } from '#server/store/lock.ts';

const LOCK_MODULE = new URL('../../server/store/lock.ts', import.meta.url).href;
const silent = async () => '';

let folder: string;
let held: Lock[] = [];
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'veilstep-lock-'));
  held = [];
});
afterEach(async () => {
  for (const lock of held) await lock.release();
  await rm(folder, { recursive: true, force: true });
});

/** A process that takes the folder and keeps it until it is killed. */
function holdElsewhere() {
  const code = `const { lockFolder } = await import(${JSON.stringify(LOCK_MODULE)});
    await lockFolder(${JSON.stringify(folder)}, 'data', async () => '');
    setInterval(() => {}, 1000); console.log('held');`;
  const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', code]);
  const ready = new Promise<void>((resolve, reject) => {
    child.stdout.once('data', () => resolve());
    child.once('exit', () => reject(new Error('The holder ended early.')));
  });
  return { child, ready };
}

describe('the lock of the data folder', () => {
  test('a second process is refused by number and name of the folder', async () => {
    const holder = holdElsewhere();
    await holder.ready;
    await expect(lockFolder(folder, 'data', silent)).rejects.toMatchObject({
      code: 'data-folder-busy',
      message: `Another Veilstep (process ${holder.child.pid}) already uses the folder data. Stop it or set VEILSTEP_DATA to another folder.`,
    });
    holder.child.kill('SIGKILL');
  });

  test('a folder reached by another name is the same folder', async () => {
    const alias = `${folder}-alias`;
    await symlink(folder, alias);
    held.push(await lockFolder(folder, 'data', silent));
    await expect(lockFolder(alias, 'alias', silent)).rejects.toMatchObject({ code: 'data-folder-busy' });
    await rm(alias);
  });

  test('what a killed process left behind does not hold the folder', async () => {
    const holder = holdElsewhere();
    await holder.ready;
    const gone = new Promise((resolve) => holder.child.once('exit', resolve));
    holder.child.kill('SIGKILL');
    await gone;
    held.push(await lockFolder(folder, 'data', silent));
    await expect(askRunning(folder, 'process')).resolves.toBe(String(process.pid));
  });

  test('of several that find the same leftovers at once, one gets the folder', async () => {
    const holder = holdElsewhere();
    await holder.ready;
    const gone = new Promise((resolve) => holder.child.once('exit', resolve));
    holder.child.kill('SIGKILL');
    await gone;
    const tries = await Promise.allSettled(
      Array.from({ length: 8 }, () => lockFolder(folder, 'data', silent)),
    );
    for (const tried of tries) if (tried.status === 'fulfilled') held.push(tried.value);
    expect(held).toHaveLength(1);
  });

  test('a released folder is free', async () => {
    const lock = await lockFolder(folder, 'data', silent);
    await lock.release();
    held.push(await lockFolder(folder, 'data', silent));
  });

  test('two folders do not stand in each other’s way', async () => {
    const other = join(folder, 'other');
    await mkdir(other);
    held.push(await lockFolder(folder, 'data', silent), await lockFolder(other, 'other', silent));
    expect(held).toHaveLength(2);
  });

  test('the holder answers another process in its own words, nobody answers for a free folder', async () => {
    await expect(askRunning(folder, 'host-link')).resolves.toBeNull();
    held.push(await lockFolder(folder, 'data', async (request) => `asked for ${request}`));
    await expect(askRunning(folder, 'host-link')).resolves.toBe('asked for host-link');
  });
});
