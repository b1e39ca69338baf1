/**
 * Secrets in links and cookies: 256 random bits each, stored only as their SHA-256.
 *
 * A random token is looked up by its hash and proves itself, so no signing secret is needed anywhere.
 * In the flow: access and cli -> [tokens] -> store. IO: the system's random source.
 */
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

const TOKEN_BYTES = 32;

/** A new token: 43 characters that are safe in an address. */
export function newToken(): string {
  return randomBytes(TOKEN_BYTES).toString('base64url');
}

/** What is stored of a token: its SHA-256 in hexadecimal. A fast hash is enough for 256 random bits. */
export function hashToken(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}

/** Whether two secrets are the same, taking the same time however much of them agrees. */
export function sameSecret(one: string, other: string): boolean {
  return timingSafeEqual(Buffer.from(hashToken(one)), Buffer.from(hashToken(other)));
}
