/** German. Pure. */
import type * as en from '../en/wall.ts';
import type { Worded } from '../worded.ts';

export const wallWords: Worded<typeof en.wallWords> = {
  titleOf: (board) => `Wand: ${board}`,
  back: 'Zurück zur Tafel',
  hidden: 'Die Namen sind verborgen. Dein eigenes Gemälde ist nur für dich gekennzeichnet.',
  shown: 'Die Namen sind für alle hier zu sehen.',
  show: 'Namen zeigen',
  hide: 'Namen wieder verbergen',
  yours: 'deins',
  laidAside: 'Schließen',
  withheld: 'Gemälde, die im Unterricht nicht gezeigt werden sollen, hängen hier nicht.',
  veiled:
    'Gerade schauen alle ein Gemälde für sich an. Tonwerte, Farben, Leitern und was zur Ferne gesagt ist, kommen, sobald die Vorlage an der Reihe ist.',
  offline:
    'Die Verbindung ist unterbrochen. Was hier hängt, bleibt; sobald sie wieder steht, kommt das Neue dazu.',

  question: {
    label: 'Frage des Tages',
    ask: 'Frage des Tages stellen',
    word: 'Anders fragen',
    field: 'Frage des Tages, für alle hier zu lesen',
    hint: 'Zum Beispiel: Wie zeigt jedes Gemälde die Ferne?',
    keep: 'Frage stellen',
  },

  few: {
    title: 'Eine Wand beginnt mit zwei Gemälden',
    text: 'Sobald mindestens zwei Gemälde dieses Motivs auf der Tafel sind, hängen sie hier nebeneinander in einer Größe: mit zusammengekniffenen Augen gesehen, in wenigen Tonwerten, mit ihren Farben und ihren Leitern. Stell auf der Tafel eines ein, oder bitte die anderen um ihres.',
  },

  choose: {
    open: 'Welche Gemälde',
    title: 'Welche Gemälde hängen',
    text: 'Das gilt nur für deinen Bildschirm. Die Buchstaben bleiben für alle gleich.',
    most: (most) => `Höchstens ${most} hängen nebeneinander: Nimm eines ab, um ein anderes aufzuhängen.`,
    least: 'Mindestens zwei hängen nebeneinander.',
    hang: (letter) => `Gemälde ${letter}`,
    state: (letter) => `Stand von Gemälde ${letter}`,
    newest: 'neuester Stand',
    stateNumber: (number) => `Stand ${number}`,
    more: 'Auf der Tafel sind mehr Gemälde, als hier hängen.',
  },

  rows: {
    label: 'Sehweisen',
    picture: 'Bild',
    squint: 'Blinzeln',
    values: 'Tonwerte',
    palette: 'Farben',
    ladder: 'Leiter',
    count: 'Wie viele Tonwerte',
    countOf: ['', '', 'zwei', 'drei', 'vier', 'fünf'],
    order: 'Reihenfolge der Farben',
    byValue: 'hell nach dunkel',
    byDepth: 'fern nach nah',
    none: 'Wähle mindestens eine Sehweise.',
  },
  painting: (letter) => `Gemälde ${letter}`,
  pictureOf: (letter) => `Gemälde ${letter}, entzerrt`,
  squintOf: (letter) => `Gemälde ${letter} mit halb geschlossenen Augen`,
  valuesOf: (letter, count) => `Gemälde ${letter} in ${count} Tonwerten`,
  paletteOf: (letter, order, colours) => `Farben von Gemälde ${letter}, ${order}: ${colours}`,
  colour: (words, share) => `${words}, ${share} des Gemäldes`,
  ladderOf: (letter, values) => `Leiter von Gemälde ${letter}, fern nach nah: ${values}`,
  value: (plane, value) => `${plane} ${value}`,
  large: (what) => `${what}: groß ansehen`,
  failed: 'Dieses Gemälde war nicht zu holen. Lade die Seite neu.',
  noDepth: 'Hier sind keine Ebenen umrissen, darum stehen die Farben von hell nach dunkel.',
  noLadder: 'Noch nicht gemessen: Erst müssen auf der Tafel seine Ebenen umrissen sein.',
  measuring: 'Wird gemessen …',

  ladders: {
    title: 'Alle Leitern zusammen',
    about:
      'Fern links, nah rechts, auf der Tonwertskala. Jedes Gemälde hat seine eigene Linie, kenntlich an Buchstabe und Muster.',
    part: 'Welcher Teil jeder Ebene',
    parts: { light: 'Lichter', mid: 'Mitte', dark: 'Dunkel' },
    reference: 'Vorlage',
    plan: 'Plan',
    table: 'Dasselbe in Zahlen',
    caption: (part) => `${part}: jede Ebene auf der Tonwertskala, 0 schwarz bis 10 weiß`,
    plane: 'Ebene',
    find: (letter) => `Linie von Gemälde ${letter} nach vorn holen`,
    none: 'Sobald die Ebenen von zwei Gemälden gemessen sind, stehen ihre Leitern hier in einem Schaubild.',
  },

  far: {
    title: 'Wie jedes die Ferne zeigt',
    air: 'Luftfarbe',
    airNone: 'keine Luftfarbe zu entnehmen: zu wenig Himmel ist umrissen',
    asPhotographed: 'wie fotografiert',
    orderOnly:
      'Wo im Foto eines Gemäldes nichts Neutrales steht, sind seine Farben wie fotografiert, und nur die Reihenfolge wird gesagt.',
    of: (plane) => plane,
    nothing: 'Was fern liegt, ließ sich hier nicht vergleichen.',
    target: {
      reference: 'Verglichen mit der Vorlage.',
      plan: 'Verglichen mit dem Plan.',
      none: 'Nach der Natur gemalt: Jede ferne Ebene ist mit der vordersten im selben Gemälde verglichen.',
    },
  },

  beside: {
    title: 'Zwei Gemälde groß',
    left: 'Erstes Gemälde',
    right: 'Zweites Gemälde',
    apart: 'Nebeneinander',
    over: 'Übereinander',
    close: 'Zurück zur Wand',
    how: 'Zieh die Kante dazwischen, oder bewege sie mit den Pfeiltasten.',
  },

  thing: {
    title: (letter) => `Eines aus Gemälde ${letter} zum Ausprobieren`,
    hint: 'Tippe im Gemälde dorthin, wo du es siehst. Dort wird es auf der Tafel zu einer Bemerkung von dir.',
    field: 'Was würdest du versuchen?',
    say: 'Sagen',
    saying: 'Wird gesagt …',
    said: (letter) => `Es steht jetzt bei Gemälde ${letter}, als Bemerkung von dir.`,
    place: 'Wo deine Bemerkung stehen wird',
    placed: 'Deine Bemerkung wird dort stehen, wo du getippt hast.',
  },
};
