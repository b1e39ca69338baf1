/** German. Words of the frames: proposed ones, the one under the hand, those that were kept. Pure. */
import type { FramePart } from '#server/core/plan/crops/edit-frame.ts';
import type { HeavierSide } from '#server/core/plan/weight/balance.ts';
import type * as en from '../en/plan-frames.ts';
import { figure, percent } from '../figures.ts';
import type { Worded } from '../worded.ts';

const NAMED: Readonly<Record<string, string>> = {
  square: 'Quadrat',
  golden: 'Goldener Schnitt',
  'golden upright': 'Goldener Schnitt, hoch',
};

/** `14 × 11 Zoll` of a canvas that is sold as `14 x 11 in`; a format that has a name by its name. */
const times = (text: string) =>
  NAMED[text] ??
  text
    .replaceAll(' x ', ' × ')
    .replace(/(\d)\.(\d)/g, '$1,$2')
    .replace(/ in$/, ' Zoll');

const PARTS: Record<FramePart, string> = {
  nw: 'Ecke oben links',
  n: 'Obere Seite',
  ne: 'Ecke oben rechts',
  e: 'Rechte Seite',
  se: 'Ecke unten rechts',
  s: 'Untere Seite',
  sw: 'Ecke unten links',
  w: 'Linke Seite',
};

const SIDES: Record<HeavierSide, string> = {
  left: 'links',
  right: 'rechts',
  even: 'ausgeglichen',
};

export const frameWords: Worded<typeof en.frameWords> = {
  kept: {
    title: 'Behaltene Ausschnitte',
    none: 'Noch ist nichts behalten. Nimm einen Ausschnitt aus den Vorschlägen unten oder zeichne deinen eigenen; behalte ihn dann unter einem Namen.',
    whole: 'Die ganze Vorlage',
    name: 'Name dieses Ausschnitts',
    nth: (at) => `Ausschnitt ${at}`,
    remove: 'Weglassen',
    removeOf: (name) => `„${name}“ weglassen`,
    beside: 'Nebeneinander',
    besideEnd: 'Zurück zur Vorlage',
    besideLabel: 'Die behaltenen Ausschnitte nebeneinander',
    full: (most) =>
      `Diese Tafel behält ${most} Ausschnitte, und so viele sind es schon. Lass erst einen weg.`,
  },
  hand: {
    title: 'Dieser Ausschnitt',
    own: 'Eigenen zeichnen',
    keep: 'Ausschnitt behalten',
    away: 'Weglegen',
    format: 'Format',
    free: 'frei',
    plain: 'Formate',
    canvases: 'Handelsübliche Leinwände',
    holds: 'Format beim Ziehen halten',
    body: 'Der Ausschnitt: Pfeiltasten bewegen ihn, mit Umschalt weiter',
    part: (part) => `${PARTS[part]}: Pfeiltasten ziehen daran`,
    how: 'Zieh an einer Ecke, einer Seite oder am ganzen Ausschnitt; oder geh mit Tab dorthin und nimm die Pfeiltasten.',
    why: 'Warum er vorgeschlagen ist',
  },
  figures: {
    sky: 'Himmel',
    nearest: 'Vorderste Ebene',
    horizon: 'Horizont',
    weight: 'Gewicht',
    cut: 'Angeschnitten',
    pixels: 'Verbleibende Pixel',
    canvas: 'Füllt eine Leinwand von',
    share: (share) => percent(share),
    down: (share) => (share === null ? 'nicht im Ausschnitt' : `${percent(share)} von oben`),
    side: (side, lever) => `${SIDES[side]} (Hebel ${figure(lever, 2)})`,
    cutThings: (count) =>
      count === 0
        ? 'nichts Auffälliges'
        : count === 1
          ? 'eine auffällige Stelle, am Rand angezeigt'
          : `${count} auffällige Stellen, am Rand angezeigt`,
    size: (wide, high) => `${figure(wide, 0)} × ${figure(high, 0)}`,
    noCanvas: 'keine der üblichen',
    canvases: (names) => names.map(times).join('; '),
    waiting: 'Gerade wird geschaut, was wo liegt …',
    failed:
      'Die kleine Kopie dieser Vorlage ließ sich nicht holen, darum gibt es keine Zahlen. Versuch es gleich noch einmal.',
  },
  sheet: {
    title: 'Vorgeschlagen',
    label: 'Welche Ausschnitte gezeigt werden',
    ways: { all: 'Alle', lying: 'Quer', square: 'Quadrat', standing: 'Hoch' },
    more: (count) => `Noch ${count} zeigen`,
    one: (format, at) => `Vorgeschlagener Ausschnitt ${at}: ${times(format)}`,
    format: times,
    shares: (sky, nearest) => `Himmel ${percent(sky)}, nah ${percent(nearest)}`,
    none: 'Von dieser Art ist kein Ausschnitt vorgeschlagen.',
  },
  belongs: {
    title: 'Gemälde und ihre Ausschnitte',
    lead: 'Ein Gemälde, das nach einem Ausschnitt entstanden ist, wird nur mit diesem Ausschnitt verglichen.',
    of: (painting) => `Ausschnitt zu: ${painting}`,
    held: 'Verglichen mit',
    heldIn: (name) => `Verglichen mit dem Ausschnitt „${name}“.`,
    theFrame: (name) => `Ausschnitt „${name}“`,
    waiting: 'Das Gemälde wird geöffnet …',
  },
};
