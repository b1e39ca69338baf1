/**
 * Steps of rearranging a photograph: `motif.<id>`, `bend.<id>` and `asItWas.<pictureId>` of the `setup` room's `plan`.
 *
 * In the flow: plan page -> [rearranging] -> the page's worker, the server's planner. Each step is one entry, replaced
 * whole; steps of two people who add different ones are both kept. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import { Bend, MOST_STEPS, Motif, type Rearranging } from '../../contract/rearranging.ts';
import { putEntry, readEntries } from '../document.ts';

const KEYS = {
  motif: z.string().check(z.regex(/^motif\.[0-9A-Za-z-]{1,64}$/)),
  bend: z.string().check(z.regex(/^bend\.[0-9A-Za-z-]{1,64}$/)),
  asItWas: z.string().check(z.regex(/^asItWas\.[0-9A-Za-z-]{1,64}$/)),
} as const;

export type KeptMotif = Motif & { readonly kind: 'motif'; readonly id: string };
export type KeptBend = Bend & { readonly kind: 'bend'; readonly id: string };
export type RearrangeStep = KeptMotif | KeptBend;

/** Whether an entry of `plan` is a well-formed step. */
export function rearrangingFits(key: string, value: unknown): boolean {
  if (KEYS.motif.safeParse(key).success) return Motif.safeParse(value).success;
  if (KEYS.bend.safeParse(key).success) return Bend.safeParse(value).success;
  return KEYS.asItWas.safeParse(key).success && value === true;
}

function idOf(key: string): string {
  return key.slice(key.indexOf('.') + 1);
}

/** All steps of a photograph in their order, those put off among them. */
export function readSteps(doc: Y.Doc, pictureId: string): RearrangeStep[] {
  const motifs = [...readEntries(doc, 'plan', KEYS.motif, Motif)].map(
    ([key, motif]): RearrangeStep => ({ ...motif, kind: 'motif', id: idOf(key) }),
  );
  const bends = [...readEntries(doc, 'plan', KEYS.bend, Bend)].map(
    ([key, bend]): RearrangeStep => ({ ...bend, kind: 'bend', id: idOf(key) }),
  );
  return [...motifs, ...bends]
    .filter((step) => step.pictureId === pictureId)
    .sort((one, two) => {
      if (one.order !== two.order) return one.order < two.order ? -1 : 1;
      return one.id < two.id ? -1 : 1;
    });
}

/** The steps that are done just now; none while the photograph is to be shown as it was. */
export function readRearranging(doc: Y.Doc, pictureId: string): Rearranging {
  const steps = readAsItWas(doc, pictureId) ? [] : readSteps(doc, pictureId).filter(({ off }) => !off);
  return {
    motifs: steps.filter((step): step is KeptMotif => step.kind === 'motif'),
    bends: steps.filter((step): step is KeptBend => step.kind === 'bend'),
  };
}

export function readAsItWas(doc: Y.Doc, pictureId: string): boolean {
  return readEntries(doc, 'plan', KEYS.asItWas, z.literal(true)).has(`asItWas.${pictureId}`);
}

export function setAsItWas(doc: Y.Doc, pictureId: string, asItWas: boolean): void {
  putEntry(doc, 'plan', `asItWas.${pictureId}`, asItWas ? true : null);
}

/** Whether another step can be added to the board. */
export function hasRoomForStep(doc: Y.Doc): boolean {
  const steps = [...doc.getMap('plan').keys()].filter((key) => /^(motif|bend)\./.test(key));
  return steps.length < MOST_STEPS;
}

/** Adds a step or replaces it. Whether a motif can be lifted is asked before: `rearrange/check-motif`. */
export function putMotif(doc: Y.Doc, id: string, motif: Motif): void {
  putEntry(doc, 'plan', `motif.${id}`, motif);
}

export function putBend(doc: Y.Doc, id: string, bend: Bend): void {
  putEntry(doc, 'plan', `bend.${id}`, bend);
}

/** Changes parts of a step as it stands now, whatever it was when the hand took hold; nothing where it is gone. */
export function changeStep<Step extends RearrangeStep>(
  doc: Y.Doc,
  { kind, id }: Step,
  change: Partial<Omit<Step, 'kind' | 'id'>>,
): void {
  const key = `${kind}.${id}`;
  const value = doc.getMap('plan').get(key);
  const stands = kind === 'motif' ? Motif.safeParse(value) : Bend.safeParse(value);
  if (stands.success) putEntry(doc, 'plan', key, { ...stands.data, ...change });
}

export function removeStep(doc: Y.Doc, { kind, id }: Pick<RearrangeStep, 'kind' | 'id'>): void {
  putEntry(doc, 'plan', `${kind}.${id}`, null);
}
