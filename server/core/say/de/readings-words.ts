/** German of the painter's words: steps, places, comparisons, observations, what works. Pure. */
import type { Catalogue } from '../catalogue.ts';

/** `zwei Stufen` with a part of a step: `zweieinhalb Stufen`; of a single step `eineinhalb Stufen`. */
const withPart = (whole: string, part: string): string =>
  `${whole.replace(/^eine Stufe$/, 'ein Stufen').replace(/ Stufen$/, '')}${part} Stufen`;

export const words: Catalogue = {
  // Planes and amounts
  'plane {0}': 'Ebene {0}',
  'about {0}': 'etwa {0}',
  'a touch': 'ein wenig',
  'a quarter step': 'eine Viertelstufe',
  'a quarter of a step': 'eine Viertelstufe',
  'half a step': 'eine halbe Stufe',
  'three quarters of a step': 'eine Dreiviertelstufe',
  'a step': 'eine Stufe',
  'one step': 'eine Stufe',
  'two steps': 'zwei Stufen',
  'three steps': 'drei Stufen',
  'four steps': 'vier Stufen',
  'five steps': 'fünf Stufen',
  'six steps': 'sechs Stufen',
  'seven steps': 'sieben Stufen',
  'eight steps': 'acht Stufen',
  'nine steps': 'neun Stufen',
  'ten steps': 'zehn Stufen',
  '{0} steps': '{0} Stufen',
  '{0} and a quarter': (whole = '') => withPart(whole, 'einviertel'),
  '{0} and a half': (whole = '') => withPart(whole, 'einhalb'),
  '{0} and three quarters': (whole = '') => withPart(whole, 'dreiviertel'),

  // Places in a picture: each can stand alone and after what lies there
  'upper left': 'oben links',
  'upper middle': 'oben in der Mitte',
  'upper right': 'oben rechts',
  'middle left': 'links in der Mitte',
  middle: 'in der Mitte',
  'middle right': 'rechts in der Mitte',
  'lower left': 'unten links',
  'lower middle': 'unten in der Mitte',
  'lower right': 'unten rechts',
  'One strong spot of red': 'Ein kräftiger roter Fleck',
  'One strong spot of orange': 'Ein kräftiger orangefarbener Fleck',
  'One strong spot of yellow': 'Ein kräftiger gelber Fleck',
  'One strong spot of green': 'Ein kräftiger grüner Fleck',
  'One strong spot of blue': 'Ein kräftiger blauer Fleck',
  'One strong spot of violet': 'Ein kräftiger violetter Fleck',

  // What a painting is compared with
  'in the photo': 'in der Vorlage',
  'in the plan': 'im Plan',
  'In the photo': 'In der Vorlage',
  'In the plan': 'Im Plan',
  'than the photo': 'als die Vorlage',
  'than the plan': 'als der Plan',
  'as the photo does': 'wie die Vorlage',
  'as the plan does': 'wie der Plan',
  'In picture and photo alike': 'Im Gemälde wie in der Vorlage',
  'In picture and plan alike': 'Im Gemälde wie im Plan',

  // How a plane stands to its target
  lighter: 'heller',
  darker: 'dunkler',
  '{0} lighter': '{0} heller',
  '{0} darker': '{0} dunkler',
  'darks {0}': 'Dunkel {0}',
  'lights {0}': 'Lichter {0}',
  '{0} than in the reference': '{0} als in der Vorlage',
  '{0} than planned': '{0} als geplant',
  warmer: 'wärmer',
  cooler: 'kühler',
  'stronger in colour': 'kräftiger in der Farbe',
  greyer: 'grauer',
  holds: 'stimmt',
  'holds, as far as this photo tells': 'stimmt, soweit dieses Foto es zeigt',
  'Declared unreliable: it is shown, but the painting is not compared with it.':
    'Als nicht verlässlich gekennzeichnet: Sie wird gezeigt, aber das Gemälde wird nicht mit ihr verglichen.',
  'In the plan the {0} is lighter than the {1}; here it is the other way round.':
    'Im Plan ist „{0}“ heller als „{1}“; hier ist es umgekehrt.',
  'In the reference the {0} is lighter than the {1}; here it is the other way round.':
    'In der Vorlage ist „{0}“ heller als „{1}“; hier ist es umgekehrt.',

  // How far a plane goes back; each phrase follows its name
  meant: 'gewollt',
  'of the reference’s way': 'des Weges der Vorlage',
  'of the planned way': 'des geplanten Weges',
  'of the way': 'des Weges',
  'goes back as far as {0}, as far as this photo tells':
    'weicht so weit zurück wie {0}, soweit dieses Foto es zeigt',
  'goes back farther than {0}': 'weicht weiter zurück als {0}',
  'goes back less far than {0}': 'weicht weniger weit zurück als {0}',
  'goes back into the air as far as {0}': 'weicht so weit in die Luft zurück wie {0}',
  'goes back farther into the air than {0}': 'weicht weiter in die Luft zurück als {0}',
  'comes forward instead of going back': 'kommt nach vorn, statt zurückzuweichen',
  'goes about a quarter {0} back into the air': 'weicht etwa ein Viertel {0} in die Luft zurück',
  'goes about half {0} back into the air': 'weicht etwa die Hälfte {0} in die Luft zurück',
  'goes about three quarters {0} back into the air': 'weicht etwa drei Viertel {0} in die Luft zurück',
  'hardly goes back into the air': 'weicht kaum in die Luft zurück',

  // Patches of colour
  neutral: 'neutral',
  greyed: 'vergraut',
  'of middling strength': 'mäßig kräftig',
  strong: 'kräftig',
  'neither warm nor cool': 'weder warm noch kühl',
  warm: 'warm',
  cool: 'kühl',
  'too near in value for this photo to tell': 'im Tonwert zu ähnlich für dieses Foto',
  'about as warm or cool': 'etwa gleich warm oder kühl',
  'about as strong': 'etwa gleich kräftig',

  // Observations
  'Colour readings and amounts are withheld: without a grey or white to trust, only the order of things is said.':
    'Befunde zur Farbe und genaue Beträge bleiben weg: Ohne verlässliches Grau oder Weiß wird nur gesagt, was heller und was dunkler ist.',
  'The painting sits in a higher key {0}. That is a choice.':
    'Das Gemälde hat einen helleren Grundton {0}. Das ist eine freie Wahl.',
  'The painting sits in a lower key {0}. That is a choice.':
    'Das Gemälde hat einen dunkleren Grundton {0}. Das ist eine freie Wahl.',
  'The painting sits in a higher key {0}, by about {1}. That is a choice.':
    'Das Gemälde hat einen um etwa {1} helleren Grundton {0}. Das ist eine freie Wahl.',
  'The painting sits in a lower key {0}, by about {1}. That is a choice.':
    'Das Gemälde hat einen um etwa {1} dunkleren Grundton {0}. Das ist eine freie Wahl.',
  'The painting uses a wider span of values {0}. That is a choice.':
    'Das Gemälde nutzt einen größeren Umfang an Tonwerten {0}. Das ist eine freie Wahl.',
  'The painting uses a narrower span of values {0}. That is a choice.':
    'Das Gemälde nutzt einen kleineren Umfang an Tonwerten {0}. Das ist eine freie Wahl.',
  'Colour is stronger all over than {0}. That is a choice.':
    'Die Farbe ist überall kräftiger als {0}. Das ist eine freie Wahl.',
  'Colour is quieter all over than {0}. That is a choice.':
    'Die Farbe ist überall ruhiger als {0}. Das ist eine freie Wahl.',
  'You used more air {0} on the {1}.': 'Du zeigst in „{1}“ mehr Luft {0}.',
  'The {0} is about {1} times as large as in the reference.':
    '„{0}“ ist etwa {1}-mal so groß wie in der Vorlage.',
  'The {0} takes more room than in the reference: {1} % instead of {2} %.':
    '„{0}“ nimmt mehr Platz ein als in der Vorlage: {1} % statt {2} %.',
  'The {0} takes less room than in the reference: {1} % instead of {2} %.':
    '„{0}“ nimmt weniger Platz ein als in der Vorlage: {1} % statt {2} %.',

  // What works
  'The {0} stands clear of its neighbours in value. Keep that.':
    '„{0}“ hebt sich im Tonwert klar von den Ebenen daneben ab. Das bleibt so.',
  'The {0} sits between the {1} and the {2} just as {3}. Keep that.':
    '„{0}“ liegt genau wie {3} zwischen „{1}“ und „{2}“. Das bleibt so.',
  'The {0} keeps its step to the {1}, just as {2}. Keep that.':
    '„{0}“ hält im Tonwert den Abstand zu „{1}“, genau wie {2}. Das bleibt so.',
  'The {0} keeps its value, just as {1}. Keep that.': '„{0}“ sitzt im Tonwert, genau wie {1}. Das bleibt so.',
  'The {0} keeps its value best of all the planes. Build on that.':
    '„{0}“ trifft den Tonwert am besten von allen Ebenen. Bau darauf auf.',

  // Why a reading is quiet
  'The photo is not to be trusted at the {0}, says the teacher.':
    'Die Vorlage ist in „{0}“ nicht verlässlich, sagt die Lehrperson.',
  'Snow is lighter than the air, so with distance its lights darken and warm.':
    'Schnee ist heller als die Luft, darum werden seine Lichter mit der Ferne dunkler und wärmer.',
  'Against the light near planes turn to silhouettes, and the distance can be lighter and warmer.':
    'Im Gegenlicht werden nahe Ebenen zu dunklen Umrissen, und die Ferne kann heller und wärmer sein.',
  'With a low sun the air itself is warm, so the distance warms instead of cooling.':
    'Bei tiefer Sonne ist die Luft selbst warm, darum wird die Ferne wärmer statt kühler.',
  'In fog the air is grey or white, and range, edges and colour are short.':
    'In dichtem Nebel ist die Luft grau oder weiß, und Umfang, Kanten und Farbe sind gering.',
  'Mist lying low hides the bases and leaves the summits dark and clear.':
    'Tief liegender Nebel verdeckt den Fuß der Berge und lässt die Gipfel dunkel und klar.',
  'A foreground in cloud shadow is darker and cooler than the middle by design.':
    'Ein Vordergrund im Wolkenschatten ist gewollt dunkler und kühler als der Mittelgrund.',
  'A spot of sun makes its plane the lightest and most coloured.':
    'Ein Sonnenfleck macht seine Ebene zur hellsten und farbigsten.',
  'In very clear air little changes for many miles.':
    'In sehr klarer Luft ändert sich über viele Kilometer wenig.',
  'Smoke and dust are brown or blue by what stands behind them.':
    'Rauch und Staub sind braun oder blau, je nachdem, was dahinter liegt.',
  'The scene is shallow: there is too little air between its planes to show.':
    'Die Szene hat wenig Tiefe: Zwischen ihren Ebenen liegt zu wenig Luft, um sichtbar zu werden.',
  'At night two or three values carry everything, and detail is gone.':
    'Nachts tragen zwei oder drei Tonwerte alles, und Feinheiten sind verschwunden.',
};
