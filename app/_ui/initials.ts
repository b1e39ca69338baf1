/** The two letters of a monogram. Pure. */
import { LANGUAGE } from '#server/core/say/language.ts';

/**
 * First letters of the first and last word of a name, or the first two of a single word; upper case.
 *
 * @param name A person's name, not empty; split by spaces, letters counted as people see them.
 */
export function initialsOf(name: string): string {
  const parts = name.trim().split(/\s+/).filter(Boolean);
  const [first = '', ...others] = parts;
  const last = others.at(-1);
  const letters = last ? [[...first][0], [...last][0]] : [...first].slice(0, 2);
  return letters.join('').toLocaleUpperCase(LANGUAGE);
}
