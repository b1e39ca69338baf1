/** German of photographing a painting, putting the photo right, and measuring it. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const photo: Catalogue = {
  // Reasons against a photo, said where they are shown.
  'no neutral': 'nichts Neutrales im Foto',
  clipping: 'ausgefressen oder zugelaufen',
  glare: 'Glanz',
  'uneven light': 'ungleichmäßiges Licht',
  crooked: 'schräg aufgenommen',
  'too small or soft': 'zu klein oder unscharf',
  'mixed light': 'Mischlicht',
  wet: 'nasse Farbe',
  'reference looks tone-mapped': 'Tonwerte der Vorlage wirken bearbeitet',
  'one cast over everything': 'ein Farbstich über allem',

  'Lay a grey card or plain white paper beside the painting, in the same light, and mark it here.':
    'Leg eine Graukarte oder einfaches weißes Papier neben das Gemälde, ins selbe Licht, und markiere sie hier.',
  'Tap the lightest part of the painting and photograph it a little darker; keep the darks open.':
    'Tippe auf die hellste Stelle des Gemäldes und fotografiere es etwas dunkler; das Dunkel soll offen bleiben.',
  'Tilt the painting or move the lamp to the side, until no wet gleam lies on it.':
    'Neige das Gemälde oder rück die Lampe zur Seite, bis kein nasser Glanz mehr darauf liegt.',
  'Stand in open shade, or put two like lamps at both sides, equally far away.':
    'Geh in den offenen Schatten, oder stell zwei gleiche Lampen auf beide Seiten, gleich weit entfernt.',
  'Hold the camera level with the middle of the painting, and square to it.':
    'Halte die Kamera auf Höhe der Mitte des Gemäldes und gerade davor.',
  'Let the painting fill the frame, take the photo as large as the camera makes it, rest your elbows, and focus on the paint.':
    'Lass das Gemälde das Foto füllen, nimm es so groß auf, wie die Kamera kann, stütz die Ellbogen auf und stell auf die Farbe scharf.',
  'Use one kind of light: switch off the lamp, or turn away from the window.':
    'Nimm nur eine Art von Licht: Schalte die Lampe aus, oder dreh dich vom Fenster weg.',
  'Let it dry and photograph it again; until then take the darks with a pinch of salt.':
    'Lass es trocknen und fotografiere es noch einmal; bis dahin trau den Dunklen nicht ganz.',
  'Use the photo as the camera first saw it, or trust your eyes between sky and land.':
    'Nimm das Foto so, wie die Kamera es zuerst sah, oder trau zwischen Himmel und Land deinen Augen.',
  'Mark a grey or white beside the painting, so that the lamp can be taken out.':
    'Markiere ein Grau oder Weiß neben dem Gemälde, damit sich die Farbe der Lampe herausnehmen lässt.',

  'Take the painting into open shade, out of the sun, without lamps.':
    'Bring das Gemälde in den offenen Schatten, aus der Sonne, ohne Lampen.',
  'Lay a grey card at its left side and another at its right, flat in the same light.':
    'Leg links und rechts davon je eine Graukarte hin, flach im selben Licht.',
  'Stand straight before it, fill the frame, and leave a rim of plain wall.':
    'Stell dich gerade davor, füll das Foto und lass einen Rand leerer Wand.',
  'Tap the lightest part to expose, hold still, and take two or three.':
    'Tippe zum Belichten auf die hellste Stelle, halte still und nimm zwei oder drei auf.',

  'Post a larger photo of it.': 'Stell ein größeres Foto davon ein.',
  'Step closer and photograph it again.': 'Geh näher heran und fotografiere es noch einmal.',
  'The painting is only {0} pixels on its shorter side in this photo; below {1} its figures are rough. {2}':
    'Das Gemälde misst in diesem Foto an der kürzeren Seite nur {0} Pixel; unter {1} sind seine Zahlen grob. {2}',

  // Figures of a plane.
  "{0} % of this plane is blown out: its middle and lights are at least this light, and its colour can't be told.":
    '{0} % dieser Ebene sind ausgefressen: Mitte und Lichter sind mindestens so hell, und ihre Farbe lässt sich nicht bestimmen.',
  '{0} % of this plane is blown out: its lights are at least this light.':
    '{0} % dieser Ebene sind ausgefressen: Ihre Lichter sind mindestens so hell.',
  '{0} % of this plane is blown out and counts as at least this light.':
    '{0} % dieser Ebene sind ausgefressen und zählen als mindestens so hell.',
  "{0} % of this plane is lost in black: its middle and darks are at most this light, and its colour can't be told.":
    '{0} % dieser Ebene sind zugelaufen: Mitte und Dunkel sind höchstens so hell, und ihre Farbe lässt sich nicht bestimmen.',
  '{0} % of this plane is lost in black: its darks are at most this light.':
    '{0} % dieser Ebene sind zugelaufen: Ihre Dunklen sind höchstens so hell.',
  '{0} % of this plane is lost in black and counts as at most this light.':
    '{0} % dieser Ebene sind zugelaufen und zählen als höchstens so hell.',
  "Together {0} % of this plane is clipped, so its colour can't be told.":
    'Zusammen sind {0} % dieser Ebene ausgefressen oder zugelaufen, darum lässt sich ihre Farbe nicht bestimmen.',
  'Glare covers {0} % of this plane and is left out.':
    'Glanz bedeckt {0} % dieser Ebene und bleibt außer Acht.',
  'Too grey to have a hue.': 'Zu grau für einen Farbton.',
  'Detail and edges need {0} pixels on the long side; this picture has {1}.':
    'Feinheit und Kanten brauchen {0} Pixel an der langen Seite; dieses Bild hat {1}.',
  'No edge: no farther plane lies clearly behind it.':
    'Keine Kante: Keine fernere Ebene liegt deutlich dahinter.',
  'No colour of the air: too little open sky above the farthest ridge. Pick it in the picture.':
    'Keine Luftfarbe: zu wenig offener Himmel über dem fernsten Kamm. Nimm sie im Bild auf.',
  'The share of air is not told for snow or buildings: they are pale by themselves.':
    'Der Luftanteil wird bei Schnee und Gebäuden nicht genannt: Sie sind von sich aus blass.',
  'Not measured: it covers {0} % of the picture; at least 1 % is needed.':
    'Nicht gemessen: Sie bedeckt {0} % des Bildes; mindestens 1 % ist nötig.',
  'Not measured: glare covers {0} % of it; at most 30 % may be lost. Photograph it again without the gleam.':
    'Nicht gemessen: Glanz bedeckt {0} % davon; höchstens 30 % dürfen fehlen. Fotografiere es noch einmal ohne den Glanz.',
  'Not measured: it is so narrow that nothing is left inside its rim (0.6 % of the long side).':
    'Nicht gemessen: Sie ist so schmal, dass innerhalb ihres Randes nichts bleibt (0,6 % der langen Seite).',

  // Grey cards.
  'Card {0} has the box {1}, {2}, {3}, {4}. A box is left, top, right, bottom, each 0 to 1 of the photo; draw it again.':
    'Karte {0} hat den Kasten {1}; {2}; {3}; {4}. Ein Kasten ist links, oben, rechts, unten, je 0 bis 1 des Fotos; zieh ihn neu.',
  'Card {0} covers {1} pixels in its middle; at least {2} are needed. Draw a larger box.':
    'Karte {0} bedeckt in ihrer Mitte {1} Pixel; mindestens {2} sind nötig. Zieh einen größeren Kasten.',
  'Card {0} is left out: it is nearly black ({1} % of white), so it tells nothing about the light.':
    'Karte {0} bleibt außer Acht: Sie ist fast schwarz ({1} % von Weiß) und sagt nichts über das Licht.',
  'Card {0} is left out: its strongest channel is {1} times its weakest, so it is no neutral card. Check its box.':
    'Karte {0} bleibt außer Acht: Ihr stärkster Farbkanal ist das {1}-fache des schwächsten, sie ist also nicht neutral. Prüfe ihren Kasten.',
  'Card {0} is left out: it has a colour that no lamp gives a grey, so it is no neutral card. Check its box.':
    'Karte {0} bleibt außer Acht: Sie hat eine Farbe, die keine Lampe einem Grau gibt, ist also nicht neutral. Prüfe ihren Kasten.',
  'Card {0} is left out: {1} % of it is clipped. Expose the photo a little darker.':
    'Karte {0} bleibt außer Acht: {1} % davon sind ausgefressen oder zugelaufen. Belichte das Foto etwas dunkler.',
  'Cards {0} and {1} disagree: one would stand in {2} times the light of the other, so none of them is used. Check which is grey and which is white.':
    'Die Karten {0} und {1} widersprechen sich: Eine stünde im {2}-fachen Licht der anderen, darum gilt keine von beiden. Prüfe, welche grau und welche weiß ist.',
  'Two cards disagree: their colours lie {0} apart in a*, b*, so none of them is used. Check that each box lies on a neutral card.':
    'Zwei Karten widersprechen sich: Ihre Farben liegen in a*, b* um {0} auseinander, darum gilt keine von beiden. Prüfe, ob jeder Kasten auf einer neutralen Karte liegt.',

  // Corners.
  'top left': 'oben links',
  'top right': 'oben rechts',
  'bottom right': 'unten rechts',
  'bottom left': 'unten links',
  'The {0} corner lies at ({1}, {2}), outside the photo. Corners are fractions of the photo, 0 to 1; move it inside.':
    'Die Ecke {0} liegt bei ({1}; {2}), außerhalb des Fotos. Ecken sind Bruchteile des Fotos, 0 bis 1; schieb sie hinein.',
  'The 4 corners run the wrong way round. Start at the top left of the painting and go clockwise: top right, bottom right, bottom left.':
    'Die 4 Ecken laufen falsch herum. Fang oben links am Gemälde an und geh im Uhrzeigersinn: oben rechts, unten rechts, unten links.',
  'The 4 corners cross over: 2 sides of the painting cut each other. Swap two neighbouring corners.':
    'Die 4 Ecken sind überkreuzt: 2 Seiten des Gemäldes schneiden sich. Tausche zwei benachbarte Ecken.',
  'The 4 corners make a dent at the {0}. Move that corner outwards, onto the corner of the painting.':
    'Die 4 Ecken bilden {0} eine Delle. Schieb diese Ecke nach außen, auf die Ecke des Gemäldes.',
  'The 4 corners enclose {0} % of the photo; at least 1 % is needed. Move them onto the corners of the painting.':
    'Die 4 Ecken umschließen {0} % des Fotos; mindestens 1 % ist nötig. Schieb sie auf die Ecken des Gemäldes.',
  'The {0} corner lies almost on the line between its neighbours, so the shape is a sliver with 3 sides. Move it onto the corner of the painting.':
    'Die Ecke {0} liegt fast auf der Linie zwischen ihren Nachbarn, so bleibt nur ein schmaler Keil mit 3 Seiten. Schieb sie auf die Ecke des Gemäldes.',

  // States of a painting laid on one another.
  'The two photos are too even to be laid on one another: only {0} of their parts show anything, and {1} are needed. They are not compared.':
    'Die zwei Fotos sind zu gleichförmig, um sie aufeinanderzulegen: Nur {0} ihrer Teile zeigen etwas, und {1} sind nötig. Sie werden nicht verglichen.',
  'This seems to be another painting than the last state: {0} % of it agrees, and {1} % is needed. The picture stays; it is only not compared.':
    'Das scheint ein anderes Gemälde zu sein als der letzte Stand: {0} % davon stimmen überein, und {1} % sind nötig. Das Bild bleibt; es wird nur nicht verglichen.',
};
