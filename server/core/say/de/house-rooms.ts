/** German: why a change on an open board was taken back, or its connection ended. Pure. */
import type { Catalogue } from '../catalogue.ts';

/** Parts of a board, by the keys under which its rooms keep them. */
const PARTS: Readonly<Record<string, string>> = {
  'the board': 'Tafel',
  planes: 'Ebenen',
  outlines: 'Umrisse',
  air: 'Luftfarbe',
  conditions: 'Licht und Wetter',
  unreliable: 'Unverlässliches',
  plan: 'Plan',
  answers: 'Antworten',
  hidden: 'Verborgenes',
  wall: 'Wand',
  photo: 'Foto',
  intention: 'Absicht',
  focus: 'Blickpunkt',
  meant: 'Gewolltes',
  allows: 'Erlaubnis zum Skizzieren',
  cards: 'Karten',
  said: 'In eigenen Worten',
  frame: 'Ausschnitt',
  result: 'Ergebnis',
  marks: 'Anmerkungen',
  nods: 'Nicken',
  class: 'Unterricht',
  kept: 'Uhr',
  notes: 'erste Eindrücke',
};

const partOf = (key: string | undefined): string => PARTS[key ?? ''] ?? key ?? '';

export const houseRooms: Catalogue = {
  // Steps of a class
  'looking in silence': 'das stille Schauen',
  'the painter’s intention': 'die Absicht hinter dem Bild',
  'what works': 'das, was gelingt',
  'the reference and its values': 'die Vorlage und ihre Tonwerte',
  'what to do first': 'das Wichtigste',
  'what will be tried': 'das, was ausprobiert wird',
  'the painter to say back what they will do first': 'die eigenen Worte dazu, was als Erstes kommt',

  // Refusals
  'You are not signed in here. Open your link again.':
    'Du bist hier nicht angemeldet. Öffne deinen Link noch einmal.',
  'This page comes from another address than the board. Open the board itself.':
    'Diese Seite kommt von einer anderen Adresse als die Tafel. Öffne die Tafel selbst.',
  'This board is not here, or you are not on it.': 'Diese Tafel ist nicht hier, oder du bist nicht auf ihr.',
  'This picture is no longer on the board.': 'Dieses Bild ist nicht mehr auf der Tafel.',
  'Your access to this board has ended. Ask for a new link.':
    'Dein Zugang zu dieser Tafel ist beendet. Bitte um einen neuen Link.',
  'You signed out here. Enter again to go on.':
    'Du hast dich hier abgemeldet. Tritt wieder ein, um weiterzumachen.',
  'What you may do on this board has changed. It is loaded again by itself.':
    'Was du auf dieser Tafel darfst, hat sich geändert. Sie lädt sich von selbst neu.',
  'You may look at this but not change it. Your last change was taken back.':
    'Du darfst das ansehen, aber nicht ändern. Deine letzte Änderung wurde zurückgenommen.',
  'Results are written by the server alone. Your last change was taken back.':
    'Ergebnisse schreibt nur der Server. Deine letzte Änderung wurde zurückgenommen.',
  'This mark is somebody else’s. Your last change was taken back.':
    'Diese Anmerkung gehört jemand anderem. Deine letzte Änderung wurde zurückgenommen.',
  'A mark keeps the name of who made it. Your last change was taken back.':
    'Eine Anmerkung behält den Namen der Person, von der sie ist. Deine letzte Änderung wurde zurückgenommen.',
  'Its painter has not allowed sketching over this painting. Your last change was taken back.':
    'Wer dieses Gemälde gemalt hat, erlaubt nicht, darüber zu skizzieren. Deine letzte Änderung wurde zurückgenommen.',
  'A nod is given in one’s own name and no other. Your last change was taken back.':
    'Genickt wird nur im eigenen Namen. Deine letzte Änderung wurde zurückgenommen.',
  'The marking is closed for now by who runs the class. Your last change was taken back.':
    'Wer den Unterricht führt, hat das Anmerken vorerst geschlossen. Deine letzte Änderung wurde zurückgenommen.',
  'This is the time for {0}; that comes later. Your last change was taken back.':
    'Jetzt ist die Zeit für {0}; was du tun wolltest, kommt später. Deine letzte Änderung wurde zurückgenommen.',
  'First impressions are written in the silent look, of the painting that is looked at. It was taken back.':
    'Erste Eindrücke werden beim stillen Schauen geschrieben, zu dem Gemälde, das gerade angesehen wird. Es wurde zurückgenommen.',
  'First impressions are read by nobody but who wrote them until the silent look is over.':
    'Erste Eindrücke liest bis zum Ende des stillen Schauens nur, wer sie geschrieben hat.',
  'A painting is being looked at in silence. Planes, cards and marks come when the silent look is over.':
    'Gerade wird ein Gemälde still angesehen. Ebenen, Karten und Anmerkungen kommen, wenn das stille Schauen vorbei ist.',
  'This change came in another person’s name. It was taken back.':
    'Diese Änderung kam im Namen einer anderen Person. Sie wurde zurückgenommen.',
  'What was written to {0} is not well formed. It was taken back.': (part) =>
    `Was unter „${partOf(part)}“ geschrieben wurde, hat nicht die richtige Form. Es wurde zurückgenommen.`,
  'There are {0} entries in {1} and that is the most. Remove some first.': (most, part) =>
    `Unter „${partOf(part)}“ stehen ${most} Einträge, und mehr geht nicht. Entferne erst einige.`,
  'A change builds on something the board does not have. It was taken back.':
    'Eine Änderung baut auf etwas auf, das die Tafel nicht hat. Sie wurde zurückgenommen.',
  'A message could not be read, so the connection was closed. Load the page again.':
    'Eine Nachricht war nicht zu lesen, deshalb wurde die Verbindung geschlossen. Lade die Seite neu.',
  'A change of {0} is larger than the {1} that are taken at once.':
    'Eine Änderung von {0} ist größer als die {1}, die auf einmal angenommen werden.',
  'This board holds {0} of marks and outlines, and that is the most.':
    'Diese Tafel enthält {0} an Anmerkungen und Umrissen, und mehr geht nicht.',
  'The history of this board was erased. It is loaded afresh without your old copy.':
    'Der Verlauf dieser Tafel wurde gelöscht. Sie wird frisch geladen, ohne deine alte Kopie.',
  'More than {0} messages a second arrived. The rest follows in a moment.':
    'Es kamen mehr als {0} Nachrichten in der Sekunde. Der Rest folgt gleich.',
  'More than {0} a second were asked for. The rest follows in a moment.':
    'Es wurde um mehr als {0} in der Sekunde gebeten. Der Rest folgt gleich.',
  'You have {0} connections open already. Close a few windows.':
    'Du hast schon {0} Verbindungen offen. Schließ ein paar Fenster.',
  'Your browser fell too far behind. It joins again by itself.':
    'Dein Browser kam nicht mehr mit. Er steigt von selbst wieder ein.',
  'The server’s disk is full: your last changes are kept here and sent again until there is space.':
    'Der Datenträger des Servers ist voll: Deine letzten Änderungen bleiben hier und werden wieder geschickt, bis Platz ist.',
  'The server could not save or load this just now. It tries again.':
    'Der Server konnte das gerade nicht speichern oder laden. Er versucht es wieder.',
  'The server is stopping. The board comes back by itself.':
    'Der Server hält gerade an. Die Tafel kommt von selbst wieder.',
};
