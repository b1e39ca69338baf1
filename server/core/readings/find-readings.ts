/**
 * Findings of all rules with their severity and, where something mutes them, the reason.
 *
 * In the flow: scene -> rules -> [find] -> cards and priorities. Colour is withheld at grade C and without a grade.
 * Sorted: speaking before muted; findings before checks before questions; rank group; severity. Pure.
 */
import type { ReadingForm } from '../contract/critique.ts';
import { say } from '../say/say.ts';
import type { Finding, Rule } from './rule.ts';
import { RULES } from './rules.ts';
import type { Scene } from './scene.ts';

/** Times the threshold beyond which more makes no difference. */
const MOST_SEVERE = 3;

export interface Found extends Finding {
  rule: Rule;
  /** Difference over threshold, at most 3. */
  severity: number;
  /** Why it is not shown as a fault, or null. */
  muted: string | null;
}

const MEANT = say`The painter marked this as meant.`;

function conditionReason(scene: Scene, rule: Rule, finding: Finding): string | null {
  for (const condition of scene.setup.conditions) {
    const reason = rule.mutedBy[condition];
    if (reason && !finding.immuneTo?.includes(condition)) return reason;
  }
  return null;
}

function unreliableReason(scene: Scene, finding: Finding): string | null {
  // A plan is the painter's own figures: the photograph's faults do not reach it.
  if (scene.document.target !== 'reference') return null;
  const plane = scene.planes.find(({ name, unreliable }) => unreliable && finding.restsOn.includes(name));
  return plane ? say`The photo is not to be trusted at the ${plane.label}, says the teacher.` : null;
}

/** Meant everywhere (`V4`), or on a plane that this finding is about (`V4/massif`). */
function isMeant({ setup }: Scene, rule: Rule, finding: Finding): boolean {
  if (setup.meant.includes(rule.id)) return true;
  return finding.planes.some((plane) => setup.meant.includes(`${rule.id}/${plane}`));
}

function mutedReason(scene: Scene, rule: Rule, finding: Finding): string | null {
  if (isMeant(scene, rule, finding)) return MEANT;
  return conditionReason(scene, rule, finding) ?? unreliableReason(scene, finding);
}

const FORM_ORDER: Record<ReadingForm, number> = { finding: 0, check: 1, question: 2 };

function inOrder(one: Found, two: Found): number {
  return (
    Number(one.muted !== null) - Number(two.muted !== null) ||
    FORM_ORDER[one.form] - FORM_ORDER[two.form] ||
    one.rule.group - two.rule.group ||
    two.severity - one.severity
  );
}

/** Whether the grade lets a rule speak at all. */
export function maySpeak(scene: Scene, rule: Rule): boolean {
  return !(rule.colour && scene.noise.grade === 'C');
}

export function findReadings(scene: Scene): Found[] {
  return RULES.filter((rule) => maySpeak(scene, rule))
    .flatMap((rule) =>
      rule.find(scene).map((finding) => ({
        ...finding,
        rule,
        severity: Math.min(MOST_SEVERE, finding.difference / finding.threshold),
        muted: mutedReason(scene, rule, finding),
      })),
    )
    .sort(inOrder);
}
