/**
 * The rising row of numbers that is nearest to a given one.
 *
 * In the flow: air per plane as seen -> [pool-adjacent] -> air that grows with distance. Pure.
 * Source: pool-adjacent-violators, Ayer, Brunk, Ewing, Reid & Silverman (1955), "An empirical distribution function
 * for sampling with incomplete information", Annals of Mathematical Statistics 26 (citation from memory).
 */

interface Block {
  mean: number;
  weight: number;
  length: number;
}

/**
 * Isotonic regression: minimises Σ weight · (result − value)² over rows that never fall.
 * @param weights one a value, each above 0.
 */
export function risingRow(values: readonly number[], weights: readonly number[]): number[] {
  const blocks: Block[] = [];
  values.forEach((value, at) => {
    let block: Block = { mean: value, weight: weights[at] as number, length: 1 };
    for (let before = blocks.at(-1); before && before.mean > block.mean; before = blocks.at(-1)) {
      blocks.pop();
      const weight = before.weight + block.weight;
      block = {
        mean: (before.mean * before.weight + block.mean * block.weight) / weight,
        weight,
        length: before.length + block.length,
      };
    }
    blocks.push(block);
  });
  return blocks.flatMap(({ mean, length }) => new Array<number>(length).fill(mean));
}
