/**
 * A sheet's content with every text made settable, whatever its shape. In the flow: make-sheet -> [settable]. Pure.
 *
 * Paths of files are no texts that are set; they stay.
 */

/** @param plain Makes one text settable. */
export function settable<Content>(content: Content, plain: (text: string) => string): Content {
  return walk(content, plain) as Content; // the same shape, texts for texts
}

function walk(value: unknown, plain: (text: string) => string): unknown {
  if (typeof value === 'string') return plain(value);
  if (Array.isArray(value)) return value.map((each) => walk(each, plain));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [key, UNSET.has(key) ? each : walk(each, plain)]),
  );
}

/** Of these nothing is set: files, kinds, colours. */
const UNSET: ReadonlySet<string> = new Set(['platePath', 'photo', 'about', 'kind', 'colours']);
