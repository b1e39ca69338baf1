/** German. Words of the value plans: how many values, where they are cut, thumbnails to take away. Pure. */
import type * as en from '../en/plan-values.ts';
import { figure } from '../figures.ts';
import type { Worded } from '../worded.ts';

export const valueWords: Worded<typeof en.valueWords> = {
  eyes: 'Wie weit die Augen zu sind',
  closed: ['ein wenig offen', 'halb zu', 'fast zu'],
  plans: 'Pläne in zwei bis fünf Tonwerten',
  names: { 2: 'Zwei Tonwerte (Notan)', 3: 'Drei Tonwerte', 4: 'Vier Tonwerte', 5: 'Fünf Tonwerte' },
  settle: 'Nach diesem malen',
  settled: 'Nach diesem Plan wird gemalt',
  unsettle: 'Doch noch offen',
  cuts: 'Wo die Tonwerte geteilt sind',
  cut: (lower, upper) => `Teilung zwischen ${lower} und ${upper}`,
  cutAt: (lightness) => `Tonwert ${figure(lightness / 10, 1)}`,
  how: 'Zieh eine Teilung an der Skala entlang, oder bewege sie mit den Pfeiltasten. Teilungen gehören in die Täler über der Skala.',
  again: 'Neu teilen',
  shares: 'Anteile, von dunkel nach hell',
  waiting: 'Wird angesehen …',
  failed:
    'Die Vorlage ließ sich nicht holen, darum lässt sie sich nicht in Tonwerte fassen. Versuch es gleich noch einmal.',
  hide: 'Vorlage zeigen',
  show: 'Plan zeigen',
  sheet: {
    take: 'Die kleinen Bilder mitnehmen (PNG)',
    busy: 'Wird gezeichnet …',
    failed:
      'Das Blatt ließ sich auf diesem Gerät nicht zeichnen. Versuch es noch einmal oder mit weniger offenen Fenstern.',
    settled: 'zum Malen gewählt',
    /** Stands for a name of which no letter and no digit is left. */
    unnamed: 'ausschnitt',
    file: (name) => `tonwerte-${name}.png`,
  },
};
