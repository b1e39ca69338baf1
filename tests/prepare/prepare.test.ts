/** Preparing in small trees of their own: what runs again and what does not. */
import { spawnSync } from 'node:child_process';
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';

const PREPARE = fileURLToPath(new URL('../../server/prepare', import.meta.url));

let tree: string;
beforeEach(async () => {
  tree = await mkdtemp(join(tmpdir(), 'veilstep-prepare-'));
  await cp(PREPARE, join(tree, 'server/prepare'), { recursive: true });
  await put(
    'package-lock.json',
    JSON.stringify({ packages: { '': {}, 'node_modules/prisma': { version: '1.0.0' } } }),
  );
  await put('prisma/schema.prisma', 'model A {}');
  await put('app/page.tsx', 'one');
  // Stands in for npm: notes what it was asked and puts the "packages" there.
  await put(
    'npm-cli.js',
    `const fs = require('fs');
     fs.appendFileSync('calls.txt', 'npm ' + process.argv.slice(2).join(' ') + '\\n');
     if (fs.existsSync('npm-fails')) process.exit(7);
     const put = (path, text) => { fs.mkdirSync(require('path').dirname(path), { recursive: true }); fs.writeFileSync(path, text); };
     put('node_modules/.package-lock.json', fs.readFileSync('package-lock.json'));
     put('node_modules/prisma/build/index.js', "const fs = require('fs'); fs.appendFileSync('calls.txt', 'prisma ' + process.env.PRISMA_SCHEMA_ENGINE_BINARY + '\\\\n'); fs.mkdirSync('prisma/generated', { recursive: true }); fs.writeFileSync('prisma/generated/client.ts', ''); console.log('on standard output');");
     put('node_modules/next/dist/bin/next', "const fs = require('fs'); const to = process.env.VEILSTEP_BUILD; fs.appendFileSync('calls.txt', 'build ' + to + (process.env.VEILSTEP_LANGUAGE === 'de' ? ' in de' : '') + '\\\\n'); if (fs.existsSync('build-fails')) process.exit(1); fs.mkdirSync(to, { recursive: true }); fs.writeFileSync(to + '/BUILD_ID', '');");`,
  );
});
afterEach(() => rm(tree, { recursive: true, force: true }));

async function put(path: string, text: string): Promise<void> {
  await mkdir(join(tree, path, '..'), { recursive: true });
  await writeFile(join(tree, path), text);
}

/** Runs prepare and tells what it called. */
async function prepare(mode: string) {
  await rm(join(tree, 'calls.txt'), { force: true });
  const { status, stdout, stderr } = spawnSync(process.execPath, ['server/prepare/prepare.mjs', mode], {
    cwd: tree,
    encoding: 'utf8',
    env: { ...process.env, npm_execpath: join(tree, 'npm-cli.js'), NODE_ENV: 'production' },
  });
  const calls = (await readFile(join(tree, 'calls.txt'), 'utf8').catch(() => '')).split('\n').filter(Boolean);
  return { status, stdout, stderr, calls };
}

describe('preparing', () => {
  test('a fresh clone is installed with its development packages, generated and built, in this order', async () => {
    const { status, calls } = await prepare('start');
    expect(status).toBe(0);
    expect(calls).toHaveLength(3);
    expect(calls[0]).toMatch(/^npm ci --include=dev/);
    expect(calls[1]).toBe(`prisma ${process.execPath}`);
    expect(calls[2]).toBe('build .next');
  });

  test('nothing runs the second time', async () => {
    await prepare('start');
    await expect(prepare('start')).resolves.toMatchObject({ status: 0, calls: [] });
  });

  test('a changed page is built again and nothing else runs', async () => {
    await prepare('start');
    await put('app/page.tsx', 'two');
    await expect(prepare('start')).resolves.toMatchObject({ calls: ['build .next'] });
  });

  test('a changed schema is generated again', async () => {
    await prepare('cli');
    await put('prisma/schema.prisma', 'model B {}');
    await expect(prepare('cli')).resolves.toMatchObject({ calls: [`prisma ${process.execPath}`] });
  });

  test('packages that a developer installed by hand are not installed again', async () => {
    await prepare('cli');
    const lock = JSON.stringify({ packages: { '': {}, 'node_modules/prisma': { version: '1.0.1' } } });
    await put('package-lock.json', lock);
    await put('node_modules/.package-lock.json', lock);
    const { calls } = await prepare('cli');
    expect(calls.filter((call) => call.startsWith('npm'))).toEqual([]);
  });

  test('a lock file that asks for another version is installed', async () => {
    await prepare('cli');
    await put(
      'package-lock.json',
      JSON.stringify({ packages: { 'node_modules/prisma': { version: '2.0.0' } } }),
    );
    const { calls } = await prepare('cli');
    expect(calls[0]).toMatch(/^npm ci/);
  });

  test('what failed is not stamped and runs again', async () => {
    await put('build-fails', '');
    const failed = await prepare('start');
    expect(failed.status).toBe(1);
    expect(failed.stderr).toContain('Preparing failed:');
    await rm(join(tree, 'build-fails'));
    await expect(prepare('start')).resolves.toMatchObject({ status: 0, calls: ['build .next'] });
  });

  test('a failed installation is one sentence and exit 1', async () => {
    await put('npm-fails', '');
    const { status, stderr } = await prepare('start');
    expect(status).toBe(1);
    expect(stderr.trim().split('\n').at(-1)).toMatch(/^Preparing failed: .*ended with 7/);
  });

  test('standard output stays free for the command that follows', async () => {
    await expect(prepare('cli')).resolves.toMatchObject({ status: 0, stdout: '' });
  });

  test('pages for tests are built into a folder of their own', async () => {
    await put('chromium', '');
    process.env.VEILSTEP_CHROMIUM = join(tree, 'chromium');
    const { calls } = await prepare('test');
    delete process.env.VEILSTEP_CHROMIUM;
    expect(calls.slice(-2)).toEqual(['build .next-test', 'build .next-test-de in de']);
  });

  test('a German house has its pages built in German, beside the English ones', async () => {
    await prepare('start');
    process.env.VEILSTEP_LANGUAGE = 'de';
    const { calls } = await prepare('start');
    delete process.env.VEILSTEP_LANGUAGE;
    expect(calls).toEqual(['build .next-de in de']);
    await expect(prepare('start')).resolves.toMatchObject({ status: 0, calls: [] });
  });
});
