/**
 * Adjustment cards: where, which part, direction, amount, how, why, how to check. One card a plane.
 *
 * In the flow: sorted findings -> [cards] -> priorities. The recession family (V4, V7, C1, C2) of a far plane meets
 * on one card, as does everything else about it; advice that would undo what the card already says is left out. Pure.
 */
import type { AdjustmentCard, CardAction } from '../contract/critique.ts';
import { say } from '../say/say.ts';
import { wordsOfLever } from './card-words.ts';
import type { Found } from './find-readings.ts';
import type { Grade } from './noise.ts';
import type { Lever } from './rule.ts';
import { type Move, undoesEachOther } from './undo.ts';
import { amountInWords } from './words.ts';

/** A card before it is put into words. */
export interface Draft {
  place: string;
  lead: Found;
  /** Findings that met here, the leading one first. */
  found: Found[];
  moves: Move[];
}

/** `photo`, `picture` or the plane's name with a mark before it, so that a plane called "photo" is none. */
function placeOf(lever: Lever): string {
  if (lever.part === 'photo') return 'photo';
  return lever.plane === null ? 'picture' : `plane:${lever.plane}`;
}

function moveOf(finding: Found, lever: Lever): Move {
  return { lever, compares: [...finding.planes, ...finding.restsOn] };
}

const sameAction = (one: Lever, two: Lever) => one.part === two.part && one.direction === two.direction;

/** Adds a finding's move to the card of its place, unless it would undo what the card says. */
function addMove(drafts: Map<string, Draft>, finding: Found, move: Move): void {
  const place = placeOf(move.lever);
  const draft = drafts.get(place);
  if (!draft) {
    drafts.set(place, { place, lead: finding, found: [finding], moves: [move] });
    return;
  }
  if (draft.moves.some((other) => undoesEachOther(other, move))) return;
  if (!draft.moves.some((other) => sameAction(other.lever, move.lever))) draft.moves.push(move);
  if (!draft.found.includes(finding)) draft.found.push(finding);
}

/** Findings (not questions or checks, not muted) merged by place, in their order. */
export function draftCards(readings: readonly Found[]): Draft[] {
  const drafts = new Map<string, Draft>();
  for (const finding of readings) {
    if (finding.muted !== null || finding.form !== 'finding') continue;
    for (const lever of finding.levers) addMove(drafts, finding, moveOf(finding, lever));
  }
  return [...drafts.values()];
}

function actionOf({ part, direction, amountL }: Lever, grade: Grade): CardAction {
  const { verb, by, how, mixes } = wordsOfLever(part, direction);
  const amount = amountL === null ? null : amountInWords(amountL, grade);
  return {
    part,
    direction,
    amount,
    amountL: amountL === null ? null : Math.abs(amountL),
    words: amount !== null && by ? by(amount) : verb,
    how,
    mixes,
  };
}

const WHERE: Record<string, string> = {
  photo: say`the photo of the painting`,
  picture: say`the whole picture`,
};

/** What `cardOf` needs besides the draft. */
export interface CardSurroundings {
  /** Names of the document's planes, far to near. */
  planes: readonly string[];
  grade: Grade;
  open: boolean;
  /** Drafts that this one would undo. */
  against: readonly Draft[];
}

function planeOf(draft: Draft): string | null {
  return WHERE[draft.place] ? null : (draft.moves[0]?.lever.plane ?? null);
}

function idOf(draft: Draft, planes: readonly string[]): string {
  const plane = planeOf(draft);
  return `${draft.lead.rule.id}-${plane === null ? draft.place : `plane-${planes.indexOf(plane) + 1}`}`;
}

/** Puts a draft into words. */
export function cardOf(draft: Draft, { planes, grade, open, against }: CardSurroundings): AdjustmentCard {
  const lever = draft.moves[0]?.lever;
  if (!lever) throw new Error('A card needs something to do.');
  const actions = draft.moves.map((move) => actionOf(move.lever, grade));
  const plane = planeOf(draft);
  return {
    id: idOf(draft, planes),
    readings: [...new Set(draft.found.map(({ rule }) => rule.id))],
    plane,
    where: plane ?? WHERE[draft.place] ?? '',
    actions,
    why: draft.lead.rule.why,
    check: wordsOfLever(lever.part, lever.direction).check,
    healthLine: actions.some(({ mixes }) => mixes),
    open,
    against: against.map((other) => idOf(other, planes)),
  };
}
