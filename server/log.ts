/**
 * The log: one line of JSON to an event, on standard error. The only user of the console in the server.
 *
 * In the flow: beside everything. IO: standard error; the two lines for a person go to standard output.
 */

export type LogFields = Record<string, string | number | boolean | null | undefined>;

/** Writes one event. Never pass tokens, keys or a database address. */
export function logEvent(event: string, fields: LogFields = {}): void {
  console.error(JSON.stringify({ at: new Date().toISOString(), event, ...fields }));
}

/**
 * Writes one error with its causes and stack as one line.
 *
 * @param id Short id that the person who met the error was given, so that both can be brought together.
 */
export function logError(event: string, thrown: unknown, fields: LogFields = {}): void {
  logEvent(event, { ...fields, ...fieldsOf(thrown) });
}

/** Says something to the person at the terminal, in plain words. */
export function say(sentence: string): void {
  console.log(sentence);
}

function fieldsOf(thrown: unknown): LogFields {
  if (!(thrown instanceof Error)) return { message: String(thrown) };
  const cause = thrown.cause === undefined ? undefined : JSON.stringify(fieldsOf(thrown.cause));
  return { message: thrown.message, stack: thrown.stack, cause };
}
