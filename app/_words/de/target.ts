/** German. Every word of what paintings are held against. Pure. */
import type * as en from '../en/target.ts';
import type { Worded } from '../worded.ts';

export const targetWords: Worded<typeof en.targetWords> = {
  title: 'Verglichen werden die Gemälde mit',
  reference: 'der Vorlage',
  plan: 'dem Plan',
  none: 'Noch ist kein Plan übernommen: Verglichen werden die Gemälde mit der Vorlage.',
};
