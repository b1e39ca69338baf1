/** German of the readings of colour, of detail and of edges. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const colour: Catalogue = {
  'common practice, no source': 'übliche Praxis, ohne Quelle',

  // Colour and air
  'The {0} is bluer than the sky behind it, {1} too. Is the air that clear?':
    '„{0}“ ist blauer als der Himmel dahinter, auch {1}. Ist die Luft so klar?',
  'The {0} is bluer than the sky behind it. Ease it back toward the horizon colour.':
    '„{0}“ ist blauer als der Himmel dahinter. Führ die Farbe zur Farbe am Horizont zurück.',
  'Overshoots the air': 'Blauer als die Luft',
  'Air cannot tint a hill bluer than itself; only a dark ridge on a very clear day looks so.':
    'Luft kann einen Hügel nicht blauer färben, als sie selbst ist; nur ein dunkler Kamm an einem sehr klaren Tag wirkt so.',
  'Colour gets warmer as it goes back; {0} it gets cooler.':
    'Die Farbe wird nach hinten wärmer; {0} wird sie kühler.',
  'Colour gets cooler as it goes back; {0} it gets warmer.':
    'Die Farbe wird nach hinten kühler; {0} wird sie wärmer.',
  'Temperature turns the wrong way': 'Temperatur kippt in die falsche Richtung',
  'Which way colour turns with depth tells the eye what the air is like.':
    'Wohin sich die Farbe mit der Tiefe wendet, sagt dem Auge, wie die Luft ist.',
  'Lynch & Mazuk 2005; common practice': 'Lynch & Mazuk 2005; übliche Praxis',
  'The same green runs from the {0} back to the {1}. Change it as it recedes: less yellow, greyer.':
    'Dasselbe Grün läuft von „{0}“ nach hinten bis „{1}“. Ändere es nach hinten: weniger Gelb, grauer.',
  'The same green runs from the {0} back to the {1}, {2} too. Would you change it?':
    'Dasselbe Grün läuft von „{0}“ nach hinten bis „{1}“, auch {2}. Würdest du es ändern?',
  'Check: the same green runs from the {0} back to the {1}. Would you grey it as it recedes?':
    'Prüfe: Dasselbe Grün läuft von „{0}“ nach hinten bis „{1}“. Würdest du es nach hinten grauer machen?',
  'Foreground green carried back': 'Grün des Vordergrunds auch hinten',
  'Leaf green loses its yellow and its strength through air; one green from front to back closes the space.':
    'Blattgrün verliert durch Luft sein Gelb und seine Kraft; ein einziges Grün von vorn bis hinten schließt den Raum.',
  'Leonardo, Notebooks (Richter 1883, 307); common practice':
    'Leonardo, Notebooks (Richter 1883, 307); übliche Praxis',

  // Light and shade
  'On the {0} light and shade share one temperature, {1} too. Could the shadows turn warmer?':
    'In „{0}“ haben Licht und Schatten dieselbe Temperatur, auch {1}. Könnten die Schatten wärmer werden?',
  'On the {0} light and shade share one temperature, {1} too. Could the shadows turn cooler?':
    'In „{0}“ haben Licht und Schatten dieselbe Temperatur, auch {1}. Könnten die Schatten kühler werden?',
  'On the {0} the shadows are just darker versions of the lights. Turn them warmer.':
    'In „{0}“ sind die Schatten nur dunklere Fassungen der Lichter. Mach sie wärmer.',
  'On the {0} the shadows are just darker versions of the lights. Turn them cooler.':
    'In „{0}“ sind die Schatten nur dunklere Fassungen der Lichter. Mach sie kühler.',
  'Light and shade same temperature': 'Licht und Schatten in derselben Temperatur',
  'Outdoors a warm light throws cool shadows, and indoors by a north light the reverse.':
    'Draußen wirft warmes Licht kühle Schatten, drinnen bei Nordlicht ist es umgekehrt.',
  'Harrison 1909, p. 26': 'Harrison 1909, S. 26',
  'The deepest shadows on the {0} are black, {1} too. Did the camera crush them?':
    'Die tiefsten Schatten in „{0}“ sind schwarz, auch {1}. Sind sie in der Kamera zugelaufen?',
  'The deepest shadows on the {0} are black. Open them with some colour.':
    'Die tiefsten Schatten in „{0}“ sind schwarz. Öffne sie mit etwas Farbe.',
  'Shadows dead': 'Tote Schatten',
  'Outdoors no shadow is black: the sky always throws some colour into it.':
    'Draußen ist kein Schatten schwarz: Der Himmel wirft immer etwas Farbe hinein.',
  '{0} at the {1} pulls from your focus, {2} too. Keep it?':
    '{0} {1} lenkt von deinem Blickpunkt ab, auch {2}. Soll er bleiben?',
  '{0} at the {1} pulls away from your focus. Echo it or quiet it.':
    '{0} {1} lenkt von deinem Blickpunkt ab. Greif ihn anderswo auf oder dämpfe ihn.',
  'Lone accent': 'Einzelner Farbfleck',
  'A single spot that nothing answers weighs more than its size and draws the eye from the subject.':
    'Ein einzelner Fleck, auf den nichts antwortet, wiegt mehr als seine Größe und zieht den Blick vom Motiv ab.',

  // Detail and edges
  'The {0} is as finished as the foreground, {1} too. Could it be simpler?':
    '„{0}“ ist so ausgearbeitet wie der Vordergrund, auch {1}. Ginge es einfacher?',
  'The {0} is as finished as the near parts. Blur or simplify it.':
    '„{0}“ ist so ausgearbeitet wie das Nahe. Mach es weicher oder einfacher.',
  'The {0} has more detail than the {1} in front of it. Blur or simplify it.':
    '„{0}“ hat mehr Feinheiten als „{1}“ davor. Mach es weicher oder einfacher.',
  "Detail doesn't fade": 'Feinheiten nehmen nicht ab',
  'Small parts vanish first with distance: a far tree is one mass with a light and a shade.':
    'Kleines verschwindet mit der Ferne zuerst: Ein ferner Baum ist eine Masse mit Licht und Schatten.',
  'Ruskin 1843, Part II, Sec. II; Leonardo (Richter 1883, 222-225)':
    'Ruskin 1843, Teil II, Abschn. II; Leonardo (Richter 1883, 222–225)',
  'Edges are equally crisp everywhere. Lose some; keep the sharpest at your focus.':
    'Die Kanten sind überall gleich hart. Lass einige verloren gehen; behalte die härteste an deinem Blickpunkt.',
  'Edges are equally crisp everywhere, as {0}. Where should the sharpest be?':
    'Die Kanten sind überall gleich hart, wie {0}. Wo soll die härteste sein?',
  'Check: edges are equally crisp everywhere. Where should the sharpest be?':
    'Prüfe: Die Kanten sind überall gleich hart. Wo soll die härteste sein?',
  'The edge of the {0} is harder than any at your focus, {1} too. Would you lose it?':
    'Die Kante von „{0}“ ist härter als jede an deinem Blickpunkt, auch {1}. Würdest du sie verloren gehen lassen?',
  'The edge of the {0} is harder than any at your focus. Lose it; keep the sharpest there.':
    'Die Kante von „{0}“ ist härter als jede an deinem Blickpunkt. Lass sie verloren gehen; behalte die härteste dort.',
  'All edges alike': 'Alle Kanten gleich',
  'The eye is sharp at one point and edges soften away from it.':
    'Das Auge sieht an einem Punkt scharf, und ringsum werden die Kanten weicher.',
  'Harrison 1909, pp. 48-53': 'Harrison 1909, S. 48–53',
  'The skyline of the {0} is harder than the near edges, {1} too. Soften parts of it?':
    'Der Kamm von „{0}“ ist härter als die nahen Kanten, auch {1}. Würdest du ihn stellenweise weicher machen?',
  'The skyline of the {0} looks cut with scissors. Soften parts of it.':
    'Der Kamm von „{0}“ wirkt wie mit der Schere geschnitten. Mach ihn stellenweise weicher.',
  'Cut-out skyline': 'Kamm wie ausgeschnitten',
  'A far edge harder than a near one flattens the space and pulls the distance forward.':
    'Eine ferne Kante, die härter ist als eine nahe, macht den Raum flach und zieht die Ferne nach vorn.',
  'Leonardo (Richter 1883, 222-225); common practice': 'Leonardo (Richter 1883, 222–225); übliche Praxis',
};
