/**
 * German. Words for what a painting is and how it was photographed: its paint, wet or dry, the light.
 *
 * In the flow: post sheet, list of pictures, easel captions. `notedWords` is the caption's part: "Öl, nass". Pure.
 */
import type * as en from '../en/noted.ts';
import type { Worded } from '../worded.ts';

export const notedText: Worded<typeof en.notedText> = {
  summary: 'Maltechnik und Licht, falls bekannt',
  medium: 'Maltechnik',
  mediumHint: 'Öl, Aquarell oder deine eigenen Worte',
  drying: 'Beim Fotografieren war die Farbe',
  light: 'Fotografiert bei',
  notSaid: 'Keine Angabe',
  media: {
    oil: 'Öl',
    acrylic: 'Acryl',
    watercolour: 'Aquarell',
    gouache: 'Gouache',
    pastel: 'Pastell',
  },
  dryings: { wet: 'nass', dry: 'trocken' },
  lights: {
    shade: 'Tageslicht im Schatten',
    sun: 'Sonne',
    lamp: 'Lampenlicht',
    flash: 'Blitzlicht',
    mixed: 'Mischlicht',
  },
  save: 'Festhalten',
  saving: 'Wird festgehalten …',
  saved: 'Festgehalten.',
};

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The stored word for what was typed: one of ours where it is the same word, else the painter's own; empty = null. */
export const mediumFrom: typeof en.mediumFrom = (typed) => {
  const text = typed.trim();
  const own = Object.entries(notedText.media).find(([, word]) => word.toLowerCase() === text.toLowerCase());
  return own ? own[0] : text || null;
};

/** A stored medium in words: `Öl`, `Tusche und Lasur`. */
export const mediumWords: typeof en.mediumWords = (medium) =>
  // A word of the painter's own is in no list.
  (notedText.media as Record<string, string | undefined>)[medium] ?? capital(medium);

/** `Öl, nass`, `Trocken`, `Pastell`; null where nothing is noted. */
export const notedWords: typeof en.notedWords = ({ medium, drying }) => {
  const parts = [medium && mediumWords(medium), drying && notedText.dryings[drying]].filter(Boolean);
  return parts.length === 0 ? null : capital(parts.join(', '));
};

/** `Fotografiert bei Lampenlicht`; null where nothing is noted. */
export const lightWords: typeof en.lightWords = ({ light }) =>
  light && `${notedText.light} ${notedText.lights[light]}`;
