/** German. Every word of the planned ladder: its handles, its air, what is taken and kept. Pure. */
import type * as en from '../en/plan-ladder.ts';
import type { Worded } from '../worded.ts';

const part = {
  light: 'Lichter',
  mid: 'Mitte',
  dark: 'Dunkel',
  chroma: 'Buntheit',
  warmCool: 'Warm–kühl',
};

export const planLadderWords: Worded<typeof en.planLadderWords> = {
  title: 'Geplante Leiter',
  photograph: 'Vorlage',
  plan: 'Plan',
  about: 'Zieh Lichter, Mitte oder Dunkel einer Ebene hinauf und hinunter, oder nimm dafür die Tasten.',
  working: 'Der Plan entsteht …',
  connecting: 'Die Ebenen werden geholt …',
  failed:
    'Die kleine Kopie der Vorlage ließ sich nicht holen, darum lässt sich nichts planen. Versuch es noch einmal.',
  noPlanes:
    'In dieser Vorlage ist noch keine Ebene umrissen. Umreiße sie auf der Tafel, von fern nach nah; dann wird hier ein Plan vorgeschlagen, der in die Tiefe führt.',
  toBoard: 'Auf der Tafel umreißen',
  part,
  handle: (which, plane) => `${part[which]} von „${plane}“`,
  value: (value) => `Tonwert ${value}`,
  handleKeys:
    'Pfeil auf und Pfeil ab verschieben um eine Zehntelstufe, Bild auf und Bild ab um eine halbe Stufe; Entf überlässt es wieder der Luft.',
  chroma: (chroma, times) => (times === '' ? `Buntheit ${chroma}` : `Buntheit ${chroma}, × ${times}`),
  warmCool: (amount, by) => (by === '' ? amount : `${amount}, um ${by} verschoben`),
  asAir: 'Der Luft überlassen',
  asAirOf: (plane) => `Der Luft überlassen: ${plane}`,
  allAsAir: 'Alle Ebenen der Luft überlassen',

  air: {
    title: 'Luftfarbe',
    about: 'Alles Ferne nähert sich ihr. Wie hell die Luft ist, bleibt wie in der Vorlage.',
    own: 'Die der Vorlage',
    likely: {
      blue: 'Blau',
      'blue-violet': 'Blauviolett',
      'red-violet': 'Rotviolett',
      'blue-green': 'Blaugrün',
      warm: 'Warm',
    },
    picked: 'Aufgenommen',
    pick: 'Aus dem Bild aufnehmen',
    picking:
      'Zeig auf den Himmel knapp über dem fernsten Kamm oder auf irgendeine Farbe, der sich die Ferne nähern soll.',
    pickKeys: 'Pfeiltasten bewegen den Punkt, Eingabe nimmt die Farbe auf, Esc bricht ab.',
    pickPoint: 'Wo die Luftfarbe aufgenommen wird',
    leave: 'Doch nicht',
    outside: 'Dieser Punkt liegt außerhalb des Bildes. Zeig auf eine Stelle im Bild.',
    unavailable: 'Die Farben des Bildes ließen sich nicht holen. Versuch es noch einmal.',
  },
  strength: {
    title: 'Wie viel Luft',
    as: 'wie in der Vorlage',
    usual: 'wie üblich',
    times: (times) => `${times} × das Übliche`,
  },
  count: {
    title: 'Ebenen im Plan',
    all: (planes) => `So, wie sie sind (${planes})`,
    some: (planes) => `${planes}`,
  },
  said: 'Was der Plan entschieden hat',
  nothingAmiss:
    'Der Plan führt in die Tiefe: Das Dunkel hellt sich zur Ferne hin auf, und keine zwei Ebenen verschmelzen.',

  take: 'Als Plan übernehmen',
  taken: 'Das ist der übernommene Plan.',
  takenAfter: 'Übernommen ist ein anderer Plan.',
  name: 'Ein Name dafür, wenn du magst',
  kept: {
    title: 'Übernommene Pläne',
    by: (name, when) => `${name}, ${when}`,
    somebody: 'Jemand von früher',
    unnamed: 'Ohne Namen',
    again: 'Wieder übernehmen',
    againOf: (name) => `Wieder übernehmen: ${name}`,
    forget: 'Vergessen',
    forgetOf: (name) => `Vergessen: ${name}`,
    now: 'gilt jetzt',
  },
};
