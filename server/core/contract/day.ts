/** A day as people promise it: a date without an hour, 'YYYY-MM-DD' (ISO 8601-1, 4.3.2). Pure. */

/** Whether the text is a day that exists, such as '2026-02-28'. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const at = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(at) && new Date(at).toISOString().startsWith(text);
}
