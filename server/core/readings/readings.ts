/**
 * From figures to words: readings, neutral observations, three priorities, one thing that works, cards.
 *
 * In the flow: measure document + setup + picture facts -> [readings] -> document, screen, sheet. Same input, same
 * output. Pure. Definitions: measure.md section 5 and the trade notes, section 9.
 */

import type { AdjustmentCard, Observation, ReadingForm } from '../contract/critique.ts';
import type { Reading } from '../contract/measures.ts';
import { cardOf, type Draft, draftCards } from './cards.ts';
import { type Found, findReadings } from './find-readings.ts';
import { observationsOf } from './observations.ts';
import { prioritiesOf } from './priorities.ts';
import { type ReadingsInput, sceneOf } from './scene.ts';
import { cardsUndoEachOther } from './undo.ts';
import { type Works, worksOf } from './works.ts';

export interface ReadingsResult {
  /** Speaking before muted; findings before checks before questions; by rank group, then by severity. */
  readings: Reading[];
  /** `forms[i]` says what `readings[i]` is: a finding, a question, or a check without a target. */
  forms: ReadingForm[];
  observations: Observation[];
  /** Ids of the readings that lead the open cards, three at most, all different. */
  priorities: string[];
  works: Works | null;
  /** All cards in rank order; those of `priorities` are `open`. */
  cards: AdjustmentCard[];
}

function readingOf({ rule, form, planes, severity, sentence, muted }: Found): Reading {
  return { id: rule.id, form, planes, severity, sentence, why: rule.why, source: rule.source, muted };
}

/** Takes the document before its own `readings`, `priorities` and `works` are filled; it is not changed. */
export function readingsOf(input: ReadingsInput): ReadingsResult {
  const scene = sceneOf(input);
  const found = findReadings(scene);
  const drafts = draftCards(found);
  const priorities = prioritiesOf(drafts, found);
  const open = new Set(priorities.map(({ draft }) => draft));
  const planes = input.document.planes.map(({ name }) => name);
  const undoneBy = (draft: Draft) =>
    drafts.filter((other) => other !== draft && cardsUndoEachOther(draft.moves, other.moves));
  return {
    readings: found.map(readingOf),
    forms: found.map(({ form }) => form),
    observations: observationsOf(scene),
    priorities: priorities.map(({ id }) => id),
    works: worksOf(scene, found),
    cards: drafts.map((draft) =>
      cardOf(draft, {
        planes,
        grade: scene.noise.grade,
        open: open.has(draft),
        against: undoneBy(draft),
      }),
    ),
  };
}
