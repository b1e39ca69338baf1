import { describe, expect, test } from 'vitest';
import { readingsOf } from '#server/core/readings/readings.ts';
import { type AScene, aScene, inputOf, of } from './a-scene.ts';

/** A pale sky far above three planes of nearly one value: [reference, painting] in L*, far to near. */
function paleSky(values: Record<string, [number, number]>): AScene {
  return aScene((scene) => {
    for (const [name, [seen, painted]] of Object.entries(values)) {
      const { reference, painting } = of(scene, name);
      Object.assign(reference, { dark: seen - 5, mid: seen, light: seen + 5 });
      Object.assign(painting, { dark: painted - 5, mid: painted, light: painted + 5 });
    }
  });
}

const jumping = (scene: AScene) => readingsOf(inputOf(scene)).readings.filter(({ id }) => id === 'V3');

describe('the one plane that jumps', () => {
  test('is the ridge that sank a step, not the sky that a line through the rest would put elsewhere', () => {
    const found = jumping(
      paleSky({ sky: [95, 95], 'far ridge': [62, 52], hill: [46, 45.5], 'near field': [45, 45] }),
    );
    expect(found.map(({ planes }) => planes)).toEqual([['far ridge']]);
    expect(found[0]?.sentence).toMatch(/too dark/);
  });
});
