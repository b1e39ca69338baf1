/** German. Every word of weight and shapes: the beam, the published heaviness, what is worth a look. Pure. */
import type * as en from '../en/plan-weight.ts';
import type { Worded } from '../worded.ts';

export const planWeightWords: Worded<typeof en.planWeightWords> = {
  title: 'Gewicht',
  about:
    'Was sich von seinem Grund abhebt, zieht: umso mehr, je weiter es von der senkrechten Mitte liegt, wie bei einer Laufgewichtswaage.',
  beam: 'Der Waagbalken: welche Seite mehr wiegt',
  side: {
    left: 'Die linke Seite wiegt mehr.',
    right: 'Die rechte Seite wiegt mehr.',
    even: 'Die Seiten sind im Gleichgewicht.',
  },
  lever: (lever) => `Hebel ${lever}, von −1 (alles am linken Rand) bis +1 (alles am rechten).`,
  heaviness: (left, right) => `Schwere der Hälften: links ${left}, rechts ${right}.`,
  heavinessAbout:
    'Eine Zahl für sich, nach dem, was Menschen über Farben gesagt haben, auf einer Skala von schwer (+) bis leicht (−): Ou, Luo, Woodcock und Wright 2004. In den Hebel geht sie nicht ein.',
  ofFrame: (name) => `Im Ausschnitt „${name}“.`,
  ofRearranged: 'Für das Bild, wie du es umgestellt hast.',
  suggestions: 'Einen Blick wert',
  suggestionsAbout: 'Anregungen, niemals Fehler: Wähle eine, um sie im Bild zu sehen.',
  none: 'Nichts an den Formen verlangt einen zweiten Blick.',
  noPlanes:
    'Kämme werden betrachtet, sobald auf der Tafel Ebenen umrissen sind; das Gewicht wird auch ohne sie bestimmt.',
  whyWith: (why, source) => `${why} (${source})`,
  working: 'Wird gewogen …',
  failed: 'Die kleine Kopie der Vorlage ließ sich nicht holen. Versuch es später noch einmal.',
};
