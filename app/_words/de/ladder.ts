/** German. Every word of the ladder and its table. Pure. */
import type * as en from '../en/ladder.ts';
import type { Worded } from '../worded.ts';

export const ladderWords: Worded<typeof en.ladderWords> = {
  title: 'Leiter',
  about:
    'Links fern, rechts nah. Jeder Balken reicht vom Dunkel der Ebene hinauf zu ihren Lichtern, in ihren eigenen Farben.',
  axis: 'Tonwert',
  target: { reference: 'Vorlage', plan: 'Plan', none: '' },
  against: {
    reference: 'Das Gemälde im Vergleich mit der Vorlage.',
    plan: 'Das Gemälde im Vergleich mit dem Plan.',
    none: 'Nach der Natur gemalt: die eigenen Tonwerte des Gemäldes.',
  },
  painting: 'Gemälde',
  steps:
    'Eine Stufe ist ein Zehntel des Wegs von Schwarz nach Weiß (10 L*). Buntheit ist die Stärke einer Farbe, von Grau aufwärts (C*ab). Bei warm–kühl heißt + wärmer und − kühler. Feine Linien an den Balken und ± zeigen die Unsicherheit: In neun von zehn Fällen liegt der wahre Wert darin.',
  stepsOrderOnly:
    'Eine Stufe ist ein Zehntel des Wegs von Schwarz nach Weiß (10 L*). Nichts Neutrales im Foto des Gemäldes ist verlässlich, darum wird nur gesagt, was heller und was dunkler ist, und nichts zur Farbe. Feine Linien an den Balken zeigen die Unsicherheit.',
  preview: 'ungefähr, während du zeichnest',
  /** Where a bar stands, for those who do not see it. @param side Whose bar; values 0 black to 10 white. */
  barSaid: (side, dark, mid, light) => `${side}: Dunkel bei Tonwert ${dark}, Mitte ${mid}, Lichter ${light}.`,
  chooseOn: (name) => `„${name}“ auf den Bildern zeigen`,
  /** Where no amount may be said. */
  order: { lighter: 'heller', darker: 'dunkler', same: 'etwa gleich' },
  rows: { light: 'Lichter', mid: 'Mitte', dark: 'Dunkel', chroma: 'Buntheit', warmCool: 'Warm–kühl' },

  empty: {
    noPictures:
      'Sobald Bilder da und ihre Ebenen umrissen sind, steht hier jede Ebene auf der Skala der Tonwerte.',
    noPainting: 'Stell ein Gemälde ein, dann werden hier seine Ebenen gemessen.',
    noPlanes:
      'Umreiße die Ebenen, von fern nach nah. Dann wird jede gemessen und hier auf der Skala der Tonwerte gezeigt.',
    noPlanesDo: 'Erste Ebene von Hand umreißen',
    noPlanesLook:
      'Wer malt oder unterrichtet, umreißt die Ebenen; dann steht hier jede auf der Skala der Tonwerte.',
    measuring: 'Die Ebenen werden gemessen …',
    connecting: 'Die Ebenen werden geholt …',
  },

  tableCaption: {
    planes: 'Alle Messwerte, Ebene für Ebene, von fern nach nah',
    steps: 'Der Unterschied von jeder Ebene zur nächsten davor (nah − fern)',
    recession: 'Wie weit jede Ebene zurückweicht, verglichen mit dem Ziel (1 = ebenso weit)',
    whole: 'Das Bild als Ganzes',
  },
  column: {
    measure: 'Messgröße (Einheit)',
    plane: 'Ebene',
    planes: 'Von fern nach nah',
    gap: 'Abweichung',
    achieved: 'als eine Zahl (Verhältnis)',
    darks: 'nach dem Dunkel (Verhältnis)',
    spread: 'nach dem Kontrast (Verhältnis)',
    chroma: 'nach der Buntheit (Verhältnis)',
    air: 'nach dem Abstand zur Luftfarbe (Verhältnis)',
    notes: 'Hinweise',
  },
  measure: {
    share: 'Anteil am Bild (%)',
    dark: 'Dunkel: 5 % der Ebene sind dunkler (L*)',
    mid: 'Mitte (L*)',
    light: 'Lichter: 5 % der Ebene sind heller (L*)',
    spread: 'Lichter − Dunkel (L*)',
    munsellValue: 'Mitte auf der Tonwertskala nach Munsell (0–10)',
    chroma: 'Buntheit, Mitte (C*ab)',
    strong: 'Buntheit des kräftigsten Zehntels (C*ab)',
    hue: 'Farbtonwinkel (°)',
    a: 'a*, + rot, − grün',
    b: 'b*, + gelb, − blau',
    warmCool: 'warm–kühl, + warm, − kühl (Skala nach Ou)',
    detail: 'Feinheit (Verhältnis zum Kontrast)',
    edge: 'Kante zu dem, was dahinter liegt (L* je % der Breite)',
    airDistance: 'Abstand zur Luftfarbe (ΔE*ab)',
    airShare: 'Luftanteil (%)',
  },
  hues: 'Farbtöne dessen, was bunt ist (%)',
  hueFamily: {
    red: 'Rot',
    orange: 'Orange',
    yellow: 'Gelb',
    green: 'Grün',
    blue: 'Blau',
    violet: 'Violett',
  },
  step: {
    mid: 'Mitte (L*)',
    dark: 'Dunkel (L*)',
    light: 'Lichter (L*)',
    chroma: 'Buntheit (C*ab)',
    warmCool: 'Warm–kühl',
  },
  whole: {
    key: 'Grundton: um wie viel heller (+) oder dunkler (−) im Ganzen (L*)',
    span: 'Umfang, verglichen mit dem des Ziels (Verhältnis)',
    air: 'Luftfarbe (L*, a*, b*)',
  },
  notTaken: 'Wo sich etwas nicht messen ließ, steht ein Strich; die Hinweise sagen, warum.',
  between: (low, high) => `${low} bis ${high}`,
  intervals:
    'Hinter jeder Zahl stehen die Grenzen, zwischen denen der wahre Wert in neun von zehn Fällen liegt; das hängt davon ab, wie sehr die Ebene schwankt und wie verlässlich das Foto ist.',
  value: (value) => `Tonwert ${value}`,
  stepOff: (steps) => `${steps} Stufen`,
  doubt: (parts) => `± ${parts}`,
  doubtTitle: 'Um wie viel diese Zahlen danebenliegen können, in neun von zehn Fällen',
  untrusted: (reason) =>
    reason
      ? `Die Vorlage gilt hier nicht als verlässlich: ${reason}`
      : 'Die Vorlage gilt hier nicht als verlässlich.',
  views: 'Wie die Ebenen gezeigt werden',
  view: { ladder: 'Leiter', air: 'Luft', table: 'Tabelle' },
};
