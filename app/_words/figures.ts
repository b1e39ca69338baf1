/**
 * Numbers and dates as people read them, each with its unit and no more digits than its noise allows.
 *
 * Pure but for the reader's own time zone in `dateTime`.
 */

const MINUS = '\u2212';
const plain = new Intl.NumberFormat('en', { maximumFractionDigits: 1 });
const oneDigit = new Intl.NumberFormat('en', { minimumFractionDigits: 1, maximumFractionDigits: 1 });
const percentFormat = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 });

/** Shown where a measure could not be taken; its reason stands in the notes. */
export const NO_FIGURE = '\u2014';

/** @param digits Digits after the point. @returns With a real minus sign; never "−0". */
export function figure(amount: number | null, digits: number): string {
  if (amount === null) return NO_FIGURE;
  const rounded = Number(amount.toFixed(digits));
  const text = new Intl.NumberFormat('en', {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  }).format(Math.abs(rounded));
  return rounded < 0 ? `${MINUS}${text}` : text;
}

/** As `figure`, with a plus sign before what is above zero after rounding. */
export function signedFigure(amount: number | null, digits: number): string {
  const text = figure(amount, digits);
  return amount !== null && Number(amount.toFixed(digits)) > 0 ? `+${text}` : text;
}

/** A difference of lightness in painters' steps. @param lightness L* units; one step = 10 L*. */
export function signedSteps(lightness: number | null, digits: number): string {
  if (lightness === null) return NO_FIGURE;
  const text = signedFigure(lightness / 10, digits);
  return `${text} ${Math.abs(Number((lightness / 10).toFixed(digits))) <= 1 ? 'step' : 'steps'}`;
}

/** @param share 0..1. */
export function percent(share: number): string {
  return percentFormat.format(share);
}

/** @param sizeBytes Bytes; shown in MB of a million bytes, below a tenth of one in kB of a thousand. */
export function fileSize(sizeBytes: number): string {
  const amount = sizeBytes / 1e6;
  if (amount < 0.1) return `${Math.ceil(sizeBytes / 1000)} kB`;
  return `${(amount < 10 ? oneDigit : plain).format(amount)} MB`;
}

/** @param iso ISO 8601. In the reader's time zone. */
export function dateTime(iso: string): string {
  return new Intl.DateTimeFormat('en-GB', {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(iso));
}

/** @param iso ISO 8601. The day alone, with its year; by Greenwich, so that server and browser say the same. */
export function day(iso: string): string {
  return new Intl.DateTimeFormat('en-GB', {
    ...{ day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' },
  }).format(new Date(iso));
}
