/** German of the readings about the photo itself. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const photo: Catalogue = {
  'No neutral in the picture': 'Nichts Neutrales im Foto',
  'Without a grey or white to go by, the lamp and the paint cannot be told apart.':
    'Ohne Grau oder Weiß als Anhalt lassen sich Lampe und Farbe nicht unterscheiden.',
  'No grey or white stands beside the painting, so colour can’t be trusted. Put a card in and photograph again.':
    'Neben dem Gemälde steht kein Grau oder Weiß, darum ist die Farbe nicht verlässlich. Leg eine Karte dazu und fotografiere noch einmal.',
  Clipping: 'Ausgefressen oder zugelaufen',
  'Where the camera runs out of light or dark, the true value is lost and only a bound is left.':
    'Wo der Kamera Licht oder Dunkel ausgeht, ist der wahre Tonwert verloren, und nur eine Grenze bleibt.',
  'The lightest parts are burnt out in this photo. Expose a little darker and photograph again.':
    'Die hellsten Stellen sind in diesem Foto ausgefressen. Belichte etwas dunkler und fotografiere noch einmal.',
  'The darkest parts are crushed in this photo. Expose a little lighter and photograph again.':
    'Die dunkelsten Stellen sind in diesem Foto zugelaufen. Belichte etwas heller und fotografiere noch einmal.',
  Glare: 'Glanz',
  'Glare lies in the darks, exactly where depth is judged.':
    'Glanz liegt in den Dunklen, genau dort, wo sich die Tiefe zeigt.',
  'Glare covers {0} % of the painting. Move the lamp farther round and photograph again.':
    'Glanz bedeckt {0} % des Gemäldes. Stell die Lampe weiter zur Seite und fotografiere noch einmal.',
  'Glare covers {0} % of the {1}. Move the lamp farther round and photograph again.':
    'Glanz bedeckt {0} % von „{1}“. Stell die Lampe weiter zur Seite und fotografiere noch einmal.',
  'Uneven light': 'Ungleichmäßiges Licht',
  'Light that falls off looks like a change of value in the paint.':
    'Licht, das abfällt, sieht aus wie ein anderer Tonwert der Farbe.',
  'The light changes by {0} % across the painting. Use two like lamps or open shade.':
    'Das Licht ändert sich über das Gemälde um {0} %. Nimm zwei gleiche Lampen oder offenen Schatten.',
  Crooked: 'Schräg aufgenommen',
  'A crooked view squeezes one side, and shapes and shares go wrong with it.':
    'Ein schräger Blick staucht eine Seite, und damit werden Formen und Anteile falsch.',
  'The sides don’t fit the size you gave, by {0} %. Check the corners and the size.':
    'Die Seiten weichen um {0} % von der Größe ab, die du angegeben hast. Prüfe die Ecken und die Größe.',
  'The photo is taken {0} degrees off square. Set the corners, or photograph straight on.':
    'Das Foto ist um {0} Grad schräg aufgenommen. Setz die Ecken, oder fotografiere gerade von vorn.',
  'Too small or soft': 'Zu klein oder unscharf',
  'Detail and edges cannot be judged from a small or soft photo.':
    'Feinheiten und Kanten lassen sich an einem kleinen oder unscharfen Foto nicht beurteilen.',
  'The photo is soft. Hold the camera still, focus on the paint, and photograph again.':
    'Das Foto ist unscharf. Halte die Kamera ruhig, stell auf die Farbe scharf und fotografiere noch einmal.',
  'The painting fills this photo, but its shorter side has only {0} pixels. Take or save a larger photo, {1} pixels or more.':
    'Das Gemälde füllt dieses Foto, aber die kürzere Seite hat nur {0} Pixel. Nimm oder speichere ein größeres Foto mit {1} Pixeln oder mehr.',
  'The shorter side of the painting has only {0} pixels in this photo. Step closer so that it fills the frame.':
    'Die kürzere Seite des Gemäldes hat in diesem Foto nur {0} Pixel. Geh näher heran, bis es das Foto füllt.',
  'Mixed light': 'Mischlicht',
  'Daylight and lamp together tint one half against the other.':
    'Tageslicht und Lampe zusammen färben eine Hälfte anders als die andere.',
  'Two kinds of light fall on the painting. Switch off the lamp or leave the window, and photograph again.':
    'Zweierlei Licht fällt auf das Gemälde. Schalte die Lampe aus oder geh vom Fenster weg, und fotografiere noch einmal.',
  'Wet, or matt and glossy': 'Nass, oder matt und glänzend',
  'Wet paint glints and sunk paint looks lighter and greyer than it is.':
    'Nasse Farbe glitzert, und eingeschlagene Farbe wirkt heller und grauer, als sie ist.',
  'The surface is wet or patchy in gloss, so darks may look too light. Judge them again when dry.':
    'Die Oberfläche ist nass oder glänzt fleckig, darum können die Dunklen zu hell wirken. Beurteile sie noch einmal, wenn sie trocken sind.',
  'Reference tone-mapped': 'Tonwerte der Vorlage bearbeitet',
  'A phone that treats sky and land apart makes relations between planes false.':
    'Ein Telefon, das Himmel und Land getrennt bearbeitet, verfälscht die Verhältnisse zwischen den Ebenen.',
  'The photo you worked from looks tone-mapped; its values between sky and land may be false.':
    'Die Tonwerte deiner Vorlage wirken bearbeitet; zwischen Himmel und Land können sie falsch sein.',
  'One cast over everything': 'Ein Farbstich über allem',
  'Paint seldom shifts every plane alike; a lamp does.':
    'Farbe verschiebt selten jede Ebene gleich; eine Lampe schon.',
  'Every plane is {0} by the same amount: likely the lamp, not your paint.':
    'Jede Ebene ist um denselben Betrag {0}: wohl die Lampe, nicht deine Farbe.',
  yellower: 'gelber',
  bluer: 'blauer',
  redder: 'röter',
  greener: 'grüner',
};
