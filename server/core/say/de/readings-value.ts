/** German of the readings of value, and of how far planes go back. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const value: Catalogue = {
  // Order and jumps
  '{0} the {1} is lighter than the {2}; you have them the other way round.':
    '{0} ist „{1}“ heller als „{2}“; bei dir ist es umgekehrt.',
  'Value order swapped': 'Tonwerte vertauscht',
  'The order of the big values carries the picture before anything else does.':
    'Die Ordnung der großen Tonwerte trägt das Bild vor allem anderen.',
  'Harrison 1909, ch. on values; Poore 1903': 'Harrison 1909, Kap. über Tonwerte; Poore 1903',
  'Everything else keeps its relation, but the {0} is{1} too light.':
    'Alles andere steht im richtigen Verhältnis, aber „{0}“ ist{1} zu hell.',
  'Everything else keeps its relation, but the {0} is{1} too dark.':
    'Alles andere steht im richtigen Verhältnis, aber „{0}“ ist{1} zu dunkel.',
  'One plane jumps': 'Eine Ebene springt heraus',
  'When all values agree but one, the eye goes to that one: the isolated false value is the worst.':
    'Wenn alle Tonwerte stimmen bis auf einen, geht der Blick zu diesem: Der einzelne falsche Tonwert stört am meisten.',

  // Planes merged
  'The {0} and the {1} share one value, {2} too. Should one sit behind the other?':
    '„{0}“ und „{1}“ haben denselben Tonwert, auch {2}. Soll eine dieser Ebenen hinter der anderen liegen?',
  "The {0} and the {1} have almost the same value here, so one can't sit behind the other.":
    '„{0}“ und „{1}“ haben hier fast denselben Tonwert, darum kann keine dieser Ebenen hinter der anderen liegen.',
  'Planes merged': 'Ebenen verschmolzen',
  'Two planes of one value and colour read as a single shape, and the space between them closes.':
    'Zwei Ebenen mit gleichem Tonwert und gleicher Farbe wirken wie eine einzige Form, und der Raum dazwischen schließt sich.',

  // Darks and lights on their way back
  'The darkest notes on the {0} are nearly as strong as the near ones. Lift them{1}.':
    'Die dunkelsten Töne in „{0}“ sind fast so stark wie die nahen. Helle sie{1} auf.',
  'Check: the darks on the {0} are heavier than on the {1}. Should they not be lighter?':
    'Prüfe: Die Dunklen in „{0}“ sind schwerer als in „{1}“. Sollten sie nicht heller sein?',
  'Distance darks too heavy': 'Dunkle in der Ferne zu schwer',
  'Air lifts the darks about five times as much as the lights, so depth is built in the darks.':
    'Luft hellt die Dunklen etwa fünfmal so stark auf, wie sie auf die Lichter wirkt; darum entsteht Tiefe in den Dunklen.',
  'Koschmieder 1924; the five times are our own calculation':
    'Koschmieder 1924; das Fünffache haben wir selbst berechnet',
  'Going back, the darks should lighten a little each time; between the {0} and the {1} they turn back.':
    'Nach hinten sollten die Dunklen jedes Mal ein wenig heller werden; zwischen „{0}“ und „{1}“ kehren sie um.',
  'From the {0} to the {1} the darks get heavier, {2} too. Does that help the depth?':
    'Von „{0}“ zu „{1}“ werden die Dunklen schwerer, auch {2}. Hilft das der Tiefe?',
  'Check: from the {0} to the {1} the darks get heavier. Should they not lighten?':
    'Prüfe: Von „{0}“ zu „{1}“ werden die Dunklen schwerer. Sollten sie nicht heller werden?',
  "Darks don't climb in steps": 'Dunkle werden nach hinten nicht heller',
  'Behind more air every dark is lighter than the dark in front of it.':
    'Hinter mehr Luft ist jedes Dunkel heller als das Dunkel davor.',
  'The lights on the {0} beat the foreground. Bring them down or warm-grey them slightly.':
    'Die Lichter in „{0}“ überstrahlen den Vordergrund. Nimm sie zurück oder mach sie leicht warmgrau.',
  'The lights on the {0} beat the foreground, {1} too. Should the eye go there?':
    'Die Lichter in „{0}“ überstrahlen den Vordergrund, auch {1}. Soll der Blick dorthin gehen?',
  'Check: the lights on the {0} beat those on the {1}. Is that where the sun falls?':
    'Prüfe: Die Lichter in „{0}“ überstrahlen die in „{1}“. Fällt dort die Sonne hin?',
  'Distance lights too strong': 'Lichter in der Ferne zu stark',
  'Through air, lights fall or hold; they never gain.':
    'Durch Luft werden Lichter schwächer oder bleiben gleich; stärker werden sie nie.',
  'Leonardo, Treatise (Rigaud 1802, ch. 287)': 'Leonardo, Treatise (Rigaud 1802, Kap. 287)',

  // Contrast and colour on their way back
  'The {0} has nearly as much light–dark contrast as the foreground. Close it up.':
    '„{0}“ hat fast so viel Hell-Dunkel-Kontrast wie der Vordergrund. Rück Hell und Dunkel dort zusammen.',
  'Check: the {0} has more light–dark contrast than the {1}. Is that meant?':
    'Prüfe: „{0}“ hat mehr Hell-Dunkel-Kontrast als „{1}“. Ist das so gewollt?',
  "Contrast doesn't narrow": 'Kontrast nimmt nach hinten nicht ab',
  'Contrast falls off exponentially through air, so a far plane has a shorter range than a near one.':
    'Kontrast nimmt durch Luft exponentiell ab, darum hat eine ferne Ebene einen kleineren Umfang als eine nahe.',
  'The {0} is almost as colourful as the foreground. Grey it with a little complement.':
    '„{0}“ ist fast so farbig wie der Vordergrund. Mach die Farbe mit etwas Komplementärfarbe grauer.',
  'Check: the {0} is more colourful than the {1}. Would you grey it a little?':
    'Prüfe: „{0}“ ist farbiger als „{1}“. Würdest du die Farbe etwas grauer machen?',
  'Distance too coloured': 'Ferne zu farbig',
  'A fall in strength of colour is one of the surest signs of distance.':
    'Dass Farbe schwächer wird, ist eines der sichersten Zeichen für Ferne.',
  "The {0} hasn't moved far enough toward the colour of the air.":
    '„{0}“ ist der Luftfarbe noch nicht nah genug.',
  'Check: the {0} stands farther from the colour of the air than the {1}. Is that meant?':
    'Prüfe: „{0}“ steht der Luftfarbe ferner als „{1}“. Ist das so gewollt?',
  'Not approaching the air': 'Nähert sich der Luftfarbe nicht',
  'Everything distant drifts toward the colour of the air; that is what the eye takes for depth.':
    'Alles Ferne nähert sich der Luftfarbe; das nimmt das Auge als Tiefe wahr.',
  'Romero et al. 2011; Leonardo, Treatise (Rigaud 1802, ch. 287)':
    'Romero et al. 2011; Leonardo, Treatise (Rigaud 1802, Kap. 287)',

  // Sky and surfaces
  'The sky is no lighter than the {0}, {1} too. Is that the light you want?':
    'Der Himmel ist nicht heller als „{0}“, auch {1}. Ist das das Licht, das du willst?',
  'The sky is not lighter than the {0} under it, though it lights the scene.':
    'Der Himmel ist nicht heller als „{0}“ darunter, obwohl er die Szene beleuchtet.',
  'Sky not the light source': 'Himmel nicht die Lichtquelle',
  'The sky lights the land, so flat ground under it is darker, save for snow, storm and a low sun.':
    'Der Himmel beleuchtet das Land, darum ist flacher Boden darunter dunkler, außer bei Schnee, Unwetter und tiefer Sonne.',
  'Parkhurst 1898, ch. XXXI': 'Parkhurst 1898, Kap. XXXI',
  'Uprights usually sit darker than flat ground; here the {0} outshines the {1}.':
    'Aufrechtes ist meist dunkler als flacher Boden; hier ist aber „{0}“ heller als „{1}“.',
  'Uprights usually sit darker than slanted ground; here the {0} outshines the {1}.':
    'Aufrechtes ist meist dunkler als schräger Boden; hier ist aber „{0}“ heller als „{1}“.',
  'The {0} outshines the {1}, {2} too. Does the light explain it?':
    '„{0}“ ist heller als „{1}“, auch {2}. Liegt das am Licht?',
  'Angle order broken': 'Helligkeit passt nicht zur Neigung',
  'Under general sky light, what faces the sky is lightest and what stands upright is darkest.':
    'Unter gleichmäßigem Himmelslicht ist am hellsten, was dem Himmel zugewandt ist, und am dunkelsten, was aufrecht steht.',
  'Leonardo, Notebooks (Richter 1883, 436); Parkhurst 1898, ch. XXXI':
    'Leonardo, Notebooks (Richter 1883, 436); Parkhurst 1898, Kap. XXXI',

  // Range
  'You use the darkest and lightest paint in several places; save them for the focus.':
    'Du nutzt die dunkelste und die hellste Farbe an mehreren Stellen; spar sie für den Blickpunkt auf.',
  'The darkest and lightest paint stand in several places, as {0}. Where should the focus be?':
    'Die dunkelste und die hellste Farbe stehen an mehreren Stellen, wie {0}. Wo soll der Blickpunkt sein?',
  'Check: the darkest and lightest paint stand in several places. Are they needed outside the focus?':
    'Prüfe: Die dunkelste und die hellste Farbe stehen an mehreren Stellen. Braucht es sie außerhalb des Blickpunkts?',
  'No reserve': 'Nichts aufgespart',
  'A picture that uses black and white everywhere has no air and nothing left for its focus.':
    'Ein Bild, das überall Schwarz und Weiß nutzt, hat keine Luft und nichts mehr übrig für seinen Blickpunkt.',
  'Harrison 1909, pp. 67-73': 'Harrison 1909, S. 67–73',
  'The picture stays in a narrow band of greys, {0}. Is it meant to be misty?':
    'Das Bild bleibt in einem engen Bereich von Grautönen, {0}. Soll es neblig wirken?',
  'The picture stays in a narrow band of greys. Fine if misty; if not, set one true dark and one true light.':
    'Das Bild bleibt in einem engen Bereich von Grautönen. Gut, wenn es neblig sein soll; sonst setz ein echtes Dunkel und ein echtes Licht.',
  'Short range': 'Kleiner Umfang',
  'One true dark and one true light give the eye the ends by which it reads all other values.':
    'Ein echtes Dunkel und ein echtes Licht geben dem Auge die Enden, an denen es alle anderen Tonwerte misst.',
  'Harrison 1909, pp. 67-73; common practice': 'Harrison 1909, S. 67–73; übliche Praxis',

  // Shapes
  'the darks': 'die Dunklen',
  'the half-tones': 'die Halbtöne',
  'the lights': 'die Lichter',
  'Squint: the big shapes break into small spots. Join {0} in the {1}.':
    'Kneif die Augen zusammen: Die großen Formen zerfallen in kleine Flecken. Verbinde {0} {1}.',
  'Squint: the big shapes break into small spots. Join {0}.':
    'Kneif die Augen zusammen: Die großen Formen zerfallen in kleine Flecken. Verbinde {0}.',
  'Squint: the big shapes break into small spots, {0} too. Could {1} be joined?':
    'Kneif die Augen zusammen: Die großen Formen zerfallen in kleine Flecken, auch {0}. Ließen sich {1} verbinden?',
  'Spotty values': 'Fleckige Tonwerte',
  'Failure comes from crumbling into many petty planes; a few big shapes carry.':
    'Ein Bild scheitert, wenn es in viele kleine Flächen zerbröckelt; wenige große Formen tragen.',
  'Poore 1903, ch. X': 'Poore 1903, Kap. X',
  'Light, middle and dark take equal room. Let one of them win.':
    'Licht, Mitte und Dunkel nehmen gleich viel Platz ein. Lass eines davon führen.',
  '{0} light, middle and dark take equal room. Which should win?':
    '{0} nehmen Licht, Mitte und Dunkel gleich viel Platz ein. Was soll führen?',
  'Check: light, middle and dark take equal room. Which should win?':
    'Prüfe: Licht, Mitte und Dunkel nehmen gleich viel Platz ein. Was soll führen?',
  'No dominant value': 'Kein Tonwert führt',
  'Unequal shares give a picture its mood: a quarter, a quarter and a half is an old guide, not a law.':
    'Ungleiche Anteile geben einem Bild seine Stimmung: ein Viertel, ein Viertel und die Hälfte sind eine alte Richtschnur, kein Gesetz.',
  'Reynolds, quoted in Poore 1903, ch. X': 'Reynolds, zitiert in Poore 1903, Kap. X',
};
