/** German: archives of boards, and marks that come from elsewhere. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const houseArchives: Catalogue = {
  '“{0}”': '„{0}“',

  // What stays behind
  '“{0}” by {1}: {2}': '„{0}“ von {1}: {2}',
  'A picture by {0}: {1}': 'Ein Bild von {0}: {1}',
  'it was lent for this board alone.': 'es wurde nur für diese Tafel geliehen.',
  'its painter has not said that it may both be kept and be shown to others.':
    'wer es gemalt hat, hat nicht gesagt, dass es sowohl aufbewahrt als auch anderen gezeigt werden darf.',

  // Opening an archive
  'This archive {0}, so nothing was taken from it. Take a fresh one from where it was made, and try again.':
    'Dieses Archiv {0}, deshalb wurde nichts daraus übernommen. Hol ein frisches von dort, wo es gemacht wurde, und versuch es noch einmal.',
  'This archive holds something in the room {0} that no board can hold, so nothing was taken from it. Take a fresh one from where it was made, and try again.':
    'Dieses Archiv enthält im Raum {0} etwas, das keine Tafel aufnehmen kann, deshalb wurde nichts daraus übernommen. Hol ein frisches von dort, wo es gemacht wurde, und versuch es noch einmal.',
  'A later version of Veilstep made this archive, and this one cannot read it. Bring this server up to date, then try again.':
    'Dieses Archiv kommt von einer neueren Fassung von Veilstep, und diese hier kann es nicht lesen. Bring diesen Server auf den neuesten Stand und versuch es dann noch einmal.',
  'has a list that cannot be read': 'hat eine Liste, die nicht zu lesen ist',
  'lacks a part ({0})': 'ist unvollständig ({0} fehlt)',
  'lacks a copy of a picture': 'ist unvollständig (die Kopie eines Bildes fehlt)',
  'holds a picture that is not what the archive says of it ({0})':
    'enthält ein Bild, das nicht das ist, was es darüber sagt ({0})',
  'has a part that is not as it should be': 'hat einen Teil, der nicht so ist, wie er sein sollte',
  'holds a file that belongs to nothing in it': 'enthält eine Datei, die zu nichts darin gehört',
  'names two things alike': 'nennt zwei Dinge gleich',
  'names somebody or something that is not in it': 'nennt jemanden oder etwas, das nicht darin ist',
  'is no archive, or it broke off on its way': 'ist keines, oder es brach unterwegs ab',
  'is damaged': 'ist beschädigt',
  'is damaged ({0})': 'ist beschädigt ({0})',
  'has a part that cannot be read ({0})': 'hat einen Teil, der nicht zu lesen ist ({0})',
  'has a part that is too large ({0})': 'hat einen Teil, der zu groß ist ({0})',
  'holds something else than its list says ({0})': 'enthält etwas anderes, als seine Liste sagt ({0})',
  'holds {0} files, more than {1}': 'enthält {0} Dateien, mehr als {1}',
  'holds one file twice ({0})': 'enthält eine Datei zweimal ({0})',
  'holds more than {0} MB': 'enthält mehr als {0} MB',
  'holds files that lie inside one another': 'enthält Dateien, die ineinander liegen',
  'holds something that is no file': 'enthält etwas, das keine Datei ist',
  'is encrypted': 'ist verschlüsselt',
  'holds a part that was made to burst when it is unpacked':
    'enthält einen Teil, der beim Auspacken platzen soll',
  'has no list of what it holds': 'hat keine Liste dessen, was es enthält',
  'has a list that is too long': 'hat eine Liste, die zu lang ist',
  'is a board archive, another kind than is asked for here':
    'ist das einer Tafel und von anderer Art, als hier gebraucht wird',
  'is a person archive, another kind than is asked for here':
    'ist das einer Person und von anderer Art, als hier gebraucht wird',
  'is a backup archive, another kind than is asked for here':
    'ist eine Sicherung und von anderer Art, als hier gebraucht wird',
  'names one file twice': 'nennt eine Datei zweimal',
  'holds a file that its list does not name': 'enthält eine Datei, die seine Liste nicht nennt',

  // Marks that come from elsewhere; the reasons become sentences of their own
  'A sketched stroke': 'Ein skizzierter Strich',
  '{0} sketched strokes and what answers them': '{0} skizzierte Striche und was darauf antwortet',
  'The painter of that painting does not let others sketch over it.':
    'Wer dieses Gemälde gemalt hat, lässt andere nicht darüber skizzieren.',
  'Annotation {0}': 'Anmerkung {0}',
  'Annotations {0} to {1}': 'Anmerkungen {0} bis {1}',
  'At most {0} are taken in at once.': 'Höchstens {0} werden auf einmal übernommen.',
  'It answers something that was left out or is not here.':
    'Sie antwortet auf etwas, das weggelassen wurde oder nicht hier ist.',
  'An annotation without words': 'Eine Anmerkung ohne Worte',
  'it has {0} characters, and a remark holds {1}': 'sie hat {0} Zeichen, und eine Bemerkung fasst {1}',
  'it answers with nothing that could be taken': 'sie antwortet mit nichts, das sich übernehmen ließe',
  'it does not fit any mark of a board': 'sie passt zu keiner Anmerkung einer Tafel',
  'its tag “{0}” names no plane here': 'ihr Stichwort „{0}“ nennt hier keine Ebene',
  'it speaks of the whole picture and stands in its middle':
    'sie spricht vom ganzen Bild und steht in seiner Mitte',
  'it does not say where it points': 'sie sagt nicht, wohin sie zeigt',
  'it stands on a picture that is not on this board ({0})':
    'sie steht auf einem Bild, das nicht auf dieser Tafel ist ({0})',
  'it narrows its place in a way that is not known here':
    'sie grenzt ihre Stelle auf eine Weise ein, die hier nicht bekannt ist',
  'its shape lies elsewhere, and nothing is fetched': 'ihre Form liegt anderswo, und geholt wird nichts',
  'its place cannot be read': 'ihre Stelle ist nicht zu lesen',
  'it points by “{0}”, which is no place on a picture':
    'sie zeigt mit „{0}“, und das ist keine Stelle auf einem Bild',
  'its place ({0}) is no region of a picture': 'ihre Stelle ({0}) ist kein Teil eines Bildes',
  'it points beside the picture': 'sie zeigt neben das Bild',
  'it is no annotation': 'es ist keine Anmerkung',
  'it points at nothing': 'sie zeigt auf nichts',
  'it points at {0} things at once': 'sie zeigt auf {0} Dinge zugleich',
  'it points at several things at once': 'sie zeigt auf mehrere Dinge zugleich',
  'it does not say what it points at': 'sie sagt nicht, worauf sie zeigt',
  'a part of it is no words': 'ein Teil davon sind keine Worte',
  'the form of its text was left out, the words are kept':
    'die Gestaltung ihres Textes wurde weggelassen, die Worte bleiben',
  'its words lie elsewhere ({0}), and nothing is fetched':
    'ihre Worte liegen anderswo ({0}), und geholt wird nichts',
  'its shape is too long': 'ihre Form ist zu lang',
  'its shape is more than a shape': 'ihre Form ist mehr als eine Form',
  'its shape holds what is no outline ({0})': 'ihre Form enthält etwas, das kein Umriss ist ({0})',
  'its shape is moved or turned by a transform':
    'ihre Form ist durch eine Umrechnung verschoben oder gedreht',
  'its shape is empty': 'ihre Form ist leer',
  'it has {0} shapes and a mark has one': 'sie hat {0} Formen, und eine Anmerkung hat eine',
  'its shape cannot be read': 'ihre Form ist nicht zu lesen',
  'its shape has several parts and a mark has one':
    'ihre Form hat mehrere Teile, und eine Anmerkung hat einen',
  'its shape has curves, and a mark is made of straight lines':
    'ihre Form hat Bögen, und eine Anmerkung besteht aus geraden Linien',
};
