/**
 * The seal of a board's archive: which server wrote it. Only under its own seal does a server believe an archive about
 * who its people are; anybody can write a manifest, nobody else the seal.
 *
 * In the flow: board archive, taking in -> [seal] -> store. HMAC-SHA256 (RFC 2104). IO: the database, once for a secret.
 */
import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import type { ManifestBase } from '../core/outward/manifest.ts';
import { readFact, writeFact } from '../store/installation.ts';

/** @param files As the manifest lists them, in any order. */
export async function sealFor(files: ManifestBase['files']): Promise<string> {
  const list = files.map(({ path, sha256, sizeBytes }) => `${sha256} ${sizeBytes} ${path}`).sort();
  return createHmac('sha256', await secret())
    .update(list.join('\n'))
    .digest('hex');
}

/** Whether this server wrote that list of files. */
export async function isSealedHere(files: ManifestBase['files'], seal: string): Promise<boolean> {
  const [ours, theirs] = [Buffer.from(await sealFor(files)), Buffer.from(seal)];
  return ours.length === theirs.length && timingSafeEqual(ours, theirs);
}

async function secret(): Promise<string> {
  const found = await readFact('seal');
  if (found !== null) return found;
  await writeFact('seal', randomBytes(32).toString('hex'));
  return (await readFact('seal')) ?? '';
}
