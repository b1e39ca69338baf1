/**
 * Numbers and dates as people read them, each with its unit and no more digits than its noise allows.
 *
 * In the language of the house. Pure but for the reader's own time zone in `dateTime` and `timeOfDay`.
 */
import { LANGUAGE, LOCALE } from '#server/core/say/language.ts';

const MINUS = '\u2212';
const GERMAN = LANGUAGE === 'de';
/** German parts thousands only where there are two or more of them to read: 4000, 12.000. */
const GROUPING: Intl.NumberFormatOptions = GERMAN ? { useGrouping: 'min2' } : {};
const plain = new Intl.NumberFormat(LANGUAGE, { ...GROUPING, maximumFractionDigits: 1 });
const oneDigit = new Intl.NumberFormat(LANGUAGE, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
const percentFormat = new Intl.NumberFormat(LANGUAGE, { style: 'percent', maximumFractionDigits: 0 });

/** Shown where a measure could not be taken; its reason stands in the notes. */
export const NO_FIGURE = '\u2014';

/** @param digits Digits after the point. @returns With a real minus sign; never "−0". */
export function figure(amount: number | null, digits: number): string {
  if (amount === null) return NO_FIGURE;
  const rounded = Number(amount.toFixed(digits));
  const text = new Intl.NumberFormat(LANGUAGE, {
    ...GROUPING,
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
  const size = Math.abs(Number((lightness / 10).toFixed(digits)));
  return `${text} ${stepWord(size, digits)}`;
}

/** English speaks of one step up to 1.0; in German whatever has digits after its comma is many. */
function stepWord(size: number, digits: number): string {
  if (GERMAN) return size === 1 && digits === 0 ? 'Stufe' : 'Stufen';
  return size <= 1 ? 'step' : 'steps';
}

/** A number as it stands in a field to be typed over: all its digits, thousands not parted. */
export function inField(amount: number): string {
  return GERMAN ? String(amount).replace('.', ',') : String(amount);
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
  return new Intl.DateTimeFormat(LOCALE, {
    weekday: 'short',
    day: 'numeric',
    month: 'short',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(iso));
}

/** @param ms Since 1970. Hours and minutes, in the reader's time zone. */
export function timeOfDay(ms: number): string {
  return new Date(ms).toLocaleTimeString(LOCALE, { hour: '2-digit', minute: '2-digit' });
}

/** @param iso ISO 8601. The day alone, with its year; by Greenwich, so that server and browser say the same. */
export function day(iso: string): string {
  return new Intl.DateTimeFormat(LOCALE, {
    ...{ day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' },
  }).format(new Date(iso));
}
