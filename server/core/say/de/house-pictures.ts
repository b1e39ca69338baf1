/** German: files of pictures, outlines and corners, and what is being worked out. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const housePictures: Catalogue = {
  // Files
  'Choose a JPEG, PNG, WebP, TIFF, AVIF or HEIC file.':
    'Wähle eine Datei als JPEG, PNG, WebP, TIFF, AVIF oder HEIC.',
  '{0} has 0 bytes: it may not have been copied fully. Choose it again.':
    '{0} hat 0 Bytes: Vielleicht wurde nicht alles kopiert. Wähle die Datei noch einmal.',
  '{0} has more than {1} MB and the limit is {2} MB. Post a smaller copy, for example a JPEG 4000 px wide.':
    '{0} hat mehr als {1} MB, und die Grenze ist {2} MB. Stell eine kleinere Kopie ein, zum Beispiel ein JPEG von 4000 px Breite.',
  '{0} has {1} MB and the limit is {2} MB. Post a smaller copy, for example a JPEG 4000 px wide.':
    '{0} hat {1} MB, und die Grenze ist {2} MB. Stell eine kleinere Kopie ein, zum Beispiel ein JPEG von 4000 px Breite.',
  'a raw camera file': 'eine Rohdatei der Kamera',
  'Develop it and post a JPEG or a TIFF of the result.':
    'Entwickle sie und stell das Ergebnis als JPEG oder TIFF ein.',
  '{0} is not a picture: it begins like {1}. {2}': '{0} ist kein Bild: Der Anfang sieht aus wie {1}. {2}',
  '{0} is {1}, which is not taken in here. {2}': '{0} ist {1}, und das wird hier nicht angenommen. {2}',
  'several frames': 'mehrere Einzelbilder',
  '{0} frames': '{0} Einzelbilder',
  '{0} is animated: it has {1} and only a single picture can be measured. Post one frame of it.':
    '{0} ist ein bewegtes Bild: Es sind {1}, und messen lässt sich nur ein einziges Bild. Stell eines davon ein.',
  'This picture has {0} megapixels and the limit is {1}. Post a smaller copy.':
    'Dieses Bild hat {0} Megapixel, und die Grenze ist {1}. Stell eine kleinere Kopie ein.',
  'This picture has {0} × {1} pixels and at least {2} × {3} are needed. Post the picture itself rather than its thumbnail.':
    'Dieses Bild hat {0} × {1} Pixel, und mindestens {2} × {3} sind nötig. Stell das Bild selbst ein, nicht seine Miniatur.',
  'This picture has {0} × {1} pixels: one side is {2} times the other and the limit is {3} times. Post the part of it that was painted.':
    'Dieses Bild hat {0} × {1} Pixel: Eine Seite ist {2}-mal so lang wie die andere, und die Grenze ist {3}-mal. Stell den Teil davon ein, der gemalt wurde.',
  'This picture is cut short: its file ends after {0} bytes, before the picture is complete. Copy it from the camera again.':
    'Dieses Bild ist abgeschnitten: Seine Datei endet nach {0} Bytes, bevor das Bild ganz ist. Kopiere es noch einmal von der Kamera.',
  'This {0} file is damaged and cannot be read. Open it in a picture program, save a copy and post that.':
    'Diese Datei ({0}) ist beschädigt und nicht zu lesen. Öffne sie in einem Bildprogramm, speichere eine Kopie und stell diese ein.',
  'Reading this picture took longer than {0} seconds, so it was stopped. Post a smaller copy or a JPEG of it.':
    'Das Lesen dieses Bildes dauerte länger als {0} Sekunden und wurde abgebrochen. Stell eine kleinere Kopie oder ein JPEG davon ein.',
  'a GIF': 'ein GIF',
  'a PDF document': 'ein PDF-Dokument',
  'a BMP picture': 'ein BMP-Bild',
  'a layered working file': 'eine Arbeitsdatei mit Schichten',
  'a JPEG 2000 picture': 'ein JPEG-2000-Bild',
  'a JPEG XL picture': 'ein JPEG-XL-Bild',
  'a ZIP archive': 'ein ZIP-Archiv',
  'a compressed archive': 'ein gepacktes Archiv',
  'a program': 'ein Programm',
  'a film': 'ein Film',
  'an SVG drawing': 'eine SVG-Zeichnung',
  'a web page': 'eine Webseite',
  'plain text': 'reiner Text',
  'no kind of picture known here': 'keine Bildart, die hier bekannt ist',
  'a high-dynamic-range picture': 'ein Bild mit erweitertem Helligkeitsumfang (HDR)',
  'Save a standard copy of it (SDR, sRGB or Display P3) and post that.':
    'Speichere eine gewöhnliche Kopie davon (SDR, sRGB oder Display P3) und stell diese ein.',

  // Marks, outlines, corners
  'This mark cannot be kept: a pin has one point, an arrow two, a line 2 to 4000, and a text at most {0} characters.':
    'Diese Anmerkung lässt sich nicht festhalten: Ein Punkt hat eine Stelle, ein Pfeil zwei, eine Linie 2 bis 4000, und ein Text höchstens {0} Zeichen.',
  'An outline has 3 to 4000 points and this one has {0}. Draw it around the whole plane.':
    'Ein Umriss hat 3 bis 4000 Punkte, und dieser hat {0}. Zieh ihn um die ganze Ebene.',
  'A painting has four corners inside its photo.': 'Ein Gemälde hat vier Ecken innerhalb seines Fotos.',
  'A card is a box with a luminance factor above 0 up to 1.':
    'Eine Karte ist ein Kasten mit einem Hellbezugswert über 0 und höchstens 1.',
  'Width and height are numbers above 0.': 'Breite und Höhe sind Zahlen über 0.',
  'There are {0} planes already and {1} are the most. Remove one first.':
    'Es gibt schon {0} Ebenen, und mehr als {1} geht nicht. Entferne erst eine.',
  "A plane's name has 1 to 80 characters and this one has {0}.":
    'Der Name einer Ebene hat 1 bis 80 Zeichen, und dieser hat {0}.',
  'No plane is outlined on the painting yet. Outline at least one, far to near.':
    'Auf dem Gemälde ist noch keine Ebene umrissen. Umreiße wenigstens eine, von fern nach nah.',
  'No plane is outlined on the reference yet. Outline at least one, far to near.':
    'Auf der Vorlage ist noch keine Ebene umrissen. Umreiße wenigstens eine, von fern nach nah.',

  // What is being worked out
  'The earlier state that this picture should follow is not a painting on this board. Choose it again.':
    'Der frühere Stand, dem dieses Bild folgen soll, ist kein Gemälde auf dieser Tafel. Wähle ihn noch einmal.',
  'Laying the two photos on one another.': 'Die beiden Fotos werden aufeinandergelegt.',
  'Laying the two photos on one another took longer than {0} seconds, so it was stopped. It is tried again in a minute.':
    'Das Aufeinanderlegen der beiden Fotos dauerte länger als {0} Sekunden und wurde abgebrochen. In einer Minute wird es noch einmal versucht.',
  'These two photos do not belong to one painting, so there is nothing to lay on one another.':
    'Diese beiden Fotos gehören nicht zu einem Gemälde, also ist nichts aufeinanderzulegen.',
  'There is no such picture on this board; it may have been taken back.':
    'So ein Bild gibt es auf dieser Tafel nicht; vielleicht wurde es zurückgenommen.',
  'Waiting for planes: outline at least one on the reference.':
    'Es fehlen noch Ebenen: Umreiße wenigstens eine auf der Vorlage.',
  'Waiting for planes: outline at least one on the painting.':
    'Es fehlen noch Ebenen: Umreiße wenigstens eine auf dem Gemälde.',
  'No outlined plane shows in the frame ‘{0}’. Move the frame, or choose the whole photograph.':
    'Im Ausschnitt „{0}“ ist keine umrissene Ebene zu sehen. Verschieb den Ausschnitt, oder wähle die ganze Vorlage.',
  'The server is stopping. Try again once it runs again.':
    'Der Server hält gerade an. Versuch es noch einmal, wenn er wieder läuft.',
  'This picture is a painting, and a plan is made from a photograph. Choose one of the references.':
    'Dieses Bild ist ein Gemälde, und ein Plan entsteht nach einer Vorlage. Wähle eine der Vorlagen.',
  'Planning from this photograph took longer than {0} seconds, so it was stopped. It is tried again in a minute.':
    'Das Planen nach dieser Vorlage dauerte länger als {0} Sekunden und wurde abgebrochen. In einer Minute wird es noch einmal versucht.',
  'Planning from this photograph broke off through a fault of the server, which is written down in its log. It is tried again in a minute.':
    'Das Planen nach dieser Vorlage brach durch einen Fehler des Servers ab, den er in seinem Protokoll vermerkt hat. In einer Minute wird es noch einmal versucht.',
  'Looking for frames, weight and planes in the photograph.':
    'In der Vorlage werden Ausschnitte, Gewicht und Ebenen gesucht.',
  'No plane is outlined on this photograph, so there is no plan to see it in. Outline at least one, far to near.':
    'Auf dieser Vorlage ist keine Ebene umrissen, also gibt es keinen Plan, in dem sie zu sehen wäre. Umreiße wenigstens eine, von fern nach nah.',
  'Measuring one plane in two pictures.': 'Eine Ebene wird in zwei Bildern gemessen.',
  'Measuring {0} planes in two pictures.': '{0} Ebenen werden in zwei Bildern gemessen.',
  'Measuring one plane in one picture.': 'Eine Ebene wird in einem Bild gemessen.',
  'Measuring {0} planes in one picture.': '{0} Ebenen werden in einem Bild gemessen.',
  'Drawing the sheet took longer than {0} seconds, so it was stopped. Try again in a moment.':
    'Das Zeichnen des Blatts dauerte länger als {0} Sekunden und wurde abgebrochen. Versuch es gleich noch einmal.',
  '{0} Until then this plane is left out.': '{0} Bis dahin bleibt diese Ebene weg.',
};
