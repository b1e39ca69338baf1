/**
 * Running a class: starting, the next step and turn, pausing, skipping, stopping; each one edit of the `class` document.
 *
 * In the flow: teacher's buttons -> [run] -> class room -> everybody. Two teachers who press the same button in the same
 * moment write the same thing. Only ids and random order come in from outside. Pure apart from the document given.
 */
import type * as Y from 'yjs';
import { edit } from '../live/document.ts';
import { HAD, type LiveLook, type LiveNow } from './shapes.ts';
import { readClass, toCome } from './state.ts';
import { type Lengths, stepAfter } from './steps.ts';

/** A turn that can be given. */
export interface Turn {
  pictureId: string;
  painterId: string;
}

/** Finds whose painting it is; null where it is not on the board any more. */
export type PainterOf = (pictureId: string) => string | null;

/** Begins a class anew with the first painting of the order. An empty order changes nothing. */
export function startClass(doc: Y.Doc, order: readonly Turn[], lengths: Lengths): void {
  const [first] = order;
  if (!first) return;
  edit(doc, () => {
    const map = doc.getMap('class');
    for (const key of [...map.keys()]) if (key.startsWith(HAD)) map.delete(key);
    map.set(
      'order',
      order.map(({ pictureId }) => pictureId),
    );
    map.set('lengths', { ...lengths });
    begin(doc, first);
  });
}

/** Goes on with those who had no turn yet, after a stop. Nothing happens when there are none or a turn is running. */
export function goOn(doc: Y.Doc, painterOf: PainterOf): void {
  if (readClass(doc).now === null) edit(doc, () => beginNext(doc, painterOf));
}

/** The next step of the turn; after the last one the next turn, and after the last turn the class is over. */
export function nextStep(doc: Y.Doc, painterOf: PainterOf): void {
  const { now } = readClass(doc);
  if (!now) return;
  const step = stepAfter(now.step);
  if (step === null) nextTurn(doc, painterOf);
  else edit(doc, () => put(doc, { ...now, number: now.number + 1, step, paused: false, opened: false }));
}

/** Ends the running turn, wherever it is, and begins the next one. */
export function nextTurn(doc: Y.Doc, painterOf: PainterOf): void {
  const { now } = readClass(doc);
  if (!now) return;
  edit(doc, () => {
    doc.getMap('class').set(HAD + now.pictureId, true);
    beginNext(doc, painterOf);
  });
}

/** Leaves the running turn for later: it comes last, and the next one begins. Nothing happens when no other is left. */
export function skipTurn(doc: Y.Doc, painterOf: PainterOf): void {
  const state = readClass(doc);
  const { now } = state;
  if (!now || !toCome(state).some((id) => painterOf(id) !== null)) return;
  edit(doc, () => {
    const others = state.order.filter((id) => id !== now.pictureId);
    doc.getMap('class').set('order', [...others, now.pictureId]);
    beginNext(doc, painterOf);
  });
}

export function setPaused(doc: Y.Doc, paused: boolean): void {
  change(doc, { paused });
}

/** Lets the others mark after the teacher has begun. */
export function openToAll(doc: Y.Doc): void {
  change(doc, { opened: true });
}

/** Ends the class where it is. Who had no turn stays in the order. */
export function stopClass(doc: Y.Doc): void {
  edit(doc, () => doc.getMap('class').delete('now'));
}

/** Switches of who runs the class: `closed` = nobody else marks; `quiet` = marks are drawn on no screen. */
export function setSwitch(doc: Y.Doc, name: 'closed' | 'quiet', on: boolean): void {
  edit(doc, () => {
    if (on) doc.getMap('class').set(name, true);
    else doc.getMap('class').delete(name);
  });
}

/** Brings everybody to what that person looks at; null lets everybody go. */
export function setLook(doc: Y.Doc, look: LiveLook | null): void {
  edit(doc, () => {
    if (look) doc.getMap('class').set('look', { ...look });
    else doc.getMap('class').delete('look');
  });
}

/** Takes out a painting that left the board; when it was its turn, the next one begins. */
export function forgetTurn(doc: Y.Doc, pictureId: string, painterOf: PainterOf): void {
  const { order, now } = readClass(doc);
  edit(doc, () => {
    const map = doc.getMap('class');
    if (order.includes(pictureId))
      map.set(
        'order',
        order.filter((id) => id !== pictureId),
      );
    map.delete(HAD + pictureId);
    if (now?.pictureId === pictureId) beginNext(doc, painterOf);
  });
}

function beginNext(doc: Y.Doc, painterOf: PainterOf): void {
  const state = readClass(doc);
  for (const pictureId of toCome(state)) {
    const painterId = painterOf(pictureId);
    if (painterId === null) continue;
    begin(doc, { pictureId, painterId });
    return;
  }
  doc.getMap('class').delete('now');
}

function begin(doc: Y.Doc, { pictureId, painterId }: Turn): void {
  const { now, clock } = readClass(doc);
  const number = Math.max(now?.number ?? 0, clock?.number ?? 0) + 1;
  put(doc, { number, pictureId, painterId, step: 'silent', paused: false, opened: false });
}

function put(doc: Y.Doc, now: LiveNow): void {
  doc.getMap('class').set('now', now);
}

function change(doc: Y.Doc, part: Partial<Pick<LiveNow, 'paused' | 'opened'>>): void {
  const { now } = readClass(doc);
  if (now) edit(doc, () => put(doc, { ...now, ...part }));
}
