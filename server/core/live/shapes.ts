/**
 * The shape of every entry of every room, as the server checks what an update has changed.
 *
 * Readers leave out what does not parse; the server refuses it by these same shapes, and refuses what they
 * cannot see: lists inside maps, formatted text, documents inside documents. Pure.
 */
import * as Y from 'yjs';
import { z } from 'zod/mini';
import { classEntryFits, keptEntryFits, MOST_TURNS, noteFits, saidFits } from '../class/shapes.ts';
import type { RoomKind } from './document.ts';
import {
  LiveAir,
  LiveAnswer,
  LiveCard,
  LiveCardKey,
  LiveCondition,
  LiveFocus,
  LiveHidden,
  LiveId,
  LiveLeave,
  LiveMeant,
  LiveNodKey,
  LiveOutline,
  LivePhoto,
  LivePlane,
  LiveReadingId,
  LiveResult,
  LiveUnreliable,
  TEXT_LIMIT,
} from './layout.ts';
import { parseMark } from './marks.ts';
import { ReferenceOutlineKey } from './outlines.ts';
import { frameFits } from './plan/frame-of-painting.ts';
import { planEntryFits } from './plan/plan-entries.ts';
import { wallEntryFits } from './wall.ts';

/** Whether the entry under `key` is well formed. `value` is what the root map holds there. */
type EntryCheck = (key: string, value: unknown) => boolean;

interface RootShape {
  fits: EntryCheck;
  /** Most entries of this root. */
  most: number;
}

const YES = z.literal(true);

/** Root maps by kind of room; `intention` is a text and has `textFits`. */
export const SHAPES: Record<RoomKind, Record<string, RootShape>> = {
  setup: {
    planes: { fits: planeFits, most: 24 },
    outlines: { fits: plain(ReferenceOutlineKey, LiveOutline), most: 600 },
    air: { fits: plain(LiveId, LiveAir), most: 200 },
    conditions: { fits: plain(LiveCondition, YES), most: 20 },
    unreliable: { fits: plain(LiveId, LiveUnreliable), most: 60 },
    plan: { fits: planEntryFits, most: 600 },
    answers: { fits: plain(LiveId, LiveAnswer), most: 4000 },
    hidden: { fits: plain(LiveId, LiveHidden), most: 4000 },
    wall: { fits: wallEntryFits, most: 2 },
  },
  painting: {
    outlines: { fits: plain(LiveId, LiveOutline), most: 60 },
    photo: { fits: photoFits, most: 3 },
    focus: { fits: plain(z.literal('point'), LiveFocus), most: 1 },
    meant: { fits: plain(LiveReadingId, LiveMeant), most: 200 },
    answers: { fits: plain(LiveId, LiveAnswer), most: 2000 },
    hidden: { fits: plain(LiveId, LiveHidden), most: 2000 },
    allows: { fits: plain(LiveLeave, YES), most: 1 },
    cards: { fits: cardFits, most: 400 },
    said: { fits: saidFits, most: 1 },
    frame: { fits: frameFits, most: 1 },
    result: { fits: resultFits, most: 2 },
  },
  marks: {
    marks: { fits: markFits, most: 20_000 },
    nods: { fits: plain(LiveNodKey, YES), most: 20_000 },
  },
  class: {
    class: { fits: classEntryFits, most: MOST_TURNS + 60 },
    kept: { fits: keptEntryFits, most: 2000 },
  },
  silent: { notes: { fits: noteFits, most: 400 } },
};

/** A text of plain characters, at most 4000 of them. */
export function textFits(text: Y.Text): boolean {
  if (text.constructor !== Y.Text || text.length > TEXT_LIMIT || text._map.size > 0) return false;
  return text.toDelta().every((part: Record<string, unknown>) => {
    return typeof part.insert === 'string' && part.attributes === undefined;
  });
}

function plain(key: z.ZodMiniType<string>, shape: z.ZodMiniType): EntryCheck {
  return (name, value) => key.safeParse(name).success && shape.safeParse(value).success;
}

function planeFits(key: string, value: unknown): boolean {
  return LiveId.safeParse(key).success && isPlainMap(value) && LivePlane.safeParse(value.toJSON()).success;
}

function markFits(key: string, value: unknown): boolean {
  if (!isPlainMap(value)) return false;
  const text = value.get('text');
  return text instanceof Y.Text && textFits(text) && parseMark(key, value) !== null;
}

function photoFits(key: string, value: unknown): boolean {
  return value !== undefined && LivePhoto.safeParse({ [key]: value }).success;
}

function resultFits(key: string, value: unknown): boolean {
  if (key === 'number') return LiveResult.shape.number.safeParse(value).success;
  return key === 'pending' && LiveResult.shape.pending.safeParse(value).success;
}

/** One part of an adjustment card under its flat key. */
function cardFits(key: string, value: unknown): boolean {
  if (!LiveCardKey.safeParse(key).success || value === undefined) return false;
  return LiveCard.safeParse({ [key.slice(key.indexOf('.') + 1)]: value }).success;
}

/** A Y.Map whose values are plain, apart from texts, and which hides no list beside its keys. */
function isPlainMap(value: unknown): value is Y.Map<unknown> {
  if (!(value instanceof Y.Map) || value.constructor !== Y.Map || value._start !== null) return false;
  return [...value.values()].every((each) => !(each instanceof Y.AbstractType) || each instanceof Y.Text);
}
