/** German of the sheets that people take away. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const sheet: Catalogue = {
  'Painting by {0}': 'Gemälde von {0}',
  '{0}, state {1} of {2}, posted {3}': '{0}, Stand {1} von {2}, eingestellt am {3}',
  '{0}, posted {1}': '{0}, eingestellt am {1}',
  'From the board “{0}”. Sheet of {1}.': 'Von der Tafel „{0}“. Blatt vom {1}.',
  'Reference: {0}': 'Vorlage: {0}',
  Reference: 'Vorlage',
  'Painted without a reference photograph.': 'Ohne Vorlage gemalt.',
  'The reference stays on the board: whoever posted it has not said that it may be taken along.':
    'Die Vorlage bleibt auf der Tafel: Wer sie eingestellt hat, hat nicht gesagt, dass man sie mitnehmen darf.',
  'What it is about': 'Worum es geht',
  'Not written down yet.': 'Noch nicht aufgeschrieben.',
  'Light and weather': 'Licht und Wetter',
  'Nothing special noted.': 'Nichts Besonderes vermerkt.',
  'against the light': 'Gegenlicht',
  'low sun': 'tief stehende Sonne',
  fog: 'dichter Nebel',
  'mist in the valley': 'Nebel im Tal',
  'foreground in cloud shadow': 'Vordergrund im Wolkenschatten',
  'a spot of sun': 'Sonnenfleck',
  'very clear air': 'sehr klare Luft',
  'smoke or dust': 'Rauch oder Staub',
  'a short distance': 'kurze Entfernung',
  night: 'Nacht',

  'Photo of the painting: {0}': 'Foto des Gemäldes: Güte {0}',
  'Photo of the painting: not graded yet': 'Foto des Gemäldes: noch ohne Güte',
  'Amounts hold to a quarter of a step.': 'Beträge sind auf eine Viertelstufe genau.',
  'Amounts hold to about half a step.': 'Beträge sind auf etwa eine halbe Stufe genau.',
  'Only their order is spoken of, no amounts, no colour.':
    'Nur von der Reihenfolge ist die Rede, nicht von Beträgen, nicht von Farbe.',
  'Against it: {0}.': 'Dagegen spricht: {0}.',
  'It is graded once planes are outlined.': 'Seine Güte steht fest, sobald Ebenen umrissen sind.',
  'This works': 'Das gelingt',
  'What works is named once the planes are measured. Until then: say one thing yourself.':
    'Was gelingt, wird genannt, sobald die Ebenen gemessen sind. Bis dahin: Nenne selbst eines.',
  'What to try, in this order': 'Was du versuchen kannst, der Reihe nach',
  'To check': 'Prüfe',
  'Nothing departs from its target by more than this photo can tell. Keep what works.':
    'Nichts weicht so weit von seinem Ziel ab, dass dieses Foto es sicher zeigt. Behalte, was gelingt.',
  'Painted from life: there is nothing to compare with, so nothing is asked to change.':
    'Nach der Natur gemalt: Es gibt nichts zum Vergleichen, darum soll sich nichts ändern.',
  'No adjustments yet. {0}': 'Noch keine Karten. {0}',

  // What was said to a card, and what became of a remark.
  'taken up': 'angenommen',
  'done another way': 'anders gemacht',
  left: 'bleibt so',
  tried: 'versucht',
  done: 'erledigt',
  'taken along to the next state': 'in den nächsten Stand mitgenommen',
  '{0}: “{1}”': '{0}: „{1}“',

  'Remarks on the painting': 'Bemerkungen zum Gemälde',
  Somebody: 'Jemand',
  'Nobody has marked the painting.': 'Niemand hat etwas am Gemälde angemerkt.',
  'One more remark stands on the board.': 'Eine weitere Bemerkung steht auf der Tafel.',
  '{0} more remarks stand on the board.': '{0} weitere Bemerkungen stehen auf der Tafel.',
  'What is drawn on the painting has no words.': 'Was auf dem Gemälde gezeichnet ist, hat keine Worte.',

  Ladder: 'Leiter',
  'far at the left, near at the right': 'links fern, rechts nah',
  'The painting against the reference.': 'Das Gemälde im Vergleich mit der Vorlage.',
  'The painting against the plan.': 'Das Gemälde im Vergleich mit dem Plan.',
  'The painting’s own values.': 'Die Tonwerte des Gemäldes selbst.',
  reference: 'Vorlage',
  plan: 'Plan',
  painting: 'Gemälde',
  'the photo is not to be trusted here': 'hier ist die Vorlage nicht verlässlich',
  'No ladder yet. {0}': 'Noch keine Leiter. {0}',

  // The sheet of a plan.
  'Plan for “{0}”': 'Plan zu „{0}“',
  'As it stood on {0}': 'Wie er am {0} war',
  'The photograph': 'Die Vorlage',
  'Frames and values': 'Ausschnitte und Tonwerte',
  'No frame was kept: this is the whole photograph.':
    'Kein Ausschnitt wurde behalten: Das ist die ganze Vorlage.',
  'The photograph stays on the board: whoever posted it has not said that it may be taken along.':
    'Die Vorlage bleibt auf der Tafel: Wer sie eingestellt hat, hat nicht gesagt, dass man sie mitnehmen darf.',
  'One more frame stands on the plan page.': 'Ein weiterer Ausschnitt steht auf der Seite des Plans.',
  '{0} more frames stand on the plan page.': '{0} weitere Ausschnitte stehen auf der Seite des Plans.',
  'free format': 'freies Format',
  '{0}, canvas {1}': '{0}, Leinwand {1}',
  'two values': 'zwei Tonwerte',
  'three values': 'drei Tonwerte',
  'four values': 'vier Tonwerte',
  'five values': 'fünf Tonwerte',
  '{0}, not settled yet': '{0}, noch nicht festgelegt',
  'Planned ladder': 'Geplante Leiter',
  'No ladder was planned yet. Plan one on the plan page, from the planes of the photograph.':
    'Noch keine Leiter ist geplant. Plane eine auf der Seite des Plans, aus den Ebenen der Vorlage.',
  'The air': 'Die Luft',
  'The photograph’s own air.': 'Die Luft der Vorlage selbst.',
  'From plane to plane': 'Von Ebene zu Ebene',
  photograph: 'Vorlage',
  'What the planes are meant to be.': 'Was die Ebenen werden sollen.',
  'about the same value': 'etwa derselbe Tonwert',
  stronger: 'kräftiger',
  '{0} to {1}: {2}': '{0} zu {1}: {2}',
  'Where […] stands, letters are not in the typeface of the sheet; the board shows them.':
    'Wo […] steht, fehlen Buchstaben in der Schrift des Blatts; die Tafel zeigt sie.',
};
