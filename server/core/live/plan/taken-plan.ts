/**
 * The plan that was taken, which target counts, and the plans kept: `ladder`, `target` and `kept.<id>` of `plan`.
 *
 * In the flow: plan page -> [taken-plan] -> setup of a measurement. Pure apart from the document given. Rungs carry the
 * id of their plane, so that a plane that is renamed keeps its rung.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { PlaneHandle } from '../../contract/plan-wishes.ts';
import type { PlannedPlane } from '../../contract/setup.ts';
import { edit, readEntries } from '../document.ts';
import { LiveId, LivePlan, type LiveRung } from '../layout.ts';
import { readPlanes } from '../planes.ts';
import { LiveWishes, replaceHandles, setWishes } from './wishes.ts';

/** Plans that are kept; the oldest goes when there are more. */
export const MOST_KEPT = 60;

export const LiveTarget = z.enum(['reference', 'plan']);
export type LiveTarget = z.infer<typeof LiveTarget>;

/** A plan as it was when it was taken. */
export const LiveKept = z.strictObject({
  /** Milliseconds since 1970, by the clock of who took it. */
  at: z.number(),
  /** Person id of who took it. */
  by: LiveId,
  name: z.string().check(z.maxLength(80)),
  wishes: LiveWishes,
  /** By plane id. */
  handles: z.record(LiveId, PlaneHandle),
  ladder: LivePlan,
});
export type LiveKept = z.infer<typeof LiveKept>;
export type KeptPlan = LiveKept & { id: string };

const KEPT = 'kept.';
const KeptKey = z.string().check(z.regex(/^kept\.[0-9A-Za-z-]{1,64}$/));

export function ladderFits(key: string, value: unknown): boolean {
  return key === 'ladder' && LivePlan.safeParse(value).success;
}

export function targetFits(key: string, value: unknown): boolean {
  return key === 'target' && LiveTarget.safeParse(value).success;
}

export function keptFits(key: string, value: unknown): boolean {
  return KeptKey.safeParse(key).success && LiveKept.safeParse(value).success;
}

/** The plan that was taken, far to near, or null. */
export function readTaken(doc: Y.Doc): LiveRung[] | null {
  return readEntries(doc, 'plan', z.literal('ladder'), LivePlan).get('ladder') ?? null;
}

/** What paintings are held against: the plan where one was taken, unless somebody said the reference. */
export function readTarget(doc: Y.Doc): LiveTarget {
  const said = readEntries(doc, 'plan', z.literal('target'), LiveTarget).get('target');
  return readTaken(doc) === null ? 'reference' : (said ?? 'plan');
}

/** The rungs to measure against, under the present names of their planes; null = the reference counts. */
export function readPlanToMeasure(doc: Y.Doc): PlannedPlane[] | null {
  if (readTarget(doc) === 'reference') return null;
  const names = new Map(readPlanes(doc).map(({ id, name }) => [id, name]));
  const rungs = readTaken(doc) ?? [];
  return rungs.map(({ planeId, ...rung }) => ({ ...rung, name: names.get(planeId ?? '') ?? rung.name }));
}

export function setTarget(doc: Y.Doc, target: LiveTarget): void {
  edit(doc, () => doc.getMap('plan').set('target', target));
}

/** The kept plans, newest first. */
export function readKept(doc: Y.Doc): KeptPlan[] {
  return [...readEntries(doc, 'plan', KeptKey, LiveKept)]
    .map(([key, kept]) => ({ ...kept, id: key.slice(KEPT.length) }))
    .sort((one, two) => two.at - one.at || (one.id < two.id ? -1 : 1));
}

/** Takes a plan: it is the target from now on, and kept. All of it is one transaction. @param id of the kept one. */
export function takePlan(doc: Y.Doc, id: string, kept: LiveKept): void {
  edit(doc, () => {
    const plan = doc.getMap('plan');
    plan.set('ladder', kept.ladder);
    plan.set('target', 'plan');
    plan.set(`${KEPT}${id}`, kept);
    for (const { id: old } of readKept(doc).slice(MOST_KEPT)) plan.delete(`${KEPT}${old}`);
  });
}

/** Takes an older plan again, with the wishes and handles it was made with. Nothing where it is gone. */
export function takeAgain(doc: Y.Doc, id: string): void {
  const kept = readKept(doc).find((each) => each.id === id);
  if (!kept) return;
  edit(doc, () => {
    setWishes(doc, kept.wishes);
    replaceHandles(doc, new Map(Object.entries(kept.handles)));
    doc.getMap('plan').set('ladder', kept.ladder);
    doc.getMap('plan').set('target', 'plan');
  });
}

/** @param name At most 80 characters. */
export function renameKept(doc: Y.Doc, id: string, name: string): void {
  const kept = readKept(doc).find((each) => each.id === id);
  if (!kept) return;
  const { id: _, ...entry } = kept;
  edit(doc, () => doc.getMap('plan').set(`${KEPT}${id}`, { ...entry, name }));
}

/** The taken plan stays the target even where its kept copy goes. */
export function forgetKept(doc: Y.Doc, id: string): void {
  edit(doc, () => doc.getMap('plan').delete(`${KEPT}${id}`));
}
