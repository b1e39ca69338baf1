/**
 * What each step of a turn allows, and for whom: the one table that the server's guard and the screens go by.
 * `DEVELOPERS.md` shows it; a test tries every cell through a y-websocket client.
 *
 * It only takes away: who may not write something by the permission table may not in a class either. Outside a running
 * turn it takes away nothing. The steps are common practice in live critique classes, no source. Pure.
 */
import type { LiveNow } from './shapes.ts';
import type { ClassState } from './state.ts';
import { STEPS, type Step } from './steps.ts';

/** What can be written on a board, as far as a turn is concerned. */
export const CLASS_WRITES = ['impression', 'marks', 'intention', 'work', 'cards', 'answers', 'said'] as const;
export type ClassWrite = (typeof CLASS_WRITES)[number];

/** teacher = who runs the class; painter = whose turn it is; others = everybody else. */
export const CLASS_WHO = ['teacher', 'painter', 'others'] as const;
export type ClassWho = (typeof CLASS_WHO)[number];

/** opened = once the teacher has let the others in. */
export type ClassCell = 'yes' | 'opened' | 'no';

const SIGNS = { '+': 'yes', '*': 'opened', '-': 'no' } as const;

/** @param cells One group a column of `CLASS_WRITES`, each with a sign for teacher, painter, others. */
function row(cells: string): Record<ClassWrite, Record<ClassWho, ClassCell>> {
  const groups = cells.split(' ');
  const columns = CLASS_WRITES.map((write, at) => {
    const signs = [...(groups[at] ?? '')];
    const who = CLASS_WHO.map((each, place) => {
      const sign = signs[place];
      if (sign !== '+' && sign !== '*' && sign !== '-') throw new Error(`No cell for ${write} of ${each}.`);
      return [each, SIGNS[sign]];
    });
    return [write, Object.fromEntries(who)];
  });
  return Object.fromEntries(columns); // one entry for each column and person, just made
}

/** Columns: first impression, marks, intention and focus, planes and photo, cards, answers, said back. */
export const STEP_TABLE: Record<Step, Record<ClassWrite, Record<ClassWho, ClassCell>>> = {
  silent: row('+++ --- --- --- --- --- ---'),
  intention: row('--- --- -+- --- --- --- ---'),
  strengths: row('--- +++ --- --- --- --- ---'),
  reference: row('--- +-- --- +-- --- --- ---'),
  priorities: row('--- +** --- +-- +-- --- ---'),
  actions: row('--- ++- --- --- +-- -+- ---'),
  'say-back': row('--- --- --- --- --- -+- -+-'),
};

/** Who writes, as the table sees them; a teacher whose own painting it is is both. */
export interface InClass {
  teaches: boolean;
  /** Whether it is this person's turn. */
  paints: boolean;
}

/** Whether the running turn lets this person write that. */
export function turnAllows(now: LiveNow, write: ClassWrite, { teaches, paints }: InClass): boolean {
  const row = STEP_TABLE[now.step][write];
  const cells: ClassCell[] = [];
  if (teaches) cells.push(row.teacher);
  if (paints) cells.push(row.painter);
  if (cells.length === 0) cells.push(row.others);
  return cells.some((cell) => cell === 'yes' || (cell === 'opened' && now.opened));
}

/** As above for a whole class: outside a turn everything, but marks where the marking is closed. */
export function classAllows(state: ClassState, write: ClassWrite, who: InClass): boolean {
  if (write === 'marks' && state.closed && !who.teaches) return false;
  return state.now === null ? write !== 'impression' : turnAllows(state.now, write, who);
}

/** A first impression is still taken for this long after its step, milliseconds: the last word was on its way. */
export const LAST_WORD_MS = 3000;

/** Whether somebody may write what they saw first in that painting now. @param nowMs By the server's clock. */
export function takesImpression({ now, shown }: ClassState, pictureId: string, nowMs: number): boolean {
  if (now?.pictureId !== pictureId) return false;
  if (now.step === 'silent') return true;
  const at = shown.get(pictureId);
  return now.step === 'intention' && (at === undefined || nowMs - at <= LAST_WORD_MS);
}

/** Roots of the board's setup that a turn does not concern. */
const BESIDE_THE_TURN: readonly string[] = ['hidden', 'wall'];

/** What a root of a room counts as in a turn; null = the turn does not concern it. */
export function classWriteOf(kind: 'setup' | 'marks' | 'painting', root: string): ClassWrite | null {
  if (kind === 'marks') return 'marks';
  if (kind === 'setup') return BESIDE_THE_TURN.includes(root) ? null : 'work';
  return PAINTING_WRITES[root] ?? null;
}

/** Hiding a remark and allowing sketches are the painter's own at any time. */
const PAINTING_WRITES: Record<string, ClassWrite> = {
  outlines: 'work',
  photo: 'work',
  frame: 'work',
  meant: 'answers',
  intention: 'intention',
  focus: 'intention',
  cards: 'cards',
  answers: 'answers',
  said: 'said',
};

/** Every step with every cell, for tables and tests. */
export function everyCell(): { step: Step; write: ClassWrite; who: ClassWho; cell: ClassCell }[] {
  return STEPS.flatMap((step) =>
    CLASS_WRITES.flatMap((write) =>
      CLASS_WHO.map((who) => ({ step, write, who, cell: STEP_TABLE[step][write][who] })),
    ),
  );
}
