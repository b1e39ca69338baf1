/**
 * Which cards are open by default: three at most, one a plane, none that undoes another.
 *
 * In the flow: drafts in rank order -> [priorities] -> document. Each open card is named by a reading whose first
 * entry in the list of readings stands on that card, so that an id leads to one plane. Pure. Source: measure.md
 * section 5; Hattie & Timperley 2007 on few and concrete next steps.
 */

import type { ReadingId } from '../contract/critique.ts';
import type { Draft } from './cards.ts';
import type { Found } from './find-readings.ts';
import { cardsUndoEachOther } from './undo.ts';

export const MOST_PRIORITIES = 3;

export interface Priority {
  id: ReadingId;
  draft: Draft;
}

function nameFor(draft: Draft, readings: readonly Found[], taken: readonly ReadingId[]): ReadingId | null {
  const fitting = draft.found.find((finding) => {
    const first = readings.find(({ rule }) => rule.id === finding.rule.id);
    return first === finding && !taken.includes(finding.rule.id);
  });
  return fitting?.rule.id ?? null;
}

/** @param drafts in rank order. @param readings sorted as `findReadings` gives them. */
export function prioritiesOf(drafts: readonly Draft[], readings: readonly Found[]): Priority[] {
  const open: Priority[] = [];
  for (const draft of drafts) {
    if (open.length === MOST_PRIORITIES) break;
    const undone = open.some((other) => cardsUndoEachOther(other.draft.moves, draft.moves));
    const id = nameFor(
      draft,
      readings,
      open.map((other) => other.id),
    );
    if (!undone && id) open.push({ id, draft });
  }
  return open;
}
