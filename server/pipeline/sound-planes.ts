/** Planes whose outlines can be measured, and a sentence for each that cannot. In the flow: setup -> [sound-planes] -> measuring, planning. Pure. */
import type { Setup } from '../core/contract/setup.ts';
import { checkOutline } from '../core/planes/check-outline.ts';
import { isProblem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';

export function soundPlanes(planes: Setup['planes']): { planes: Setup['planes']; leftOut: string[] } {
  const leftOut: string[] = [];
  const kept = planes.filter((plane) => {
    try {
      checkOutline(plane.name, plane.reference);
      if (plane.painting) checkOutline(plane.name, plane.painting);
      return true;
    } catch (thrown) {
      if (!isProblem(thrown)) throw thrown;
      leftOut.push(say`${thrown.message} Until then this plane is left out.`);
      return false;
    }
  });
  return { planes: kept, leftOut };
}
