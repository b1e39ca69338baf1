/** German of the wall: colours in words, and how far back the farthest plane goes. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const wall: Catalogue = {
  // Colours are nouns, all neuter.
  'very dark {0}': 'sehr dunkles {0}',
  'very dark, {0}': 'sehr dunkles, {0}',
  'dark {0}': 'dunkles {0}',
  'dark, {0}': 'dunkles, {0}',
  'middle, {0}': 'mittleres, {0}',
  'light {0}': 'helles {0}',
  'light, {0}': 'helles, {0}',
  'very light {0}': 'sehr helles {0}',
  'very light, {0}': 'sehr helles, {0}',
  'neutral grey': 'neutrales Grau',
  'greyed {0}': 'vergrautes {0}',
  'strong {0}': 'kräftiges {0}',
  'red-violet': 'Rotviolett',
  red: 'Rot',
  orange: 'Orange',
  yellow: 'Gelb',
  'yellow-green': 'Gelbgrün',
  green: 'Grün',
  'blue-green': 'Blaugrün',
  blue: 'Blau',
  'blue-violet': 'Blauviolett',
  violet: 'Violett',

  // "Ihre", "sie": of the plane.
  'in the reference': 'in der Vorlage',
  planned: 'geplant',
  'the reference’s way': 'des Weges der Vorlage',
  'the planned way': 'des geplanten Weges',
  'a quarter of {0}': 'ein Viertel {0}',
  'half of {0}': 'die Hälfte {0}',
  'three quarters of {0}': 'drei Viertel {0}',
  'Its darks lift as far as {0}.': 'Ihre Dunklen hellen sich so weit auf wie {0}.',
  'Its darks lift farther than {0}.': 'Ihre Dunklen hellen sich weiter auf als {0}.',
  'Its darks lift less far than {0}.': 'Ihre Dunklen hellen sich weniger weit auf als {0}.',
  'Its darks are heavier than those in front of it.': 'Ihre Dunklen sind schwerer als die davor.',
  'Its darks hardly lift.': 'Ihre Dunklen hellen sich kaum auf.',
  'Its darks lift about {0}.': 'Ihre Dunklen hellen sich um etwa {0} auf.',
  'Its colour greys as far as {0}.': 'Ihre Farbe vergraut so weit wie {0}.',
  'Its colour greys farther than {0}.': 'Ihre Farbe vergraut weiter als {0}.',
  'Its colour greys less far than {0}.': 'Ihre Farbe vergraut weniger weit als {0}.',
  'Its colour grows stronger instead of greying.': 'Ihre Farbe wird kräftiger, statt zu vergrauen.',
  'Its colour hardly greys.': 'Ihre Farbe vergraut kaum.',
  'Its colour greys about {0}.': 'Ihre Farbe vergraut um etwa {0}.',
  'It nears the colour of the air as far as {0}.': 'Sie kommt der Luftfarbe so nah wie {0}.',
  'It nears the colour of the air farther than {0}.': 'Sie kommt der Luftfarbe näher als {0}.',
  'It nears the colour of the air less far than {0}.': 'Sie kommt der Luftfarbe weniger nah als {0}.',
  'It leaves the colour of the air instead of nearing it.':
    'Sie entfernt sich von der Luftfarbe, statt sich ihr zu nähern.',
  'It hardly nears the colour of the air.': 'Sie nähert sich der Luftfarbe kaum.',
  'It goes about {0} toward the colour of the air.': 'Sie geht etwa {0} auf die Luftfarbe zu.',
  'Its colour is about as strong as the nearest plane’s.':
    'Ihre Farbe ist etwa so kräftig wie die der vordersten Ebene.',
  'Its colour is greyer than the nearest plane’s.': 'Ihre Farbe ist grauer als die der vordersten Ebene.',
  'Its colour is stronger than the nearest plane’s.':
    'Ihre Farbe ist kräftiger als die der vordersten Ebene.',
  'Its darks are about as dark as the nearest plane’s.':
    'Ihre Dunklen sind etwa so dunkel wie die der vordersten Ebene.',
  'Its darks are lighter than the nearest plane’s.': 'Ihre Dunklen sind heller als die der vordersten Ebene.',
  'Its darks are darker than the nearest plane’s.': 'Ihre Dunklen sind dunkler als die der vordersten Ebene.',
  'Its darks are {0} lighter than the nearest plane’s.':
    'Ihre Dunklen sind {0} heller als die der vordersten Ebene.',
  'Its darks are {0} darker than the nearest plane’s.':
    'Ihre Dunklen sind {0} dunkler als die der vordersten Ebene.',
};
