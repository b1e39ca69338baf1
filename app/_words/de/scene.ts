/** German. Every word of the light and weather of the scene, and of planes whose photo is not to be trusted. Pure. */
import type * as en from '../en/scene.ts';
import type { Worded } from '../worded.ts';

export const sceneWords: Worded<typeof en.sceneWords> = {
  title: 'Licht und Wetter vor dem Motiv',
  about: 'Was hier angekreuzt ist, lässt die Befunde schweigen, die bei solchem Licht ungerecht wären.',
  onlyLook:
    'Was für ein Licht es war, sagt, wem die Tafel gehört, wer unterrichtet oder wer den Server betreibt.',
  nothing: 'Nichts Ungewöhnliches ist vermerkt.',
  more: 'Sagen, was für ein Licht und Wetter es war',
  names: {
    snow: 'Schnee',
    'against-light': 'Gegenlicht',
    'low-sun': 'Tief stehende Sonne',
    fog: 'Dichter Nebel',
    'valley-mist': 'Nebel im Tal',
    'cloud-shadow': 'Vordergrund im Wolkenschatten',
    'sun-spot': 'Sonnenfleck',
    'clear-air': 'Sehr klare Luft',
    smoke: 'Rauch oder Staub',
    shallow: 'Kurze Entfernung',
    night: 'Nacht',
  },

  trust: {
    ask: 'Die Vorlage ist hier nicht verlässlich',
    why: 'Warum nicht?',
    change: 'Grund ändern',
    whyHint: 'Zum Beispiel: Der Schnee ist ausgefressen, oder die Kamera hat den Himmel zu dunkel gemacht.',
    keep: 'Ihr hier nicht trauen',
    keepChange: 'Grund behalten',
    leave: 'Jetzt nicht',
    again: 'Ihr wieder trauen',
    effect: 'Das Gemälde wird dann in dieser Ebene nicht mit der Vorlage verglichen.',
  },
};
