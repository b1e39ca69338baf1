/**
 * The colour of the air that a ladder is planned with.
 *
 * In the flow: measured air + a person's choice + conditions -> [planned-air] -> amounts, rungs. Pure.
 */
import { warmCoolKernel } from '../../colour/temperature.ts';
import type { LikelyAir } from '../../contract/plan-wishes.ts';
import type { LabColour } from '../../contract/setup.ts';
import { say } from '../../say/say.ts';
import { FOG_AIR, LIKELY_AIRS, notShown, shownColour } from '../air/likely-airs.ts';
import type { LadderWishes } from './wishes.ts';

export interface PlannedAir {
  readonly air: LabColour;
  readonly notes: string[];
  /** A wish that had to give way: an air that no screen shows. */
  readonly amiss: string[];
}

/** A likely air says which colour; how light the air is stays as in the photograph, where that is known. */
function likely(name: LikelyAir, measured: LabColour | null): LabColour {
  const { L, a, b } = LIKELY_AIRS[name];
  return { L: measured?.L ?? L, a, b };
}

/** The air where a person picked none, and none can be measured. */
function stoodIn({ conditions }: LadderWishes): { air: LabColour; note: string } {
  if (conditions.includes('fog')) {
    const note = say`The photograph shows too little open sky to tell the colour of its air; the plan uses a grey one. Pick it in the picture.`;
    return { air: FOG_AIR, note };
  }
  if (conditions.includes('low-sun')) {
    const note = say`The photograph shows too little open sky to tell the colour of its air; the plan uses a warm one. Pick it in the picture.`;
    return { air: LIKELY_AIRS.warm, note };
  }
  const note = say`The photograph shows too little open sky to tell the colour of its air; the plan uses a blue one. Pick it in the picture.`;
  return { air: LIKELY_AIRS.blue, note };
}

/** @param measured air of the photograph, or null. */
export function plannedAir(measured: LabColour | null, wishes: LadderWishes): PlannedAir {
  const { air: wish, conditions, strength } = wishes;
  if (typeof wish === 'string' && wish !== 'photograph') return onScreen(likely(wish, measured));
  if (wish !== null && typeof wish === 'object') return onScreen(wish);
  if (!measured) {
    const { air, note } = stoodIn(wishes);
    return { air, notes: [note], amiss: [] };
  }
  // At strength 0 the plan is the photograph, whatever the hour.
  const turnsWarm = wish === null && conditions.includes('low-sun') && strength > 0;
  return turnsWarm && warmCoolKernel(measured.a, measured.b) <= 0
    ? onScreen(likely('warm', measured))
    : { air: measured, notes: [], amiss: [] };
}

function onScreen(asked: LabColour): PlannedAir {
  const air = shownColour(asked);
  const note = notShown(asked, air);
  return { air, notes: [], amiss: note === null ? [] : [note] };
}
