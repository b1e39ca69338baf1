/**
 * A setup as a person wrote it, checked at the border, with one sentence for the first thing that is wrong.
 *
 * In the flow: setup file -> [parse-setup] -> measure-pair. Pure.
 */
import { z } from 'zod';
import { Problem } from '../problem.ts';
import { Setup } from './setup.ts';

// The shapes are zod's small kind, which has no words of its own for what is wrong; these are its English ones.
z.config(z.locales.en());

/** `planes[0].reference[2]`; the whole document when empty. */
function placeOf(path: readonly PropertyKey[]): string {
  return path.reduce<string>((place, part) => {
    if (typeof part === 'number') return `${place}[${part}]`;
    return place === '' ? String(part) : `${place}.${String(part)}`;
  }, '');
}

function unknownKeys(keys: readonly string[], place: string): string {
  const where = place === '' ? 'at its top level' : `at ${place}`;
  if (keys.length === 1) {
    return `The setup has an unknown key '${keys[0]}' ${where}. Remove it or correct its spelling.`;
  }
  const named = keys.map((key) => `'${key}'`).join(', ');
  return `The setup has ${keys.length} unknown keys ${where}: ${named}. Remove them or correct their spelling.`;
}

/** The part of an input that a path leads to. */
function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, part) => (typeof value === 'object' && value !== null ? Reflect.get(value, part) : undefined),
    input,
  );
}

/** An outline that is too short is told by its plane's name. */
function shortOutline(issue: z.core.$ZodIssue, input: unknown): Problem | null {
  const [first, at, key] = issue.path;
  if (issue.code !== 'too_small' || first !== 'planes' || (key !== 'reference' && key !== 'painting'))
    return null;
  const outline = valueAt(input, issue.path);
  if (issue.path.length !== 3 || !Array.isArray(outline)) return null;
  const name = valueAt(input, ['planes', at as number, 'name']);
  const points = outline.length === 1 ? '1 point' : `${outline.length} points`;
  return new Problem(
    'outline-invalid',
    `The outline of '${String(name)}' on the ${key} has ${points}. An outline needs at least 3; add some.`,
  );
}

function problemOf(issue: z.core.$ZodIssue, input: unknown): Problem {
  const short = shortOutline(issue, input);
  if (short) return short;
  const place = placeOf(issue.path);
  if (issue.code === 'unrecognized_keys') return new Problem('setup-invalid', unknownKeys(issue.keys, place));
  const where = place === '' ? 'The setup' : `The setup's ${place}`;
  if (valueAt(input, issue.path) === undefined && place !== '') {
    return new Problem('setup-invalid', `${where} is missing. Add it.`);
  }
  const what = issue.message.replace(/^Invalid input: /, '').replace(/\.$/, '');
  return new Problem('setup-invalid', `${where} is not right: ${what}. Correct it and try again.`);
}

/**
 * @param input parsed JSON. @returns the setup with its defaults filled in.
 * @throws Problem `setup-invalid` or `outline-invalid` for the first thing that is wrong; unknown keys are
 *   refused by name.
 */
export function parseSetup(input: unknown): Setup {
  const parsed = Setup.safeParse(input);
  if (parsed.success) return parsed.data;
  const { issues } = parsed.error;
  // A misspelt key often makes a needed one missing: the spelling is the cause, so it is told first.
  const first = issues.find(({ code }) => code === 'unrecognized_keys') ?? issues[0];
  if (!first) throw new Problem('setup-invalid', 'The setup could not be read. Correct it and try again.');
  throw problemOf(first, input);
}
