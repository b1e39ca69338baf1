/** One hash for everything that a result depends on, its language among it. In the flow: inputs -> [inputs-hash] -> store. Pure. */
import { createHash } from 'node:crypto';
import { OF_LANGUAGE } from '../store/measures.ts';

/** @param parts Whatever the result follows from, the formulas' version too. @returns SHA-256 with the language's sign. */
export function hashOfInputs(parts: readonly unknown[]): string {
  return `${OF_LANGUAGE}${createHash('sha256').update(JSON.stringify(parts)).digest('hex')}`;
}
