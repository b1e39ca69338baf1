/**
 * What changed from one state of a painting to the next, plane by plane, beyond what both photographs leave open.
 *
 * In the flow: documents of two states -> [changes] -> time line. Some thirty figures are looked at at once, so each has
 * to exceed three deviations: at two, one or two in thirty would by chance (normal, two-sided). Pure.
 */
import type { GapKey, MeasureDocument } from '../../contract/measures.ts';
import { type StateChange, TOLD } from '../../contract/moves.ts';
import { planeChange } from './plane-change.ts';

const SIGMAS = 3;
/** Figures of colour: not spoken of where a photograph does not carry them. */
const COLOUR: readonly GapKey[] = ['strong', 'warmCool', 'airDistance'];

type Documents = Pick<MeasureDocument, 'planes' | 'capture'>;

/** Planes far to near; of one plane at most what changed most in lightness, then colour, then detail. */
export function changesBetweenStates(earlier: Documents, later: Documents): StateChange[] {
  const atC = [earlier, later].some(({ capture }) => capture.grade === 'C' || capture.grade === null);
  return earlier.planes.flatMap(({ name }) =>
    TOLD.flatMap((key): StateChange[] => {
      if (atC && COLOUR.includes(key)) return [];
      const change = planeChange(earlier, later, name, key);
      if (!change || Math.abs(change.by) <= SIGMAS * change.sigma) return [];
      return [{ plane: name, key, from: change.from, by: change.by }];
    }),
  );
}
