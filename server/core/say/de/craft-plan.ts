/** German of planning: the ladder and its air, rearranged motifs, what the shapes of a picture suggest. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const plan: Catalogue = {
  'The photograph shows no planes behind one another.': 'Die Vorlage zeigt keine Ebenen hintereinander.',
  '{0} Frames and balance are given all the same.':
    '{0} Ausschnitte und Gleichgewicht werden trotzdem genannt.',

  // The ladder.
  'The strength of the planned air is 0 or more, not {0}.':
    'Die Stärke der geplanten Luft ist 0 oder mehr, nicht {0}.',
  "What is set by hand for '{0}' is a number, not {1}.":
    'Was für „{0}“ von Hand eingestellt ist, ist eine Zahl, nicht {1}.',
  'The {0} are planned as one plane.': 'Als eine Ebene geplant: „{0}“.',
  '{0} with the {1}': '{0} und {1}',
  'The photograph has no more: divide a plane, or add one.':
    'Die Vorlage hat nicht mehr: Teile eine Ebene, oder füge eine hinzu.',
  'Sky and land are never planned as one.': 'Himmel und Land werden nie als eine geplant.',
  'Planes in the plan: {0} instead of {1}. {2}': 'Ebenen im Plan: {0} statt {1}. {2}',
  'The plan leaves out the {0}.': 'Der Plan lässt „{0}“ weg.',
  "No plane is called '{0}', so what was set by hand for it changes nothing.":
    'Keine Ebene heißt „{0}“, darum ändert nichts, was dafür von Hand eingestellt wurde.',
  'No ladder is planned: no plane of the photograph could be measured. Outline its planes first.':
    'Keine Leiter ist geplant: Keine Ebene der Vorlage ließ sich messen. Umreiße zuerst ihre Ebenen.',
  'The {0} and the {1} come out with almost the same value and colour. Kept: {2}':
    '„{0}“ und „{1}“ bekommen fast denselben Tonwert und dieselbe Farbe. Das bleibt so: {2}',
  'The {0} and the {1} come out with almost the same value and colour: group them, or move one by half a step.':
    '„{0}“ und „{1}“ bekommen fast denselben Tonwert und dieselbe Farbe: Fass sie zusammen, oder verschieb eine um eine halbe Stufe.',
  'The darks of the {0} are about {1} darker than those of the {2} before it.':
    'Die Dunklen von „{0}“ sind etwa {1} dunkler als die von „{2}“ davor.',
  '{0} Kept as you set it.': '{0} Das bleibt so, wie du es eingestellt hast.',
  '{0} Kept: {1}': '{0} Das bleibt so: {1}',
  '{0} Lift them, group the two, or say why it is so.':
    '{0} Helle sie auf, fass die beiden zusammen, oder sag, warum es so ist.',
  'The planned air (L* {0}) is darker than the darks of the {1}, so more of it lowers them instead of lifting them.':
    'Die geplante Luft (L* {0}) ist dunkler als die Dunklen von „{1}“, darum werden sie durch mehr davon dunkler statt heller.',
  'In the {0}, {1} % would lie outside what a screen shows; it is planned as near to that as can be.':
    'In „{0}“ lägen {1} % außerhalb dessen, was ein Bildschirm zeigt; geplant ist es so nah daran wie möglich.',
  'the {0}': '„{0}“',
  'The photograph shows hardly any air between its planes, so the plan goes by their order. Move a plane if it stands elsewhere.':
    'Die Vorlage zeigt kaum Luft zwischen ihren Ebenen, darum richtet sich der Plan nach ihrer Reihenfolge. Verschieb eine Ebene, wenn sie woanders steht.',
  "The photograph doesn't tell for sure how much air lies before {0}.":
    'Bei {0} sagt die Vorlage nicht sicher, wie viel Luft davor liegt.',

  // The air.
  'The planned air has L* {0}; a screen shows 0 to 100, so it is planned with {1}.':
    'Die geplante Luft hat L* {0}; ein Bildschirm zeigt 0 bis 100, darum ist sie mit {1} geplant.',
  'The planned air lies outside what a screen shows: it is planned with C* {0} instead of {1}.':
    'Die geplante Luft liegt außerhalb dessen, was ein Bildschirm zeigt: Sie ist mit C* {0} statt {1} geplant.',
  'The photograph shows too little open sky to tell the colour of its air; the plan uses a grey one. Pick it in the picture.':
    'Die Vorlage zeigt zu wenig offenen Himmel, um ihre Luftfarbe zu bestimmen; der Plan nimmt eine graue. Nimm sie im Bild auf.',
  'The photograph shows too little open sky to tell the colour of its air; the plan uses a warm one. Pick it in the picture.':
    'Die Vorlage zeigt zu wenig offenen Himmel, um ihre Luftfarbe zu bestimmen; der Plan nimmt eine warme. Nimm sie im Bild auf.',
  'The photograph shows too little open sky to tell the colour of its air; the plan uses a blue one. Pick it in the picture.':
    'Die Vorlage zeigt zu wenig offenen Himmel, um ihre Luftfarbe zu bestimmen; der Plan nimmt eine blaue. Nimm sie im Bild auf.',

  // What the conditions of a scene do to the plan.
  'Snow is planned with the air that lies before it and not made lighter again.':
    'Schnee wird mit der Luft geplant, die davor liegt, und nicht noch einmal heller gemacht.',
  'A dark foreground and a warmer distance are kept.':
    'Ein dunkler Vordergrund und eine wärmere Ferne bleiben.',
  'Unless you picked one, the planned air is warm.':
    'Wenn du keine gewählt hast, ist die geplante Luft warm.',
  'The plan has fewer planes and twice the usual air between them.':
    'Der Plan hat weniger Ebenen und doppelt so viel Luft dazwischen wie üblich.',
  'Dark far summits are kept.': 'Dunkle ferne Gipfel bleiben.',
  'The shaded plane is kept as dark as it is.': 'Die Ebene im Schatten bleibt so dunkel, wie sie ist.',
  'The plane in the sun keeps its place and only takes its share of the air.':
    'Die Ebene in der Sonne behält ihren Platz und bekommt nur ihren Teil der Luft.',
  'Only half the usual air is added.': 'Nur halb so viel Luft wie üblich kommt hinzu.',
  'A quarter more than the usual air is added.': 'Ein Viertel mehr Luft als üblich kommt hinzu.',
  'Only a quarter of the usual air is added.': 'Nur ein Viertel der üblichen Luft kommt hinzu.',
  'The plan groups the land into two planes at most.':
    'Der Plan fasst das Land zu höchstens zwei Ebenen zusammen.',

  // Rearranging.
  'This loop leaves the picture on the left. Draw it inside the picture.':
    'Diese Schleife verlässt das Bild links. Zeichne sie im Bild.',
  'This loop leaves the picture on the right. Draw it inside the picture.':
    'Diese Schleife verlässt das Bild rechts. Zeichne sie im Bild.',
  'This loop leaves the picture on the top. Draw it inside the picture.':
    'Diese Schleife verlässt das Bild oben. Zeichne sie im Bild.',
  'This loop leaves the picture on the bottom. Draw it inside the picture.':
    'Diese Schleife verlässt das Bild unten. Zeichne sie im Bild.',
  'This loop has {0} points and encloses nothing. Draw it around the motif.': (points) =>
    `Diese Schleife hat ${points === '1' ? '1 Punkt' : `${points} Punkte`} und umschließt nichts. Zeichne sie um das Motiv.`,
  'This motif is {0} by {1} pixels; at least {2} each way are needed. Draw a larger loop.':
    'Dieses Motiv misst {0} mal {1} Pixel; mindestens {2} in jede Richtung sind nötig. Zeichne eine größere Schleife.',
  'This loop crosses itself. Draw it around the motif once, without crossing.':
    'Diese Schleife kreuzt sich selbst. Zeichne sie einmal um das Motiv, ohne zu kreuzen.',
  'This loop encloses almost nothing. Draw it around the motif.':
    'Diese Schleife umschließt fast nichts. Zeichne sie um das Motiv.',
  'The motif would leave the picture. Keep at least a tenth of it inside.':
    'Das Motiv würde das Bild verlassen. Lass mindestens ein Zehntel davon im Bild.',

  // What the shapes of a picture suggest.
  'The painter marked this as meant.': 'Wer malt, hat das als gewollt vermerkt.',
  'Look at your focus: it sits in the exact middle. Try a shift or another crop.':
    'Schau auf deinen Blickpunkt: Er sitzt genau in der Mitte. Versuch ihn zu verschieben, oder nimm einen anderen Ausschnitt.',
  'From the exact middle every side pulls alike, and the eye has nowhere to go.':
    'Von der genauen Mitte aus zieht jede Seite gleich, und das Auge weiß nicht, wohin.',
  'Look at your focus: it sits against the edge. Try a shift or another crop.':
    'Schau auf deinen Blickpunkt: Er sitzt dicht am Rand. Versuch ihn zu verschieben, oder nimm einen anderen Ausschnitt.',
  'What stands close to the frame leads the eye out of the picture.':
    'Was dicht am Rand steht, führt das Auge aus dem Bild.',
  'Look at the horizon: it cuts the picture in two equal parts. Try giving one more room.':
    'Schau auf den Horizont: Er teilt das Bild in zwei gleiche Teile. Versuch, einem mehr Raum zu geben.',
  'Unequal parts let one of them lead; two equal ones ask the eye to choose.':
    'Bei ungleichen Teilen führt einer; zwei gleiche lassen das Auge wählen.',
  'Look at the bands: three of them have the same height. Try making one of them win.':
    'Schau auf die Streifen: Drei sind gleich hoch. Versuch, einen überwiegen zu lassen.',
  'Unequal divisions, such as two to three or three to five, keep the eye moving.':
    'Ungleiche Teilungen, etwa zwei zu drei oder drei zu fünf, halten das Auge in Bewegung.',
  'Look at the balance: most of the pull is on the left. A small accent on the right would answer it.':
    'Schau auf das Gleichgewicht: Der Zug liegt vor allem links. Ein kleiner Akzent rechts würde antworten.',
  'Look at the balance: most of the pull is on the right. A small accent on the left would answer it.':
    'Schau auf das Gleichgewicht: Der Zug liegt vor allem rechts. Ein kleiner Akzent links würde antworten.',
  'A large weight near the middle is answered by a small one far out, as on a steelyard.':
    'Einem großen Gewicht nahe der Mitte antwortet ein kleines weit außen, wie bei einer Laufgewichtswaage.',
  'Look at the two places that compete: {0} and {1}. Choose one, and calm the other.':
    'Schau auf die zwei Stellen, die wetteifern: {0} und {1}. Wähle eine, und beruhige die andere.',
  'Two equal attractions make two pictures on one canvas.':
    'Zwei gleich starke Anziehungspunkte machen zwei Bilder auf einer Leinwand.',
  'Look at these things: they stand on one level and are of one size. Try moving one nearer or farther.':
    'Schau auf diese Dinge: Sie stehen auf einer Höhe und sind gleich groß. Versuch, eines näher oder ferner zu rücken.',
  'Equal things on one level make a row; standing at different heights they make depth.':
    'Gleiche Dinge auf einer Höhe bilden eine Reihe; auf verschiedenen Höhen schaffen sie Tiefe.',
  'Look at the {0}: it runs straight from edge to edge. Try breaking or varying it.':
    'Schau auf „{0}“: Die Kontur läuft gerade von Rand zu Rand. Versuch, sie zu brechen oder abzuwandeln.',
  'A level line across the whole picture bars the way in like a fence.':
    'Eine waagrechte Linie durch das ganze Bild versperrt den Weg hinein wie ein Zaun.',
  'Look at the {0}: it repeats the shape of the {1} behind it. Try varying one.':
    'Schau auf „{0}“: Die Form wiederholt die von „{1}“ dahinter. Versuch, eine abzuwandeln.',
  'Two contours of one shape read as one form drawn twice, and the depth between them goes.':
    'Zwei Konturen gleicher Form wirken wie eine Form, zweimal gezeichnet, und die Tiefe dazwischen geht verloren.',
  'Look at the peaks: one of the {0} stands right under one of the {1}. Try moving one aside.':
    'Schau auf die Gipfel: Einer von „{0}“ steht genau unter einem von „{1}“. Versuch, einen zur Seite zu rücken.',
  'Peak over peak makes a tower of two distances.': 'Gipfel über Gipfel macht aus zwei Fernen einen Turm.',
  'Look at the {0}: its contour just touches the upper edge of the picture. Try an overlap, or leave a gap.':
    'Schau auf „{0}“: Die Kontur berührt gerade den oberen Bildrand. Versuch eine Überschneidung, oder lass eine Lücke.',
  'Look at the {0}: its contour just touches the {1}. Try an overlap, or leave a gap.':
    'Schau auf „{0}“: Die Kontur berührt gerade „{1}“. Versuch eine Überschneidung, oder lass eine Lücke.',
  'Contours that kiss pull two distances into one; an overlap or a gap keeps them apart.':
    'Konturen, die sich eben berühren, ziehen zwei Fernen in eine; eine Überschneidung oder Lücke hält sie auseinander.',

  // Sources: authors and years stay.
  'Poore 1903 (the natural axis)': 'Poore 1903 (die natürliche Achse)',
  'Harrison 1909, p. 97': 'Harrison 1909, S. 97',
  'Poore 1903 (unequal divisions); Harrison 1909, pp. 94, 97':
    'Poore 1903 (ungleiche Teilungen); Harrison 1909, S. 94, 97',
  'Poore 1903 (unequal divisions)': 'Poore 1903 (ungleiche Teilungen)',
  'Poore 1903, ch. III': 'Poore 1903, Kap. III',
  'Harrison 1909, p. 89; Poore 1903, Appendix': 'Harrison 1909, S. 89; Poore 1903, Anhang',
  "Poore 1903, Appendix (Don'ts)": 'Poore 1903, Anhang (was zu meiden ist)',
};
