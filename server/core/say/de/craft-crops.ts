/** German of frames: their formats, and why one is proposed. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const crops: Catalogue = {
  // Formats, said where they are shown.
  square: 'Quadrat',
  golden: 'goldener Schnitt',
  'golden upright': 'goldener Schnitt, hoch',
  '{0} in': '{0} Zoll',

  'The frame ({0}, {1}) to ({2}, {3}) does not lie inside the picture, 0 to 1. Move it inside.':
    'Der Ausschnitt ({0}; {1}) bis ({2}; {3}) liegt nicht im Bild, 0 bis 1. Schieb ihn hinein.',
  'The frame has {0} pixels on its shorter side; {1} are needed to paint from. Make it larger or take a larger photograph.':
    'Der Ausschnitt hat an der kürzeren Seite {0} Pixel; zum Malen danach sind {1} nötig. Mach ihn größer, oder stell ein größeres Foto ein.',
  'The picture has {0} by {1} pixels, and a frame needs {2} on its shorter side; no frames are proposed. Take a larger photograph.':
    'Das Bild hat {0} mal {1} Pixel, und ein Ausschnitt braucht {2} an der kürzeren Seite; keine Ausschnitte werden vorgeschlagen. Stell ein größeres Foto ein.',
  'Nothing in the picture stands out from its ground, so no frame is better than another; none is proposed.':
    'Nichts im Bild hebt sich von seinem Grund ab, darum ist kein Ausschnitt besser als der andere; keiner wird vorgeschlagen.',

  'Sky {0} %, nearest plane {1} % of the frame': 'Himmel {0} %, vorderste Ebene {1} % des Ausschnitts',
  '{0}: both over a third, so it is still wide.': '{0}: beide über einem Drittel, er ist also noch weit.',
  '{0}: one of them leads.': '{0}: Eines davon führt.',
  '{0}: neither takes a third.': '{0}: Keines nimmt ein Drittel ein.',
  'The horizon stands {0} % down, near the middle.': 'Der Horizont steht bei {0} % von oben, nahe der Mitte.',
  'The horizon stands {0} % down: the parts are unequal.':
    'Der Horizont steht bei {0} % von oben: Die Teile sind ungleich.',
  'Left and right weigh about the same (lever {0}).': 'Links und rechts wiegen etwa gleich (Hebel {0}).',
  'The weight lies to the left (lever {0}).': 'Das Gewicht liegt links (Hebel {0}).',
  'The weight lies to the right (lever {0}).': 'Das Gewicht liegt rechts (Hebel {0}).',
  "One thing is cut by the frame, the strongest at the picture's {0}.":
    'Der Rand schneidet etwas an, am stärksten im Bild {0}.',
  "{0} things are cut by the frame, the strongest at the picture's {1}.":
    'Der Rand schneidet {0} Dinge an, das stärkste im Bild {1}.',
  'None of the things that stand out is cut; all of them are inside.':
    'Nichts, was hervortritt, ist angeschnitten; alles liegt innen.',
  'None of the things that stand out is cut; {0} % of their weight is inside.':
    'Nichts, was hervortritt, ist angeschnitten; {0} % des Gewichts liegen innen.',
  'Your focus lies outside.': 'Dein Blickpunkt liegt außerhalb.',
  'What pulls most lies outside.': 'Was am stärksten zieht, liegt außerhalb.',
  'Your focus stands {0} % across and {1} % down.':
    'Dein Blickpunkt steht bei {0} % von links und {1} % von oben.',
  'What pulls most stands {0} % across and {1} % down.':
    'Was am stärksten zieht, steht bei {0} % von links und {1} % von oben.',
  '{0} or {1}': '{0} oder {1}',
  '{0} pixels are left to paint from.': '{0} Pixel bleiben zum Malen danach.',
  'It fills a canvas of {0}.': 'Er füllt eine Leinwand von {0}.',
};
