/** German. Every word of the air view. Pure. */
import type * as en from '../en/air.ts';
import type { Worded } from '../worded.ts';

export const airWords: Worded<typeof en.airWords> = {
  about:
    'Die Luft zieht jede Farbe auf einer Kurve zu ihrer eigenen hin. Hier hat jede Ebene eine Spalte: nach oben heller, nach rechts kräftiger in der Farbe.',
  key: {
    plane: 'die Ebene',
    start: 'wo ihr Weg beginnt: die vorderste Ebene ihrer Art',
    air: 'die Luft',
    doubt: 'Unsicherheit',
  },
  chromaAxis: (most) => `Buntheit, von 0 (grau) bis ${most}`,
  plot: 'Von fern nach nah, auf dem Weg zur Luft',

  colour: {
    title: 'Luftfarbe',
    of: { reference: 'Vorlage', painting: 'Gemälde' },
    lab: (L, a, b) => `L* ${L}, a* ${a}, b* ${b}`,
    measured: 'gemessen',
    measuredTitle: 'Gemessen im Himmel knapp über dem fernsten Kamm',
    picked: 'von Hand aufgenommen',
    none: 'nicht gemessen: Zu wenig Himmel ist umrissen',
    pick: 'Aufnehmen',
    pickOf: {
      reference: 'Die Luftfarbe in der Vorlage aufnehmen',
      painting: 'Die Luftfarbe im Gemälde aufnehmen',
    },
    again: 'Neu aufnehmen',
    measure: 'Wie gemessen',
    measureOf: {
      reference: 'Zurück zur gemessenen Luftfarbe der Vorlage',
      painting: 'Zurück zur gemessenen Luftfarbe des Gemäldes',
    },
    stop: 'Jetzt nicht',
    how: 'Tippe dorthin, wo der Himmel auf den fernsten Kamm trifft: Das ist die Luftfarbe.',
    keys: 'Pfeiltasten bewegen das Kreuz, Eingabe nimmt die Luftfarbe auf, Esc bricht ab.',
    onlyLook: 'Die Luftfarbe nimmt auf, wem die Tafel gehört, wer unterrichtet oder wer den Server betreibt.',
    unavailable: 'Die Farben dieses Bildes ließen sich nicht holen. Versuch es gleich noch einmal.',
    outside: 'Das liegt außerhalb des Bildes.',
  },

  rows: {
    achieved: 'Zurückweichen, 1 = ebenso weit',
    airDistance: 'Weg zur Luft (ΔE)',
    airShare: 'Luftanteil',
  },
  sky: 'Hier, knapp über dem Kamm, wird die Luft gemessen.',
  skyPicked: 'Der Himmel selbst.',
  nearest: 'Die vorderste: Mit ihr werden die anderen verglichen.',
  noTarget: 'Nach der Natur gemalt: Nichts sagt, wie weit sie zurückweichen sollte.',
  noStep: 'Hier weicht die Vorlage für einen Vergleich zu wenig zurück.',
  noLight: 'Hier ließ sich zu wenig messen, um zu sagen, wie weit sie zurückweicht.',
  orderOnly:
    'Nichts Neutrales im Foto des Gemäldes ist verlässlich, darum können alle seine Farben gemeinsam verschoben sein: Die Orte sind so, wie fotografiert wurde, und nur die Reihenfolge wird gesagt. Liegt eine graue oder weiße Karte mit im Foto, lässt sich auch sagen, um wie viel.',
  noShare:
    'Für Himmel, Schnee und Gebautes wird kein Luftanteil bestimmt, denn sie können von sich aus blass sein.',
  noAir:
    'Ohne Luftfarbe lässt sich kein Weg zeichnen. Nimm sie dort auf, wo der Himmel auf den fernsten Kamm trifft.',
};
