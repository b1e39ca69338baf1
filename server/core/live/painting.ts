/**
 * What a painter says about one painting in its `painting/<pictureId>` room, and the server's result number.
 *
 * Corners, cards and size are flat keys: one person setting corners never undoes another's size. Coordinates
 * are 0..1 of the upright original. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import type { Card, FractionPoint } from '../contract/setup.ts';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';
import { edit, putEntry, readEntries, replaceText } from './document.ts';
import { LiveFocus, LiveMeant, LivePhoto, LiveReadingId, LiveResult, TEXT_LIMIT } from './layout.ts';

/** Only the keys that parse; an empty object when nothing was corrected. */
export function readPhoto(doc: Y.Doc): LivePhoto {
  const photo = doc.getMap('photo');
  const { corners, cards, size } = LivePhoto.shape;
  return {
    ...known('corners', corners.safeParse(photo.get('corners')).data),
    ...known('cards', cards.safeParse(photo.get('cards')).data),
    ...known('size', size.safeParse(photo.get('size')).data),
  };
}

function known<K extends string, V>(key: K, value: V | undefined): { [P in K]?: V } {
  return value === undefined ? {} : ({ [key]: value } as { [P in K]: V }); // one key, just named
}

/** @param corners Clockwise from the painting's top left; null = not squared. @throws Problem `corners-invalid`. */
export function setCorners(
  doc: Y.Doc,
  corners: [FractionPoint, FractionPoint, FractionPoint, FractionPoint] | null,
): void {
  putPhoto(doc, 'corners', corners, 'corners-invalid', say`A painting has four corners inside its photo.`);
}

/** @param cards Up to twelve; null or an empty list = none. @throws Problem `card-invalid`. */
export function setCards(doc: Y.Doc, cards: Card[] | null): void {
  const some = cards?.length ? cards : null;
  putPhoto(doc, 'cards', some, 'card-invalid', say`A card is a box with a luminance factor above 0 up to 1.`);
}

/** @param size Width and height in one unit; null = unknown. @throws Problem `corners-invalid`. */
export function setSize(doc: Y.Doc, size: [number, number] | null): void {
  putPhoto(doc, 'size', size, 'corners-invalid', say`Width and height are numbers above 0.`);
}

function putPhoto(
  doc: Y.Doc,
  key: keyof LivePhoto,
  value: unknown,
  code: 'corners-invalid' | 'card-invalid',
  sentence: string,
): void {
  if (value !== null && !LivePhoto.shape[key].safeParse(value).success) throw new Problem(code, sentence);
  putEntry(doc, 'photo', key, value);
}

export function readIntention(doc: Y.Doc): string {
  return doc.getText('intention').toString();
}

/** @param text Cut at 4000 characters. Two people typing at once keep both. */
export function writeIntention(doc: Y.Doc, text: string): void {
  edit(doc, () => replaceText(doc.getText('intention'), text.slice(0, TEXT_LIMIT)));
}

/** Where the painter wants the eye to go, or null. */
export function readFocus(doc: Y.Doc): FractionPoint | null {
  return readEntries(doc, 'focus', z.literal('point'), LiveFocus).get('point') ?? null;
}

export function setFocus(doc: Y.Doc, point: FractionPoint | null): void {
  putEntry(doc, 'focus', 'point', point);
}

/** What the painter meant: `V4` or `V4-<planeId>` → the reason, empty where none was given; in order of keys. */
export function readMeant(doc: Y.Doc): Map<string, string> {
  const entries = [...readEntries(doc, 'meant', LiveReadingId, LiveMeant)];
  return new Map(entries.sort().map(([key, reason]) => [key, reason === true ? '' : reason]));
}

/** @param reason At most 400 characters, may be empty; null = not meant after all. */
export function setMeant(doc: Y.Doc, key: string, reason: string | null): void {
  putEntry(doc, 'meant', key, reason === null ? null : reason.slice(0, 400) || true);
}

/** The number of the newest result and what is being done about the next; null before the first. */
export function readResult(doc: Y.Doc): LiveResult | null {
  return LiveResult.safeParse(doc.getMap('result').toJSON()).data ?? null;
}

/** For the server alone: it refuses this from anybody else. */
export function writeResult(doc: Y.Doc, result: LiveResult): void {
  edit(doc, () => {
    const map = doc.getMap('result');
    if (map.get('number') !== result.number) map.set('number', result.number);
    if (map.get('pending') !== result.pending) map.set('pending', result.pending);
  });
}
