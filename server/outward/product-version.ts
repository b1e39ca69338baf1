/** Version of this Veilstep, as package.json has it; archives name it. IO: reads package.json once. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Such as `0.1.0`; the server runs in its own folder. */
export const PRODUCT_VERSION: string = readVersion();

function readVersion(): string {
  try {
    const found: unknown = JSON.parse(readFileSync(join(process.cwd(), 'package.json'), 'utf8'));
    const version = (found as { version?: unknown } | null)?.version;
    return typeof version === 'string' ? version : 'unknown';
  } catch {
    return 'unknown';
  }
}
