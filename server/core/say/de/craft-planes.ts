/** German of planes: their outlines, their proposed names, and carrying them over to a painting. Pure. */
import type { Catalogue } from '../catalogue.ts';

/** Ending of an adjective before a noun, by its gender; of colours, which are all neuter, where none is listed. */
const ENDINGS: Readonly<Record<string, string>> = {
  Himmel: 'er',
  Wald: 'er',
  Schnee: 'er',
  Kamm: 'er',
  Hang: 'er',
  Boden: 'er',
  Gebäude: 'e', // several
};

/** `ferner Kamm`, `fernes Feld`. @param stem of the adjective. */
function before(stem: string): (noun: string) => string {
  return (noun) => `${stem}${ENDINGS[noun] ?? 'es'} ${noun}`;
}

export const planes: Catalogue = {
  // Names of proposed planes.
  'farthest {0}': before('fernst'),
  'far {0}': before('fern'),
  'far middle {0}': before('halbfern'),
  // Said of lightness too: "mittleres Blau".
  'middle {0}': before('mittler'),
  'near middle {0}': before('halbnah'),
  'near {0}': before('nah'),
  'nearest {0}': before('vorderst'),
  sky: 'Himmel',
  'upper sky': 'oberer Himmel',
  'middle sky': 'mittlerer Himmel',
  'lower sky': 'unterer Himmel',
  wood: 'Wald',
  water: 'Wasser',
  snow: 'Schnee',
  buildings: 'Gebäude',
  plain: 'Flachland',
  ridge: 'Kamm',
  slope: 'Hang',
  field: 'Feld',
  ground: 'Boden',

  // Why so many planes and no more.
  two: 'zwei',
  three: 'drei',
  four: 'vier',
  five: 'fünf',
  six: 'sechs',
  seven: 'sieben',
  '{0} planes': '{0} Ebenen',
  '{0} were asked for and one found: {1}': '{0} waren gewünscht, eine wurde gefunden: {1}',
  '{0} were asked for and {1} found: {2}': '{0} waren gewünscht, {1} wurden gefunden: {2}',
  'no further contour runs through the picture (0 left); split a plane by hand where you see one.':
    'Keine weitere Kontur läuft durch das Bild (0 übrig); teile eine Ebene von Hand, wo du eine siehst.',
  'a further plane would cover {0} % of the picture, too little to measure; draw it by hand if it matters.':
    'Eine weitere Ebene würde {0} % des Bildes bedecken, zu wenig zum Messen; zeichne sie von Hand, wenn sie wichtig ist.',
  'a further contour would part colours only {0} dE apart; split a plane by hand where you see more.':
    'Eine weitere Kontur würde Farben trennen, die nur {0} ΔE auseinanderliegen; teile eine Ebene von Hand, wo du mehr siehst.',
  "a further contour would run along only {0} % of the picture's width; split a plane by hand where you see it.":
    'Eine weitere Kontur liefe nur über {0} % der Bildbreite; teile eine Ebene von Hand, wo du sie siehst.',
  'what lies on both sides of a further contour looks much the same (its strength is {0}); split a plane by hand where you see one.':
    'Was zu beiden Seiten einer weiteren Kontur liegt, sieht fast gleich aus (ihre Stärke ist {0}); teile eine Ebene von Hand, wo du eine siehst.',
  'the picture is one even tone, its lightness varies by {0} L* only; choose one with more light and dark, or draw the planes by hand.':
    'Das Bild ist ein einziger gleichmäßiger Ton, seine Helligkeit schwankt nur um {0} L*; nimm eines mit mehr Hell und Dunkel, oder zeichne die Ebenen von Hand.',
  'the picture seems to show nothing but sky (100 % of it); draw a plane by hand if there is land in it.':
    'Das Bild scheint nur Himmel zu zeigen (100 % davon); zeichne eine Ebene von Hand, wenn Land darin ist.',
  'no contour runs through the picture with one tone above it and another below, though its lightness varies by {0} L*; draw the planes by hand.':
    'Keine Kontur läuft durch das Bild, über der ein Ton liegt und unter der ein anderer, obwohl seine Helligkeit um {0} L* schwankt; zeichne die Ebenen von Hand.',
  'One plane, since no contour runs through the picture that parts one tone from another.':
    'Eine Ebene, denn keine Kontur läuft durch das Bild, die einen Ton vom anderen trennt.',
  '{0}: each differs clearly from the next along its contour, and a further one would divide what looks much the same.':
    '{0}: Jede hebt sich entlang ihrer Kontur deutlich von der nächsten ab, und eine weitere würde teilen, was fast gleich aussieht.',
  '{0}: each differs clearly from the next along its contour, and more than seven are never proposed.':
    '{0}: Jede hebt sich entlang ihrer Kontur deutlich von der nächsten ab, und mehr als sieben werden nie vorgeschlagen.',

  // Outlines.
  "The outline of '{0}' has 1 point. An outline needs at least 3; add some.":
    'Der Umriss von „{0}“ hat 1 Punkt. Ein Umriss braucht mindestens 3; füge welche hinzu.',
  "The outline of '{0}' has {1} points. An outline needs at least 3; add some.":
    'Der Umriss von „{0}“ hat {1} Punkte. Ein Umriss braucht mindestens 3; füge welche hinzu.',
  "The outline of '{0}' has point {1} at ({2}, {3}). Points are fractions of the picture, 0 to 1; move it inside.":
    'Im Umriss von „{0}“ liegt Punkt {1} bei ({2}; {3}). Punkte sind Bruchteile des Bildes, 0 bis 1; schieb ihn hinein.',
  "The outline of '{0}' crosses itself between points {1} and {2}. Move one of them.":
    'Der Umriss von „{0}“ kreuzt sich selbst zwischen den Punkten {1} und {2}. Verschieb einen davon.',
  "The outline of '{0}' has {1} points on one line and so no area. Move one of them off the line.":
    'Der Umriss von „{0}“ hat {1} Punkte auf einer Linie und so keine Fläche. Schieb einen davon von der Linie weg.',

  // Carrying planes over.
  'The planes would be {0} times as wide and {1} times as high. Between {2} and {3} times is possible; make them smaller or larger.':
    'Die Ebenen wären {0}-mal so breit und {1}-mal so hoch. Möglich ist das {2}- bis {3}-fache; mach sie kleiner oder größer.',
  'The planes would lie wholly outside the painting. Move them so that they touch it.':
    'Die Ebenen lägen ganz außerhalb des Gemäldes. Verschieb sie so, dass sie es berühren.',
  "'{0}' lies outside what the painting shows, so it is left out.":
    '„{0}“ liegt außerhalb dessen, was das Gemälde zeigt, und wird weggelassen.',
  "The ridge of '{0}' could not be laid on the painting in one piece, so it is left out. Draw it by hand.":
    'Der Kamm von „{0}“ ließ sich nicht in einem Stück auf das Gemälde legen und wird weggelassen. Zeichne ihn von Hand.',
  'The painting is nearly one even tone (lightness varies by {0} L*), so nothing shows where the planes belong. They lie as in the other picture; move them by hand.':
    'Das Gemälde ist fast ein einziger gleichmäßiger Ton (die Helligkeit schwankt um {0} L*), darum zeigt nichts, wohin die Ebenen gehören. Sie liegen wie im anderen Bild; verschieb sie von Hand.',
  'The two pictures have too little in common to find where the planes belong. They lie as in the other picture; move them by hand.':
    'Die zwei Bilder haben zu wenig gemeinsam, um zu finden, wohin die Ebenen gehören. Sie liegen wie im anderen Bild; verschieb sie von Hand.',
  'Hardly any ridge found its edge. The painting may show something else, or the planes lie in another place; move them by hand, or draw them anew.':
    'Kaum ein Kamm hat seine Kante gefunden. Vielleicht zeigt das Gemälde etwas anderes, oder die Ebenen liegen an anderer Stelle; verschieb sie von Hand, oder zeichne sie neu.',
};
