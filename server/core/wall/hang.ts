/**
 * In which order paintings hang on a wall, and under which letters.
 *
 * The order tells neither who painted a picture nor when it was posted, and is the same for everybody on the board: it
 * goes by a hash of the board's and the painting's ids. Letters count all paintings of the board, so that "look at C" is
 * one painting for everyone, also for who does not see B. In the flow: pictures -> [hang] -> access/wall. Pure.
 * Source of the mixing: Appleby, MurmurHash3 (public domain), its 32-bit finaliser; of the hash: Fowler, Noll & Vo, FNV-1a.
 */
import { statesOf } from '../own-time/states.ts';

interface State {
  id: string;
  follows: string | null;
}

export interface Hung<Picture> {
  letter: string;
  /** Oldest first. */
  states: Picture[];
}

/** 32 bits that change all over with any character. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  hash ^= hash >>> 16;
  hash = Math.imul(hash, 0x85ebca6b);
  hash ^= hash >>> 13;
  hash = Math.imul(hash, 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/** A to Z, then AA, AB … @param index From 0. */
export function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}

/** The paintings of a board as they hang. @param pictures All its paintings, in the order they were posted. */
export function hang<Picture extends State>(boardId: string, pictures: readonly Picture[]): Hung<Picture>[] {
  const paintings = new Map<string, Picture[]>();
  for (const { id } of pictures) {
    const states = statesOf(pictures, id);
    const first = states[0];
    if (first) paintings.set(first.id, states);
  }
  const place = (id: string) => hashOf(`${boardId}/${id}`);
  return [...paintings]
    .sort(([one], [other]) => place(one) - place(other) || (one < other ? -1 : 1))
    .map(([, states], index) => ({ letter: letterOf(index), states }));
}
