/** German: the evening that is invented for the demo. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const houseDemo: Catalogue = {
  Sky: 'Himmel',
  Massif: 'Massiv',
  'Rust wood': 'Rostwald',
  Meadow: 'Wiese',
  'Photograph: Aitzol Berasategi, CC-BY 4.0, resized': 'Foto: Aitzol Berasategi, CC-BY 4.0, verkleinert',
  'One autumn meadow, five hands': 'Eine Herbstwiese, fünf Hände',
  'An evening painting circle works from one autumn photograph. Maren and Jonas each paint the meadow, the wood and the massif in one sitting; Ida, Ruben and Sunna add their own answers to the same air; Edda looks on from elsewhere and says what she sees. The wall holds all five side by side, names hidden. The people are invented and so are their paintings, which the program painted itself. Move and mark whatever you like; delete the board when you no longer need it.':
    'Ein abendlicher Malkreis arbeitet nach einem Herbstfoto. Maren und Jonas malen beide Wiese, Wald und Massiv in einer Sitzung; Ida, Ruben und Sunna geben ihre eigenen Antworten auf dieselbe Luft; Edda schaut von anderswo zu und sagt, was sie sieht. An der Wand hängen alle fünf nebeneinander, die Namen verborgen. Die Leute sind erfunden und ihre Gemälde auch, die das Programm selbst gemalt hat. Verschieb und merk an, was du willst; lösche die Tafel, wenn du sie nicht mehr brauchst.',
  'How did each of us say far?': 'Wie sagt jedes unserer Bilder „fern“?',

  // Titles and intentions
  'One sitting, everything from one grey': 'Eine Sitzung, alles aus einem Grau',
  'An overcast evening in few colours. Distance by greying, not by paling; the value steps stay small.':
    'Ein bedeckter Abend in wenigen Farben. Ferne durch Ergrauen, nicht durch Verblassen; die Stufen der Tonwerte bleiben klein.',
  'Two hours, colour before value': 'Zwei Stunden, Farbe vor Tonwert',
  'The massif as a violet against the orange of the wood. The colours should ring; the rest may be simple.':
    'Das Massiv als Violett gegen das Orange des Waldes. Die Farben sollen klingen; der Rest darf einfach sein.',
  'One hour, big brushes only': 'Eine Stunde, nur große Pinsel',
  'As much air as it will bear: the massif no more than a breath, the meadow heavy in front of it.':
    'So viel Luft, wie es verträgt: das Massiv nur ein Hauch, die Wiese schwer davor.',
  'One sitting, the air first': 'Eine Sitzung, die Luft zuerst',
  'A quiet distance. The rust of the wood is the loud note, everything behind it lies in the air, and the whole is a little lighter than the photograph.':
    'Eine stille Ferne. Der Rost des Waldes ist der laute Ton, alles dahinter liegt in der Luft, und das Ganze ist ein wenig heller als die Vorlage.',
  'One sitting, the massif first': 'Eine Sitzung, das Massiv zuerst',
  'The weight of the massif behind the wood, and the wood glowing in front of it. The eye should come to rest at the dark fir.':
    'Das Gewicht des Massivs hinter dem Wald, und davor der glühende Wald. Das Auge soll an der dunklen Tanne zur Ruhe kommen.',

  // What they say to each other
  'The massif stands as near as the trees. Its darks are about one step too heavy and too warm: squint, and it joins the wood.':
    'Das Massiv steht so nah wie die Bäume. Seine dunklen Stellen sind etwa eine Stufe zu schwer und zu warm: Kneif die Augen zusammen, und es wächst mit dem Wald zusammen.',
  'Now that I squint, yes. I painted the rock brown because I know it is brown.':
    'Jetzt, mit zusammengekniffenen Augen: ja. Ich habe den Fels braun gemalt, weil ich weiß, dass er braun ist.',
  'Begin along the foot: scumble the air colour thinly over these darks, then step back and look before you touch the lit rock.':
    'Fang unten am Fuß an: Zieh die Luftfarbe als dünnen trockenen Überzug über diese Dunklen, dann tritt zurück und schau, bevor du den Fels im Licht anrührst.',
  'The ground lies flat with very few strokes. I would leave it as it is.':
    'Der Boden liegt mit ganz wenigen Strichen flach da. Ich würde ihn so lassen.',
  'This is the brown I mean. The same place in the photograph is a cool grey.':
    'Dieses Braun meine ich. Dieselbe Stelle in der Vorlage ist ein kühles Grau.',
  'The edge of the wood leads me straight to the fir. That works.':
    'Der Waldrand führt mich geradewegs zur Tanne. Das gelingt.',
  'Only this lit rock need stay as warm as it is.':
    'Nur dieser Fels im Licht soll so warm bleiben, wie er ist.',
  'About this much air over the foot of it.': 'Etwa so viel Luft über seinen Fuß.',
  'How did you keep it this quiet and still see rock?':
    'Wie hast du es so still gehalten, und man sieht trotzdem Fels?',
  'I laid the air colour first, at the right value, and worked the rock into it on the canvas.':
    'Ich habe zuerst die Luftfarbe angelegt, im richtigen Tonwert, und den Fels auf der Leinwand hineingearbeitet.',
  'The heaviest dark stands in the near wood and nowhere behind it. That carries the whole distance.':
    'Das schwerste Dunkel steht im nahen Wald und nirgends dahinter. Das trägt die ganze Ferne.',
};
