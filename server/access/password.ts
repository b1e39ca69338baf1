/**
 * Passwords: kept as scrypt (RFC 7914) with a salt of their own, compared in constant time.
 *
 * N = 2^15, r = 8, p = 3 is one of the settings of the OWASP Password Storage Cheat Sheet (2024): 32 MB and about
 * a fifth of a second for each try. In the flow: account -> [password]. IO: the system's random source.
 */
import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from 'node:crypto';

const COST = { N: 2 ** 15, r: 8, p: 3 };
const SALT_BYTES = 16;
const HASH_BYTES = 32;
const MOST_MEMORY_BYTES = 64 * 1024 * 1024;

/** @returns `scrypt$N$r$p$salt$hash`, the last two in base64url. */
export async function hashPassword(password: string): Promise<string> {
  const salt = randomBytes(SALT_BYTES);
  const hash = await derive(password, salt, COST);
  return ['scrypt', COST.N, COST.r, COST.p, salt.toString('base64url'), hash.toString('base64url')].join('$');
}

/**
 * @param stored As `hashPassword` gave it; null for somebody without a password, or for nobody. That takes as
 *   long and is false, so that the time does not tell who is here.
 */
export async function passwordFits(password: string, stored: string | null): Promise<boolean> {
  const [kind, N, r, p, salt, hash] = (stored ?? '').split('$');
  if (kind !== 'scrypt' || salt === undefined || hash === undefined) {
    await derive(password, randomBytes(SALT_BYTES), COST);
    return false;
  }
  const cost = { N: Number(N), r: Number(r), p: Number(p) };
  const expected = Buffer.from(hash, 'base64url');
  return timingSafeEqual(expected, await derive(password, Buffer.from(salt, 'base64url'), cost));
}

function derive(password: string, salt: Buffer, cost: ScryptOptions): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(password, salt, HASH_BYTES, { ...cost, maxmem: MOST_MEMORY_BYTES }, (failed, key) => {
      if (failed) reject(failed);
      else resolve(key);
    });
  });
}
