/** German. Pure. */
import type * as en from '../en/marks.ts';
import type { Worded } from '../worded.ts';

/** "Tove", "Tove und Pelle", "Tove, Pelle und Mina". */
function named(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} und ${last}`;
}

const MIDDLE = 'in der Mitte';

export const markWords: Worded<typeof en.markWords> = {
  kind: 'Art der Anmerkung',
  kinds: {
    pin: 'Punkt',
    stroke: 'Linie',
    arrow: 'Pfeil',
    outline: 'Kreis',
    text: 'Worte',
    patch: 'Farbe',
    sketch: 'Skizze',
  },
  /** What a mark is called when it is spoken of. */
  called: {
    pin: 'Bemerkung',
    stroke: 'Linie',
    arrow: 'Pfeil',
    outline: 'Kreis',
    text: 'Worte',
    patch: 'Farbe',
    sketch: 'Skizze',
  },
  /** In the place of words where a mark has none. */
  wordless: {
    pin: '',
    stroke: 'eine Linie',
    arrow: 'ein Pfeil',
    outline: 'ein Kreis',
    text: '',
    patch: 'eine Farbe',
    sketch: 'eine Skizze',
  },
  how: {
    pin: 'Drück auf die Stelle, die du meinst, und sag, was du siehst.',
    stroke: 'Zeichne auf dem Bild, oder setz Punkte und schließ ab. Deine Linie ist für alle zu sehen.',
    arrow: 'Zieh vom Ende zur Spitze, oder setz beide Enden.',
    outline: 'Zieh einen Kreis um das, was du meinst, oder setz Punkte ringsum und schließ ab.',
    text: 'Drück dorthin, wo die Worte stehen sollen, und schreib sie.',
    patch: 'Drück auf eine Farbe. Alle sehen sie mit ihren Maßen.',
    sketch: 'Mal, was du versuchen würdest. Es liegt über dem Gemälde und ändert nichts daran.',
  },
  keysOf: {
    pin: 'Pfeiltasten bewegen das Kreuz, Leertaste oder Eingabe setzt einen Punkt.',
    stroke:
      'Pfeiltasten bewegen das Kreuz, die Leertaste setzt einen Punkt der Linie, Eingabe schließt sie ab, Esc gibt sie auf.',
    arrow: 'Pfeiltasten bewegen das Kreuz, Leertaste oder Eingabe setzt erst das Ende, dann die Spitze.',
    outline:
      'Pfeiltasten bewegen das Kreuz, die Leertaste setzt einen Punkt des Kreises, Eingabe schließt ihn, Esc gibt ihn auf.',
    text: 'Pfeiltasten bewegen das Kreuz, Leertaste oder Eingabe legt fest, wo die Worte stehen.',
    patch: 'Pfeiltasten bewegen das Kreuz, Leertaste oder Eingabe nimmt dort die Farbe.',
    sketch:
      'Pfeiltasten bewegen das Kreuz, die Leertaste setzt einen Punkt des Strichs, Eingabe malt ihn, Esc gibt ihn auf.',
  },
  onlyLook:
    'Du darfst diese Tafel ansehen. Um in den Bildern etwas anzumerken, bitte die Person, der die Tafel gehört, um einen Link dafür.',
  say: { pin: 'Was siehst du hier?', text: 'Was soll hier stehen?' },
  send: 'Sagen',
  cancel: 'Jetzt nicht',
  finish: 'Abschließen',
  back: 'Punkt zurück',
  giveUp: 'Aufgeben',
  tooShort: 'Eine Linie braucht zwei Punkte, ein Kreis drei. Zeichne etwas weiter.',
  sayMore: 'Was meinst du damit? (wenn du magst)',
  keep: 'Festhalten',
  colourGone: 'Die Farbe ließ sich gerade nicht nehmen. Versuch es gleich noch einmal.',

  sketch: {
    colour: 'Farbe zum Malen',
    take: 'Aus dem Bild',
    taking: 'Drück in einem Bild auf eine Farbe …',
    takingKeys:
      'Pfeiltasten bewegen das Kreuz, Leertaste oder Eingabe nimmt dort die Farbe, Esc lässt es sein.',
    grey: (value) => `Grau mit Tonwert ${value}`,
    taken: 'Die genommene Farbe',
    width: 'Breite',
    cover: 'Deckkraft',
    another: 'Neue Skizze beginnen',
    allow: 'Andere dürfen über dieses Gemälde skizzieren',
    allowed: 'Andere dürfen über dieses Gemälde skizzieren.',
    notAllowed: (painter) =>
      `${painter} hat Skizzen über diesem Gemälde nicht erlaubt. Frag, bevor du über ein fremdes Bild malst.`,
    ownNotAllowed:
      'Skizzen über diesem Gemälde sind nicht erlaubt. Erlaube sie unter „Bemerkungen“, um hier selbst zu skizzieren.',
    onlyPaintings: 'Skizzieren lässt sich nur über einem Gemälde, nicht über einer Vorlage.',
    kept: 'Nur für dich aufgehoben: Skizzen über diesem Gemälde sind gerade nicht erlaubt.',
  },

  patch: {
    exact: 'wie die Vorlage sie zeigt',
    grade: (grade) => `Foto der Güte ${grade}`,
    withheld: 'Das Foto hat Güte C oder noch keine: Seine Farben sagen nichts in Zahlen.',
    value: (step) => `Tonwert ${step}`,
    lightness: (text) => `L* ${text}`,
    chroma: (text) => `Buntheit ${text}`,
    hue: (text) => `Farbton ${text}`,
    noHue: 'kaum ein Farbton',
    label: (words) => `Farbprobe: ${words}`,
  },

  label: (called, number, name, where, state, text) =>
    `${called} ${number} von ${name}, ${where}${state ? `, ${state}` : ''}${text ? `: ${text}` : ''}`,
  onPicture: { reference: 'Anmerkungen in der Vorlage', painting: 'Anmerkungen im Gemälde' },
  across: ['links', MIDDLE, 'rechts'],
  down: ['oben', MIDDLE, 'unten'],
  /** "oben links", "oben in der Mitte", "links in der Mitte", "in der Mitte". */
  spot: (down, across) => {
    if (down === across) return MIDDLE;
    return down === MIDDLE ? `${across} ${down}` : `${down} ${across}`;
  },
  where: (side, plane, spot) => `${side}, ${plane ? `${plane}, ` : ''}${spot}`,
  elsewhere: 'in einem Bild, das nicht gezeigt wird',
  sides: { reference: 'in der Vorlage', painting: 'im Gemälde' },

  /** Who said it first, and who brought it here from a file. */
  broughtIn: (from, author) => `${from}, hereingeholt von ${author}`,
  states: { open: 'offen', tried: 'versucht', done: 'erledigt', declined: 'bleibt so' },
  set: { open: 'Wieder offen', tried: 'Versucht', done: 'Erledigt', declined: 'So lassen' },
  setLabel: (number) => `Was aus Bemerkung ${number} wurde`,

  nod: 'Nicken',
  nodded: 'Du nickst',
  nodLabel: (name) => `Nicken zu dem, was ${name} sagt`,
  unnodLabel: (name) => `Das Nicken zurücknehmen zu dem, was ${name} sagt`,
  /** The same words for one and for many. @param others Names. */
  agree: (self, others) => `Einverstanden: ${named(self ? ['du', ...others] : others)}`,

  hide: 'Verbergen',
  unhide: 'Wieder zeigen',
  hideLabel: (name) => `Vor den anderen verbergen, was ${name} sagt`,
  unhideLabel: (name) => `Allen wieder zeigen, was ${name} sagt`,
  hidden: {
    own: 'Verborgen von der Person, die das Bild gemalt hat. Du siehst es noch, ebenso die Lehrperson und wer den Server betreibt.',
    others:
      'Verborgen. Noch sehen es: wer es gesagt hat, wer das Bild gemalt hat, die Lehrperson und wer den Server betreibt.',
  },
  plane: 'Ebene',
  noPlane: 'das ganze Bild',

  filter: {
    open: 'Bemerkungen auswählen',
    label: 'Welche Bemerkungen dieser Bildschirm zeigt',
    pictures: 'Bilder',
    these: 'Diese Bilder',
    all: 'Alle Bilder',
    whose: 'Wessen Anmerkungen zu sehen sind',
    everyone: 'Die von allen',
    noOnes: 'Keine',
    only: 'Nur diese',
    onlyLabel: (name) => `Nur diese: Anmerkungen von ${name}`,
    plane: 'Ebene',
    anyPlane: 'jede Ebene',
    noPlane: 'keine Ebene',
    state: 'Was daraus wurde',
    anyState: 'gleich was',
    sketches: 'Skizzen über dem Gemälde',
    clear: 'Alle zeigen',
    none: 'Keine Bemerkung passt zu deiner Auswahl. Zeig alle, oder wähle anders.',
    nobody: 'Noch hat niemand in diesen Bildern etwas angemerkt.',
    now: (parts) => `Zu sehen: ${parts.join(', ')}.`,
    people: (names) => (names.length === 0 ? 'von niemandem' : `von ${named(names)}`),
    but: (names) => `von allen außer ${named(names)}`,
  },

  keys: {
    mark: 'in den Bildern anmerken; noch einmal: die nächste Art',
    draw: 'mit einer Linie anmerken',
    arrow: 'mit einem Pfeil anmerken',
    loop: 'mit einem Kreis anmerken',
    text: 'Worte auf das Bild setzen',
    sample: 'eine Farbe mit ihren Maßen anmerken',
    sketch: 'über das Gemälde skizzieren',
    sketches: 'Skizzen an und aus',
  },
};
