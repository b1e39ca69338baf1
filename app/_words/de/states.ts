/** German. Every word about the states of one painting: the time line, before and after, what became of the cards. Pure. */
import type * as en from '../en/states.ts';
import { figure, percent } from '../figures.ts';
import type { Worded } from '../worded.ts';

const STEMS = ['erst', 'zweit', 'dritt', 'viert', 'fünft', 'sechst', 'siebt', 'acht', 'neunt', 'zehnt'];

/** "erster", "zweiten", "11.". @param at 0 = the first. @param ending As the sentence asks for it. */
const nth = (at: number, ending: 'er' | 'en') => {
  const stem = STEMS[at];
  return stem ? `${stem}${ending}` : `${at + 1}.`;
};

/** "Zweiter", for a beginning. */
const first = (at: number) => {
  const word = nth(at, 'er');
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
};

const label = (at: number) => `${first(at)} Stand`;

export const statesWords: Worded<typeof en.statesWords> = {
  link: 'Stände nebeneinander',
  title: (painter, caption) =>
    caption ? `„${caption}“, Stand für Stand` : `Gemälde von ${painter}, Stand für Stand`,
  back: (board) => `Zur Tafel „${board}“`,
  loading: 'Die Stände werden geholt …',
  one: 'Bisher gibt es von diesem Gemälde einen Stand. Stell das nächste Foto davon auf der Tafel als nächsten Stand ein, dann stehen hier beide nebeneinander.',

  line: {
    title: 'Der Zeit nach',
    label,
    open: (at) => `Den ${nth(at, 'en')} Stand mit dem davor vergleichen`,
    first: 'Der erste Stand: Davor gibt es keinen.',
    grade: (grade) => (grade === null ? 'Foto noch nicht beurteilt' : `Foto der Güte ${grade}`),
    ladder: (at) => `Leiter zum ${nth(at, 'en')} Stand, von fern nach nah`,
    rung: (name, dark, mid, light) => `„${name}“: Dunkel L* ${dark}, Mitte ${mid}, Lichter ${light}`,
    ghost: 'Gestrichelt: die Mitten des Standes davor.',
    since: 'Seit dem Stand davor',
    same: 'Keine Änderung über die Unsicherheit hinaus.',
    noFigures:
      'Zum Stand davor gibt es noch keine Zahlen, darum lässt sich nicht sagen, was sich geändert hat.',
    laying: 'Die beiden Fotos werden aufeinandergelegt …',
  },

  stage: {
    title: (from, to) => `${first(from)} und ${nth(to, 'er')} Stand, aufeinandergelegt`,
    ways: 'Wie sie gezeigt werden',
    wipe: 'Übereinander',
    turn: 'Abwechselnd',
    change: 'Was sich geändert hat',
    before: label,
    after: (at) => `${label(at)}, auf den früheren gelegt`,
    changed: 'Wo es heller oder dunkler geworden ist',
    shows: (at) => `Zu sehen: ${nth(at, 'er')} Stand`,
    hold: 'Halten, um den Stand davor zu sehen',
    holdKey: 'Die Taste B tut dasselbe, solange du sie hältst.',
    still: 'Anhalten',
    goOn: 'Abwechseln lassen',
    edge: 'Grenze zwischen den beiden Ständen',
    against: 'Verglichen mit',
    legend: (doubtL) =>
      `Grau ist, was sich nicht stärker geändert hat, als die Fotos erkennen lassen (${figure(doubtL, 0)} L*). Was heller als dieses Grau ist, wurde heller, was dunkler ist, wurde dunkler.`,
    shares: (lighter, darker) => `Heller auf ${percent(lighter)} der Fläche, dunkler auf ${percent(darker)}.`,
    nothing: 'Nichts hat sich stärker geändert, als die Fotos erkennen lassen.',
    missing: 'Die Bilder ließen sich nicht holen. Lade die Seite neu.',
  },

  cards: {
    title: 'Was aus den Ratschlägen geworden ist',
    last: 'Seit dem letzten Stand',
    none: 'Zum letzten Stand gab es keine Karte.',
    notYet: 'Das wird gesagt, sobald beide Stände ihre Ebenen haben und aufeinanderliegen.',
    eye: 'Dazu sagt keine Zahl etwas; schau selbst.',
    own: (words) => `„${words}“`,
    done: 'Damit fertig',
    carry: 'Weiter mitnehmen',
    reopen: 'Wieder öffnen',
    closed: 'Abgeschlossen.',
    carried: 'Geht mit zum nächsten Stand.',
    taken: 'Sie wurde angenommen.',
    label: (where) => `Was mit der Karte geschieht: ${where}`,
    before: (what) => `Letzter Stand: ${what}`,
  },

  planes: {
    offer: 'Ebenen des letzten Standes übernehmen',
    busy: 'Die Ebenen werden auf dieses Foto gelegt …',
    how: 'Sie liegen, wo sie lagen: Zuerst werden die beiden Fotos aufeinandergelegt.',
    done: (count) =>
      count === 1 ? 'Eine Ebene ist übernommen.' : `${figure(count, 0)} Ebenen sind übernommen.`,
  },
};
