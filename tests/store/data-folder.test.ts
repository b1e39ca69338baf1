import { mkdtemp, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { dataFolderAnswers, prepareDataFolder } from '#server/store/data-folder.ts';
import { isDiskFull, storeProblem } from '#server/store/trouble.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'veilstep-folder-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const MORE_THAN_ANY_DISK_HAS = 1e12;

describe('the data folder', () => {
  test('is made, for its owner only, and left empty', async () => {
    const dataFolder = join(folder, 'some', 'data');
    await prepareDataFolder({ dataFolder, dataFolderName: 'data' });
    expect((await stat(dataFolder)).mode & 0o077).toBe(0);
    await expect(readdir(dataFolder)).resolves.toEqual([]);
    await expect(dataFolderAnswers(dataFolder)).resolves.toBe(true);
  });

  test('on a disk with too little room is refused with both numbers', async () => {
    const settings = { dataFolder: folder, dataFolderName: 'data' };
    await expect(prepareDataFolder(settings, MORE_THAN_ANY_DISK_HAS)).rejects.toMatchObject({
      code: 'disk-full',
      message: expect.stringMatching(
        /folder data has \d+ MB free and Veilstep needs at least 1000000000000 MB/,
      ),
    });
  });

  test('that went away does not answer', async () => {
    await expect(dataFolderAnswers(join(folder, 'gone'))).resolves.toBe(false);
  });
});

describe('a full disk', () => {
  // Codes: POSIX errno ENOSPC and EDQUOT; SQLSTATE 53100 disk_full (PostgreSQL documentation, appendix A).
  test.each(['ENOSPC', 'EDQUOT', '53100'])('is known by the code %s, also as a cause', (code) => {
    const thrown = Object.assign(new Error('x'), { code });
    expect(isDiskFull(new Error('outer', { cause: thrown }))).toBe(true);
    expect(storeProblem(thrown)).toMatchObject({ code: 'disk-full' });
  });

  test('is not seen where there is none', () => {
    const bug = new TypeError('x is undefined');
    expect(storeProblem(bug)).toBe(bug);
  });
});
