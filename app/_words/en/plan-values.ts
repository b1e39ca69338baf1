/** Words of the value plans: how many values, where they are cut, thumbnails to take away. Pure. */
import { figure } from '../figures.ts';

export const valueWords = {
  eyes: 'How far the eyes are closed',
  closed: ['open a little', 'half closed', 'nearly shut'],
  plans: 'Plans in two to five values',
  names: { 2: 'Two values (notan)', 3: 'Three values', 4: 'Four values', 5: 'Five values' },
  settle: 'Paint from this one',
  settled: 'This is the plan to paint from',
  unsettle: 'Not settled after all',
  cuts: 'Where the values are cut',
  cut: (lower: string, upper: string) => `Cut between ${lower} and ${upper}`,
  cutAt: (lightness: number) => `value ${figure(lightness / 10, 1)}`,
  how: 'Pull a cut along the scale, or move it with the arrow keys. Cuts belong in the valleys above the scale.',
  again: 'Cut afresh',
  shares: 'Shares, dark to light',
  waiting: 'Looking …',
  failed: 'The photograph could not be fetched, so it cannot be put into values. Try again in a moment.',
  hide: 'Show the photograph',
  show: 'Show the plan',
  sheet: {
    take: 'Take the thumbnails away (PNG)',
    busy: 'Drawing …',
    failed: 'The sheet could not be drawn on this device. Try again, or with fewer windows open.',
    settled: 'to paint from',
    /** Stands for a name of which no letter and no digit is left. */
    unnamed: 'frame',
    file: (name: string) => `values-${name}.png`,
  },
} as const;
