/**
 * What is said of the scene as a whole in the `setup` room: air colours, conditions, unreliable planes.
 *
 * Each entry has a key of its own, so that two people who add different ones keep both. Pure apart from the
 * document given.
 */
import type * as Y from 'yjs';
import { z } from 'zod/mini';
import type { Condition, LabColour } from '../contract/setup.ts';
import { putEntry, readEntries } from './document.ts';
import { LiveAir, LiveCondition, LiveId, LiveUnreliable } from './layout.ts';

/** Picture id → air colour picked by a person. */
export function readAir(doc: Y.Doc): Map<string, LabColour> {
  return readEntries(doc, 'air', LiveId, LiveAir);
}

/** @param colour Null goes back to the measured air colour. */
export function setAir(doc: Y.Doc, pictureId: string, colour: LabColour | null): void {
  putEntry(doc, 'air', pictureId, colour);
}

/** The conditions that hold, in the order of the contract. */
export function readConditions(doc: Y.Doc): Condition[] {
  const held = readEntries(doc, 'conditions', LiveCondition, z.literal(true));
  return LiveCondition.options.filter((condition) => held.has(condition));
}

export function setCondition(doc: Y.Doc, condition: Condition, holds: boolean): void {
  putEntry(doc, 'conditions', condition, holds ? true : null);
}

/** Plane id → why the reference is not to be trusted there. */
export function readUnreliable(doc: Y.Doc): Map<string, string> {
  return readEntries(doc, 'unreliable', LiveId, LiveUnreliable);
}

/** @param reason At most 400 characters; null = the plane is reliable. */
export function setUnreliable(doc: Y.Doc, planeId: string, reason: string | null): void {
  putEntry(doc, 'unreliable', planeId, reason);
}
