/** German. The words of the page that shows contributors every shared part in every state. Pure. */
import type * as en from '../en/components.ts';
import { figure } from '../figures.ts';
import type { Worded } from '../worded.ts';

export const componentWords: Worded<typeof en.componentWords> = {
  title: 'Teile des Hauses',
  lead: 'Für alle, die mitbauen: jedes gemeinsame Teil in jedem Zustand, aus den Teilen selbst gemacht. Was hier nicht steht, ist nicht gemeinsam.',
  surround: 'Umgebung',
  surrounds: { mid: 'Mittelgrau', dark: 'Dunkelgrau', light: 'Hellgrau' },
  lightness: (value) => `L* ${figure(value, 1)}`,

  greys: 'Grautöne und die Akzentfarbe',
  type: 'Schrift',
  space: 'Abstände, Rundungen, Höhen',
  sample: 'Der ferne Kamm weicht zurück, 31,5',
  buttons: 'Knöpfe',
  fields: 'Felder',
  choices: 'Auswahl und Blätter',
  said: 'Was den Leuten gesagt wird',
  people: 'Leute und das Zeichen',
  over: 'Über einem Bild',

  states: {
    rest: 'in Ruhe',
    hover: 'unter dem Zeiger',
    focus: 'angesteuert',
    held: 'gedrückt gehalten',
    off: 'nicht zu haben',
    busy: 'bei der Arbeit',
  },
  weights: { main: 'Plan festhalten', quiet: 'Anders', word: 'Zurücknehmen' },
  busy: 'Wird festgehalten …',
  smallWord: 'ein kleines Wort',

  field: 'Name der Ebene',
  hint: 'So, wie du es jemandem neben dir sagen würdest.',
  trouble: 'Eine Ebene mit diesem Namen gibt es schon. Gib dieser einen anderen.',
  written: 'Ferner Kamm',
  kinds: ['Kamm', 'Wasser', 'Wiese'],
  kind: 'Was es ist',
  longer: 'Was du zuerst gesehen hast',
  tick: 'Es liegt Schnee',
  one: 'Eines von zweien',
  either: ['nach der Natur', 'nach einem Foto'],
  amount: 'Wie weit',

  leaves: { talk: 'Gespräch', planes: 'Ebenen', photo: 'Foto' },
  leafText: (name) => `Was unter „${name}“ liegt.`,
  choice: 'Von einigen gilt eines',

  notice: 'Das Gemälde wird gemessen; die Leiter folgt gleich.',
  refusal: 'Diese Datei hat 71 MB, und mehr als 60 MB werden nicht angenommen. Schick eine kleinere.',
  offline:
    'Die Verbindung ist seit 14:05 unterbrochen. Was du tust, bleibt auf diesem Gerät und wird gesendet, sobald sie wieder steht.',
  open: 'Ein Blatt über der Seite öffnen',
  dialog: 'Das Bild zurücknehmen?',
  dialogText: 'Niemand sieht es mehr, und die Anmerkungen darauf gehen mit.',
  late: 'Ein Teil holen, das sich nicht holen lässt',
  paper: 'Ein helleres Blatt, auf dem liegt, was zusammengehört.',
  scrolls: 'Ein Teil, das sich für sich seitwärts schieben lässt',

  persons: { own: 'Ada Fenwick', guide: 'Tor Ekelund', away: 'Ines Moray' },
  edge: 'Eine Grenze zum Ziehen, ein Ring um eine Stelle',
};
