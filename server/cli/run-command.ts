/**
 * What every headless command has in common: its words read, its answer printed, its trouble told in one line.
 *
 * In the flow: a command's file -> [run-command] -> process. IO: standard output and error, exit status 1, or 2 for
 * wrong usage.
 */
import { type ParseArgsConfig, parseArgs } from 'node:util';
import { isProblem } from '../core/problem.ts';

/** The words behind a command were wrong; its message is followed by how to use it. */
export class UsageError extends Error {}

/** One line, whatever was thrown. */
export function plainLine(thrown: unknown): string {
  const text = thrown instanceof Error ? thrown.message : String(thrown);
  return text.replace(/\s*\n\s*/g, ' ').trim();
}

/** The options and words behind a command. @throws UsageError for an option that the command does not know. */
export function readWords<const Options extends NonNullable<ParseArgsConfig['options']>>(
  words: string[],
  options: Options,
) {
  try {
    return parseArgs({ args: words, allowPositionals: true, options });
  } catch (cause) {
    throw new UsageError(plainLine(cause), { cause });
  }
}

/**
 * Runs a command on the words of this process.
 *
 * @param failed What is said before a trouble that has no whole sentence of its own, without a stop.
 */
export async function runCommand(
  command: (words: string[]) => Promise<string>,
  { usage, failed }: { usage: string; failed: string },
): Promise<void> {
  try {
    process.stdout.write(`${await command(process.argv.slice(2))}\n`);
  } catch (thrown) {
    const wrongUsage = thrown instanceof UsageError;
    const sentence = wrongUsage
      ? `${plainLine(thrown)} ${usage}`
      : isProblem(thrown)
        ? plainLine(thrown)
        : `${failed}: ${plainLine(thrown)}`;
    process.stderr.write(`${sentence}\n`);
    process.exitCode = wrongUsage ? 2 : 1;
  }
}
