/**
 * Whether the class on a board lets a writer leave the touched entry as it now is.
 *
 * In the flow: effect → judge-entries → [judge-class], after permission was asked. Pure: the time comes in.
 */
import { classAllows, classWriteOf, takesImpression } from '../core/class/allowed.ts';
import { type ClassState, silentPicture } from '../core/class/state.ts';
import type { Step } from '../core/class/steps.ts';
import { type RoomKind, roomKind } from '../core/live/document.ts';
import type { TouchedEntry } from '../core/live/effect.ts';
import type { RoomName } from '../core/live/layout.ts';
import type { Writer } from '../core/live/permission.ts';
import type { Refusal } from '../core/live/wire.ts';
import { may } from '../core/permissions/may.ts';
import { say } from '../core/say/say.ts';
import { REFUSALS } from './sentences.ts';

/** What is asked about. */
export interface ClassQuestion {
  state: ClassState;
  room: RoomName;
  writer: Writer;
  entry: TouchedEntry;
  /** Whether the entry is gone by the change: a mark may always be taken away by who may. */
  gone: boolean;
  /** By the server's clock. */
  nowMs: number;
}

export function refusedByClass(question: ClassQuestion): Refusal | null {
  const { state, room, entry, nowMs } = question;
  const kind = roomKind(room);
  if (kind === 'class') return null;
  if (kind !== 'silent') return refusedOnBoard(question, kind);
  return entry.key !== null && takesImpression(state, entry.key, nowMs) ? null : REFUSALS.noImpression();
}

function refusedOnBoard(
  { state, room, writer, entry, gone }: ClassQuestion,
  kind: Exclude<RoomKind, 'class' | 'silent'>,
): Refusal | null {
  const write = classWriteOf(kind, entry.root);
  if (write === null || (write === 'marks' && gone)) return null;
  const ofTurn = kind !== 'painting' || room === `painting/${state.now?.pictureId}`;
  // Other paintings are their painters' own business, but in the silent look nothing is written at all.
  if (!ofTurn && silentPicture(state) === null) return null;
  const who = {
    teaches: may(writer.role, 'room.class'),
    paints: state.now?.painterId === writer.personId,
  };
  if (classAllows(state, write, who)) return null;
  return state.now === null ? REFUSALS.markingClosed() : REFUSALS.notInStep(STEP_WORDS[state.now.step]);
}

/** Completes "This is the time for …". */
const STEP_WORDS: Record<Step, string> = {
  silent: say`looking in silence`,
  intention: say`the painter’s intention`,
  strengths: say`what works`,
  reference: say`the reference and its values`,
  priorities: say`what to do first`,
  actions: say`what will be tried`,
  'say-back': say`the painter to say back what they will do first`,
};
