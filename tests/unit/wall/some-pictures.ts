/** Free-licensed landscapes that lie in the fixtures already. Credits stand in their folder. */
import { fileURLToPath } from 'node:url';

const FOLDER = new URL('../../fixtures/traced/', import.meta.url);

export const TRACED_PHOTOS = [
  'boats-under-hill',
  'harvest-plain-1888',
  'shrine-in-snow',
  'low-sun-over-hills',
];

export function tracedPath(name: string): string {
  return fileURLToPath(new URL(`${name}.jpg`, FOLDER));
}
