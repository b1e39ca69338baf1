/** German of the cards: what to do with which part, how to try it, how to see whether it worked. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const cards: Catalogue = {
  'the photo of the painting': 'das Foto des Gemäldes',
  'the whole picture': 'das ganze Bild',
  'Follow the product label, its safety data sheet and local rules. This app does not know your paint.':
    'Halte dich an das Etikett, das Sicherheitsdatenblatt und die örtlichen Regeln. Dieses Programm kennt deine Farbe nicht.',
  'Try it in your own way, a little at a time, and ask your teacher which paint to use.':
    'Versuch es auf deine Art, immer nur ein wenig, und frag deine Lehrperson, welche Farbe du nehmen sollst.',

  'Squint: it should sit behind what is nearer, and not be the first thing you see.':
    'Kneif die Augen zusammen: Es sollte hinter dem liegen, was näher ist, und nicht als Erstes auffallen.',
  'Squint: the two shapes should stay apart.':
    'Kneif die Augen zusammen: Die beiden Formen sollten getrennt bleiben.',
  'Hold a grey strip between this and the foreground and compare the two.':
    'Halte einen grauen Streifen zwischen diese Stelle und den Vordergrund und vergleiche beide.',

  'whole plane: lift': 'ganze Ebene: aufhellen',
  'whole plane: lift about {0}': 'ganze Ebene: etwa {0} aufhellen',
  'Try a thin scumble of a lighter mixture over the dry layer.':
    'Versuch einen dünnen, trockenen Überzug aus einer helleren Mischung über der trockenen Schicht.',
  'whole plane: deepen': 'ganze Ebene: abdunkeln',
  'whole plane: deepen about {0}': 'ganze Ebene: etwa {0} abdunkeln',
  'Try a glaze of a darker mixture of the same hue over the dry layer, or restate it.':
    'Versuch eine Lasur aus einer dunkleren Mischung desselben Farbtons über der trockenen Schicht, oder leg die Ebene neu an.',
  'darks: lift': 'Dunkel: aufhellen',
  'darks: lift about {0}': 'Dunkel: etwa {0} aufhellen',
  'Try scumbling some air colour over the darks, or restate them with air colour mixed in.':
    'Versuch, etwas Luftfarbe als trockenen hellen Überzug über die Dunklen zu legen, oder leg sie mit beigemischter Luftfarbe neu an.',
  'lights: bring down': 'Lichter: zurücknehmen',
  'lights: bring down about {0}': 'Lichter: etwa {0} zurücknehmen',
  'Try greying the lights with a little of their complement, or glaze them slightly darker when dry.':
    'Versuch, die Lichter mit etwas von ihrer Komplementärfarbe grauer zu machen, oder lasiere sie ein wenig dunkler, wenn sie trocken sind.',
  'light and dark: close up': 'Hell und Dunkel: zusammenrücken',
  'Try lifting the darks with air colour and quieting the lights a touch.':
    'Versuch, die Dunklen mit Luftfarbe aufzuhellen und die Lichter ein wenig zu dämpfen.',
  'light and dark: widen': 'Hell und Dunkel: auseinanderziehen',
  'Try one true dark and one true light where you want the eye, and leave the rest.':
    'Versuch ein echtes Dunkel und ein echtes Licht dort, wo der Blick hin soll, und lass den Rest, wie er ist.',
  'Squint: darkest and lightest should stand at your focus only.':
    'Kneif die Augen zusammen: Das Dunkelste und das Hellste sollten nur an deinem Blickpunkt stehen.',

  'colour: grey': 'Farbe: grauer',
  'Try a little of the complement, or some air colour, at the same value.':
    'Versuch ein wenig Komplementärfarbe oder etwas Luftfarbe, beim selben Tonwert.',
  'colour: cool': 'Farbe: kühler',
  'Try mixing in some of the colour of the sky at the horizon, at the same value.':
    'Versuch, etwas von der Farbe des Himmels am Horizont beizumischen, beim selben Tonwert.',
  'colour: warm': 'Farbe: wärmer',
  'Try mixing in a little of a warmer neighbour from the picture, at the same value.':
    'Versuch, ein wenig von einer wärmeren Farbe aus der Nachbarschaft im Bild beizumischen, beim selben Tonwert.',
  'colour: bring toward the colour of the air': 'Farbe: zur Luftfarbe hin führen',
  'Try mixing air colour into it, a little more than you think, or scumble it over when dry.':
    'Versuch, Luftfarbe beizumischen, ein wenig mehr, als du denkst, oder leg sie als trockenen hellen Überzug darüber, wenn alles trocken ist.',
  'colour: ease back toward the horizon colour': 'Farbe: zur Farbe am Horizont zurückführen',
  'Try greying the blue with a little of its complement, then compare with the sky just above.':
    'Versuch, das Blau mit etwas von seiner Komplementärfarbe grauer zu machen, und vergleiche dann mit dem Himmel gleich darüber.',
  'Look along the skyline: the sky just above should be the purer blue.':
    'Schau am Kamm entlang: Der Himmel gleich darüber sollte das reinere Blau haben.',

  'shadows: cool': 'Schatten: kühler',
  'Try a cooler colour of the same value in the shadows, broken into the wet or the dry layer.':
    'Versuch in den Schatten eine kühlere Farbe vom selben Tonwert, locker in die nasse oder über die trockene Schicht gesetzt.',
  'Half close your eyes: light and shade should differ in colour, not only in value.':
    'Mach die Augen halb zu: Licht und Schatten sollten sich in der Farbe unterscheiden, nicht nur im Tonwert.',
  'shadows: warm': 'Schatten: wärmer',
  'Try a warmer colour of the same value in the shadows, broken into the wet or the dry layer.':
    'Versuch in den Schatten eine wärmere Farbe vom selben Tonwert, locker in die nasse oder über die trockene Schicht gesetzt.',
  'shadows: open with some colour': 'Schatten: mit etwas Farbe öffnen',
  'Try a deep colour instead of black, a touch lighter, leaning to the colour of the sky.':
    'Versuch statt Schwarz eine tiefe Farbe, ein wenig heller, mit einem Zug zur Farbe des Himmels.',
  'Look at the shadow alone through a hole in a card: it should have a colour.':
    'Sieh dir den Schatten allein durch ein Loch in einem Stück Karton an: Er sollte eine Farbe haben.',

  'detail: simplify': 'Feinheiten: vereinfachen',
  'Try dragging a soft dry brush over the small marks until one mass with a light and a shade is left.':
    'Versuch, mit einem weichen, trockenen Pinsel über die kleinen Striche zu ziehen, bis eine Masse mit Licht und Schatten bleibt.',
  'Step back three paces: you should see a shape there, not marks.':
    'Tritt drei Schritte zurück: Du solltest dort eine Form sehen, keine Striche.',
  'edge: soften': 'Kante: weicher machen',
  'Try losing parts of the edge with a soft dry brush, more away from your focus.':
    'Versuch, die Kante mit einem weichen, trockenen Pinsel stellenweise aufzulösen, weiter weg von deinem Blickpunkt mehr.',
  'Let your eye rest on the focus: no edge elsewhere should call.':
    'Lass das Auge auf dem Blickpunkt ruhen: Anderswo sollte keine Kante es zu sich ziehen.',
  'big shapes: join': 'große Formen: verbinden',
  'Try letting neighbouring patches of nearly one value run together into a bigger shape.':
    'Versuch, benachbarte Flecken von fast gleichem Tonwert zu einer größeren Form zusammenlaufen zu lassen.',
  'Squint: you should count three to five big shapes.':
    'Kneif die Augen zusammen: Du solltest drei bis fünf große Formen zählen.',
  'the strong spot: echo or quiet': 'der kräftige Fleck: aufgreifen oder dämpfen',
  'Try a smaller, weaker touch of the same hue elsewhere, or grey the spot with a little complement.':
    'Versuch anderswo einen kleineren, schwächeren Tupfer desselben Farbtons, oder mach den Fleck mit etwas Komplementärfarbe grauer.',
  'Look away and back: your eye should land on the focus first.':
    'Schau weg und wieder hin: Dein Blick sollte zuerst auf dem Blickpunkt landen.',

  'photo: photograph again': 'Foto: noch einmal fotografieren',
  'Stand the painting upright in even light, card beside it, lens straight on, no flash.':
    'Stell das Gemälde aufrecht in gleichmäßiges Licht, die Karte daneben, die Kamera gerade davor, kein Blitz.',
  'Post the new photo: the grade should rise and some readings may go away.':
    'Stell das neue Foto ein: Die Güte sollte steigen, und manche Befunde können wegfallen.',
};
