/**
 * The planes of a board in the `setup` room: read far to near, add, name, turn, move, remove.
 *
 * A plane is a Y.Map of its own, so that one person renaming and another moving it both succeed. Ids come in
 * as arguments. Pure apart from the document given.
 */
import * as Y from 'yjs';
import type { PlaneKind, PlaneTilt } from '../contract/setup.ts';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';
import { edit } from './document.ts';
import { LiveId, LivePlane } from './layout.ts';
import { LONGEST_ORDER, orderBetween, ordersFor } from './order.ts';
import { newestSet, ofSet, setAfter } from './plane-sets.ts';

export interface Plane extends LivePlane {
  id: string;
}

/** A measurement takes at most this many. */
export const MOST_PLANES = 12;

/** The planes of the board, far to near: every well-formed one of the set that stands. */
export function readPlanes(doc: Y.Doc): Plane[] {
  const planes = everyPlane(doc);
  return ofSet(planes, newestSet(planes)).sort(
    (one, two) => compare(one.order, two.order) || compare(one.id, two.id),
  );
}

/** Those of sets that lost against another, too. */
function everyPlane(doc: Y.Doc): Plane[] {
  const planes: Plane[] = [];
  for (const [id, entry] of doc.getMap('planes')) {
    if (!(entry instanceof Y.Map) || !LiveId.safeParse(id).success) continue;
    const parsed = LivePlane.safeParse(entry.toJSON());
    if (parsed.success) planes.push({ id, ...parsed.data });
  }
  return planes;
}

function compare(one: string, two: string): number {
  return one < two ? -1 : one > two ? 1 : 0;
}

/**
 * Adds a plane at a place far to near, or as the nearest.
 *
 * @param index 0 is the farthest; left out = after all others.
 * @throws Problem `setup-invalid` when there are twelve already or the name is empty or too long.
 */
export function addPlane(
  doc: Y.Doc,
  plane: { id: string; name: string; kind: PlaneKind; tilt: PlaneTilt | null },
  index?: number,
): void {
  const planes = readPlanes(doc);
  if (planes.length >= MOST_PLANES) {
    throw new Problem(
      'setup-invalid',
      say`There are ${planes.length} planes already and ${MOST_PLANES} are the most. Remove one first.`,
    );
  }
  edit(doc, () => {
    const order = makeRoom(doc, planes, Math.min(index ?? planes.length, planes.length));
    putPlane(doc, { ...plane, order, set: newestSet(planes) ?? undefined });
  });
}

/**
 * Puts a whole set of planes in the place of those that are there, which go with their outlines on references.
 *
 * Two people who do so at the same moment end with one of both sets, never with planes of both.
 * @param planes Far to near, twelve at most, each with an id that no other plane has.
 * @param token Of this taking alone, in letters, digits and hyphens.
 * @throws Problem `setup-invalid` when a name is empty or too long.
 */
export function replacePlanes(
  doc: Y.Doc,
  planes: readonly { id: string; name: string; kind: PlaneKind }[],
  token: string,
): void {
  const orders = ordersFor(planes.length);
  edit(doc, () => {
    const before = everyPlane(doc);
    const set = setAfter(newestSet(before), token);
    for (const { id } of before) dropPlane(doc, id);
    planes.forEach((plane, at) => {
      putPlane(doc, { ...plane, tilt: null, order: orders[at] as string, set }); // as many orders as planes
    });
  });
}

function putPlane(
  doc: Y.Doc,
  { id, name, kind, tilt, order, set }: Omit<Plane, 'set'> & { set: string | undefined },
) {
  const entry = new Y.Map<unknown>([
    ['name', checkedName(name)],
    ['kind', kind],
    ['tilt', tilt],
    ['order', order],
  ]);
  if (set !== undefined) entry.set('set', set);
  doc.getMap('planes').set(id, entry);
}

/** @throws Problem `setup-invalid` when the name is empty or longer than 80 characters. */
export function renamePlane(doc: Y.Doc, id: string, name: string): void {
  setField(doc, id, 'name', checkedName(name));
}

export function setPlaneKind(doc: Y.Doc, id: string, kind: PlaneKind): void {
  setField(doc, id, 'kind', kind);
}

export function setPlaneTilt(doc: Y.Doc, id: string, tilt: PlaneTilt | null): void {
  setField(doc, id, 'tilt', tilt);
}

/**
 * Moves a plane so that it stands at `index` of the list far to near; the others keep their keys.
 *
 * @param index Place in the list after the move; beyond the end = nearest. An unknown id changes nothing.
 */
export function movePlane(doc: Y.Doc, id: string, index: number): void {
  const planes = readPlanes(doc);
  if (planes.findIndex((plane) => plane.id === id) === index) return;
  const others = planes.filter((plane) => plane.id !== id);
  if (others.length === planes.length) return;
  edit(doc, () => {
    setField(doc, id, 'order', makeRoom(doc, others, Math.max(0, Math.min(index, others.length))));
  });
}

/** Removes a plane with its outlines on the references and what was said of its reliability. */
export function removePlane(doc: Y.Doc, id: string): void {
  edit(doc, () => {
    const standing = new Set(readPlanes(doc).map((plane) => plane.id));
    dropPlane(doc, id);
    // What lost against these planes must not come up once the last of them is gone.
    for (const other of everyPlane(doc)) if (!standing.has(other.id)) dropPlane(doc, other.id);
  });
}

function dropPlane(doc: Y.Doc, id: string): void {
  doc.getMap('planes').delete(id);
  doc.getMap('unreliable').delete(id);
  const outlines = doc.getMap('outlines');
  for (const key of [...outlines.keys()]) if (key.endsWith(`/${id}`)) outlines.delete(key);
}

/** A key for `index`. Numbers the list afresh when two people left equal keys there, or keys grew long. */
function makeRoom(doc: Y.Doc, planes: Plane[], index: number): string {
  const order = orderBetween(planes[index - 1]?.order ?? null, planes[index]?.order ?? null);
  if (order !== null && order.length <= LONGEST_ORDER) return order;
  const fresh = ordersFor(planes.length + 1);
  planes.forEach((plane, at) => {
    setField(doc, plane.id, 'order', fresh[at < index ? at : at + 1]);
  });
  return fresh[index] as string; // `index` is 0..planes.length and `fresh` has one more than that
}

function setField(doc: Y.Doc, id: string, field: keyof LivePlane, value: unknown): void {
  edit(doc, () => {
    const plane = doc.getMap('planes').get(id);
    if (plane instanceof Y.Map && plane.get(field) !== value) plane.set(field, value);
  });
}

function checkedName(name: string): string {
  const parsed = LivePlane.shape.name.safeParse(name.trim());
  if (parsed.success) return parsed.data;
  throw new Problem(
    'setup-invalid',
    say`A plane's name has 1 to 80 characters and this one has ${name.trim().length}.`,
  );
}
