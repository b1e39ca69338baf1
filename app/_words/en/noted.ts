/**
 * Words for what a painting is and how it was photographed: its paint, wet or dry, the light.
 *
 * In the flow: post sheet, list of pictures, easel captions. `notedWords` is the caption's part: "Oil, wet". Pure.
 */
import type { Drying, Medium, PhotoLight } from '#server/core/contract/picture-choices.ts';
import type { PictureView } from '#server/core/contract/responses.ts';

export const notedText = {
  summary: 'Paint and light, if you know them',
  medium: 'Painted with',
  mediumHint: 'Oil, watercolour, or your own words',
  drying: 'When it was photographed, the paint was',
  light: 'Photographed in',
  notSaid: 'Not said',
  media: {
    oil: 'Oil',
    acrylic: 'Acrylic',
    watercolour: 'Watercolour',
    gouache: 'Gouache',
    pastel: 'Pastel',
  } satisfies Record<Medium, string>,
  dryings: { wet: 'wet', dry: 'dry' } satisfies Record<Drying, string>,
  lights: {
    shade: 'daylight, in the shade',
    sun: 'sun',
    lamp: 'lamp light',
    flash: 'flash',
    mixed: 'mixed light',
  } satisfies Record<PhotoLight, string>,
  save: 'Keep this',
  saving: 'Keeping …',
  saved: 'Kept.',
};

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The stored word for what was typed: one of ours where it is the same word, else the painter's own; empty = null. */
export function mediumFrom(typed: string): string | null {
  const text = typed.trim();
  const own = Object.entries(notedText.media).find(([, word]) => word.toLowerCase() === text.toLowerCase());
  return own ? own[0] : text || null;
}

/** A stored medium in words: `Oil`, `Ink and wash`. */
export function mediumWords(medium: string): string {
  // A word of the painter's own is in no list.
  return (notedText.media as Record<string, string | undefined>)[medium] ?? capital(medium);
}

/** `Oil, wet`, `Dry`, `Pastel`; null where nothing is noted. */
export function notedWords({ medium, drying }: Pick<PictureView, 'medium' | 'drying'>): string | null {
  const parts = [medium && mediumWords(medium), drying && notedText.dryings[drying]].filter(Boolean);
  return parts.length === 0 ? null : capital(parts.join(', '));
}

/** `Photographed in lamp light`; null where nothing is noted. */
export function lightWords({ light }: Pick<PictureView, 'light'>): string | null {
  return light && `${notedText.light} ${notedText.lights[light]}`;
}
