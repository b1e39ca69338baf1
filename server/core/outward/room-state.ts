/**
 * What a room holds now, as JSON that people can read, and a room made anew from it.
 *
 * No history goes along: what was deleted is not in it, and nothing but entries that fit the layout comes out of it. In
 * the flow: live document -> [room-state] -> archive -> [room-state] -> a fresh live document. Pure.
 */
import * as Y from 'yjs';
import { z } from 'zod';
import { declareRoots, roomKind, TEXT_ROOT } from '../live/document.ts';
import { ROOT_KEYS, type RoomName } from '../live/layout.ts';
import { SHAPES, textFits } from '../live/shapes.ts';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';

const Part = z.union([z.strictObject({ text: z.string() }), z.strictObject({ value: z.json() })]);
/** One entry of a root map: a plain value, or a map whose parts are plain values and texts. */
const EntryState = z.union([
  z.strictObject({ value: z.json() }),
  z.strictObject({ map: z.record(z.string(), Part) }),
]);
/** A room: its text where it has one, and its root maps. */
export const RoomState = z.strictObject({
  text: z.optional(z.string()),
  roots: z.record(z.string(), z.record(z.string(), EntryState)),
});
export type RoomState = z.infer<typeof RoomState>;
type EntryState = z.infer<typeof EntryState>;

/** What a room may hold, in bytes of its document; `server/live` goes by the same. */
const MOST_BYTES = 64_000_000;

/** What stands in a room. Entries that do not fit the layout are left out, as every reader does. */
export function stateOf(doc: Y.Doc, room: RoomName): RoomState {
  const kind = roomKind(room);
  const roots: RoomState['roots'] = {};
  for (const root of ROOT_KEYS[kind]) {
    if (root === TEXT_ROOT) continue;
    const shape = SHAPES[kind][root];
    const entries = [...doc.getMap(root)].filter(([key, value]) => shape?.fits(key, value));
    if (entries.length > 0)
      roots[root] = Object.fromEntries(entries.map(([key, value]) => [key, stateOfEntry(value)]));
  }
  const text = kind === 'painting' ? doc.getText(TEXT_ROOT).toString() : '';
  return text === '' ? { roots } : { text, roots };
}

function stateOfEntry(value: unknown): EntryState {
  if (!(value instanceof Y.Map)) return { value: value as z.infer<ReturnType<typeof z.json>> }; // it fitted the layout
  const parts = [...value.entries()].map(([key, part]) => {
    return [key, part instanceof Y.Text ? { text: part.toString() } : { value: part }];
  });
  return { map: Object.fromEntries(parts) };
}

/**
 * A fresh document with exactly this in it.
 *
 * @throws Problem 'archive-refused' when something does not fit the layout of that room.
 */
export function documentOf(room: RoomName, state: RoomState): Y.Doc {
  const kind = roomKind(room);
  const doc = declareRoots(new Y.Doc({ gc: true }), room);
  const known: readonly string[] = ROOT_KEYS[kind];
  doc.transact(() => {
    for (const [root, entries] of Object.entries(state.roots)) {
      if (!known.includes(root) || root === TEXT_ROOT) throw unfit(room);
      for (const [key, entry] of Object.entries(entries)) doc.getMap(root).set(key, entryValue(entry));
    }
    if (state.text !== undefined) {
      if (!known.includes(TEXT_ROOT)) throw unfit(room);
      doc.getText(TEXT_ROOT).insert(0, state.text);
    }
  });
  if (!fitsLayout(doc, room)) throw unfit(room);
  return doc;
}

function entryValue(entry: EntryState): unknown {
  if ('value' in entry) return entry.value;
  const map = new Y.Map<unknown>();
  for (const [key, part] of Object.entries(entry.map)) {
    map.set(key, 'text' in part ? new Y.Text(part.text) : part.value);
  }
  return map;
}

function fitsLayout(doc: Y.Doc, room: RoomName): boolean {
  const kind = roomKind(room);
  for (const [root, { fits, most }] of Object.entries(SHAPES[kind])) {
    const map = doc.getMap(root);
    if (map.size > most) return false;
    for (const [key, value] of map) if (!fits(key, value)) return false;
  }
  if (kind === 'painting' && !textFits(doc.getText(TEXT_ROOT))) return false;
  return Y.encodeStateAsUpdate(doc).length <= MOST_BYTES;
}

function unfit(room: RoomName): Problem {
  return new Problem(
    'archive-refused',
    say`This archive holds something in the room ${room} that no board can hold, so nothing was taken from it. Take a fresh one from where it was made, and try again.`,
  );
}

/**
 * The state without whatever names one of these ids, in its key or in a value (never in its words).
 *
 * @param ids Of pictures that stay behind. Lists lose the id; other entries that name it go whole.
 */
export function withoutIds({ text, roots }: RoomState, ids: ReadonlySet<string>): RoomState {
  const kept: RoomState['roots'] = {};
  for (const [root, entries] of Object.entries(roots)) {
    const left = Object.entries(entries).flatMap(([key, entry]): [string, EntryState][] => {
      if (
        'value' in entry &&
        Array.isArray(entry.value) &&
        entry.value.every((each) => typeof each === 'string')
      ) {
        return [[key, { value: entry.value.filter((each) => !ids.has(String(each))) }]];
      }
      return names(key, ids) || names(structureOf(entry), ids) ? [] : [[key, entry]];
    });
    if (left.length > 0) kept[root] = Object.fromEntries(left);
  }
  return text === undefined ? { roots: kept } : { text, roots: kept };
}

/**
 * The state with every id replaced by its new one, in keys and values; words stay as they are.
 *
 * @param ids Old id -> new id; UUIDs, so that none is part of another.
 */
export function withIds({ text, roots }: RoomState, ids: ReadonlyMap<string, string>): RoomState {
  if (ids.size === 0) return text === undefined ? { roots } : { text, roots };
  const renamed: RoomState['roots'] = {};
  for (const [root, entries] of Object.entries(roots)) {
    renamed[root] = Object.fromEntries(
      Object.entries(entries).map(([key, entry]) => [replaced(key, ids), entryWithIds(entry, ids)]),
    );
  }
  return text === undefined ? { roots: renamed } : { text, roots: renamed };
}

function entryWithIds(entry: EntryState, ids: ReadonlyMap<string, string>): EntryState {
  if ('value' in entry) return { value: JSON.parse(replaced(JSON.stringify(entry.value), ids)) };
  const parts = Object.entries(entry.map).map(([key, part]) => {
    return [key, 'text' in part ? part : { value: JSON.parse(replaced(JSON.stringify(part.value), ids)) }];
  });
  return { map: Object.fromEntries(parts) };
}

/** All of an entry but its texts. */
function structureOf(entry: EntryState): string {
  if ('value' in entry) return JSON.stringify(entry.value);
  return JSON.stringify(Object.values(entry.map).flatMap((part) => ('value' in part ? [part.value] : [])));
}

function names(text: string, ids: ReadonlySet<string>): boolean {
  for (const id of ids) if (text.includes(id)) return true;
  return false;
}

const UUID = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}/g;

function replaced(text: string, ids: ReadonlyMap<string, string>): string {
  return text.replace(UUID, (id) => ids.get(id) ?? id);
}
