/** One line of the table that `npm run bench` prints. */
export interface BenchRow {
  name: string;
  measured: string;
  /** What it is held against, measured in the same run. */
  yardstick: string;
  ratio: string;
  target: string;
  /** Null where there is no target. */
  met: boolean | null;
}
