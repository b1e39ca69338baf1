/**
 * Pictures named on a command's line: read, with every trouble naming its file.
 *
 * In the flow: command -> [read-picture] -> imaging. IO: one file a call.
 */
import { basename } from 'node:path';
import type { MeasurablePlate } from '../core/image/raster.ts';
import { isProblem, Problem } from '../core/problem.ts';

/** A system error in words where it is a common one. */
export function reasonOf(thrown: unknown): string {
  const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : '';
  const words: Record<string, string> = {
    ENOENT: 'there is no such file',
    EISDIR: 'it is a folder',
    EACCES: 'reading it is not allowed',
  };
  const message = thrown instanceof Error ? thrown.message : String(thrown);
  return words[code] ?? (code || message);
}

/** A command may be given several pictures, so what is wrong with one says which. */
function namingFile(problem: Problem, name: string): Problem {
  const ofPicture = problem.code.startsWith('picture-') || problem.code.startsWith('file-');
  if (!ofPicture || problem.message.includes(name)) return problem;
  return new Problem(problem.code, `${name}: ${problem.message}`, { cause: problem });
}

/** @throws Problem that names the file: there is none, or what `read` says is wrong with the picture. */
export async function readPicture(
  path: string,
  read: (path: string) => Promise<MeasurablePlate>,
): Promise<MeasurablePlate> {
  try {
    return await read(path);
  } catch (cause) {
    const name = basename(path);
    if (isProblem(cause)) throw namingFile(cause, name);
    throw new Problem(
      'picture-unreadable',
      `The picture ${name} could not be read (${reasonOf(cause)}). Check its path.`,
      { cause },
    );
  }
}
