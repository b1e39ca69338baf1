/** German: what the server answers when something cannot be done. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const houseAnswers: Catalogue = {
  // Looks asked for, homework, reports
  'No look is asked for under this id; it may have been withdrawn. Load the board again.':
    'Unter dieser Kennung wird um keinen Blick gebeten; vielleicht wurde die Bitte zurückgezogen. Lade die Tafel neu.',
  'This no longer waits: it was answered or withdrawn. Load the board again.':
    'Das wartet nicht mehr: Es wurde beantwortet oder zurückgezogen. Lade die Tafel neu.',
  'This cannot be done about this report by you. A remark is removed by a teacher or the host, access ended by whoever owns the board or the host. Ask one of them, or close the report with a note.':
    'Das kannst du auf diese Meldung hin nicht tun. Eine Bemerkung entfernt, wer hier unterrichtet oder den Server betreibt; den Zugang beendet, wem die Tafel gehört oder wer den Server betreibt. Frag dort nach, oder schließ die Meldung mit einer Notiz ab.',
  'Somebody closed this report a moment ago. Load the page again.':
    'Jemand hat diese Meldung eben abgeschlossen. Lade die Seite neu.',
  'There is no such homework here; it may have been taken back. Load the board again.':
    'So eine Aufgabe gibt es hier nicht; vielleicht wurde sie zurückgenommen. Lade die Tafel neu.',
  'This homework is closed or was taken back. Load the board again.':
    'Diese Aufgabe ist abgeschlossen oder wurde zurückgenommen. Lade die Tafel neu.',
  'Homework is set for a day between today and a year from now, and {0} is not. Choose another day.':
    'Eine Aufgabe wird für einen Tag zwischen heute und heute in einem Jahr gestellt, und {0} liegt nicht dazwischen. Wähle einen anderen Tag.',
  'Only the painter whose homework it is answers it.': 'Eine Aufgabe beantwortet nur, wer sie bekommen hat.',
  'Homework is answered with a painting. Post this picture as one.':
    'Auf eine Aufgabe antwortet ein Gemälde. Stell dieses Bild als Gemälde ein.',

  // Leaving for good
  'the board “{0}”': 'die Tafel „{0}“',
  'the group “{0}”': 'die Gruppe „{0}“',
  '{0} and {1} more': '{0} und {1} weitere',
  'You still own {0}. Hand on or delete what you own first: others may have pictures and words there. Nothing was deleted.':
    'Dir gehört noch etwas: {0}. Gib erst weiter oder lösch, was dir gehört: Andere haben dort vielleicht Bilder und Worte. Es wurde nichts gelöscht.',

  // Pictures
  'There is no such picture on this board; it may have been taken back. Load the board again.':
    'So ein Bild gibt es auf dieser Tafel nicht; vielleicht wurde es zurückgenommen. Lade die Tafel neu.',
  'Only painters, teachers, the owner and the host may post pictures here. Ask the owner for a painter’s invite.':
    'Bilder einstellen darf hier nur, wer malt oder unterrichtet, wem die Tafel gehört oder wer den Server betreibt. Bitte die Person, der die Tafel gehört, um eine Einladung für Malende.',
  'Only teachers, the owner and the host may post a reference here. Post yours as a painting, or ask one of them.':
    'Eine Vorlage einstellen darf hier nur, wer unterrichtet, wem die Tafel gehört oder wer den Server betreibt. Stell dein Bild als Gemälde ein, oder frag dort nach.',
  'Only whoever posted this picture, a teacher, the owner and the host may take it back. Ask one of them.':
    'Zurücknehmen darf dieses Bild nur, wer es eingestellt hat, wer unterrichtet, wem die Tafel gehört oder wer den Server betreibt. Frag dort nach.',
  'Only the painter of this picture, a teacher and the host may note what it is painted with. Ask one of them.':
    'Womit dieses Bild gemalt ist, darf nur vermerken, wer es gemalt hat, hier unterrichtet oder den Server betreibt. Frag dort nach.',
  'A reference needs a line on rights. Say whether it is yours, used with permission, or under a free licence.':
    'Zu einer Vorlage gehört eine Angabe zu den Rechten. Sag, ob sie dir gehört, mit Erlaubnis benutzt wird oder unter freier Lizenz steht.',
  'A reference under a free licence needs a credit. Write who made it and under which licence.':
    'Eine Vorlage unter freier Lizenz braucht einen Nachweis. Schreib, wer sie gemacht hat und unter welcher Lizenz.',
  'The last state has no planes that this one lacks, so there is nothing to take over.':
    'Der letzte Stand hat keine Ebenen, die diesem fehlen, also ist nichts zu übernehmen.',
  'Who looks on here makes no remarks; painters, peers and teachers do.':
    'Wer hier zuschaut, macht keine Bemerkungen; das tun Malende, Mitmalende und Lehrpersonen.',

  // How often
  'tries to enter': 'Versuche, einzutreten',
  uploads: 'eingestellte Bilder',
  sheets: 'Blätter',
  'new invites': 'neue Einladungen',
  reports: 'Meldungen',
  'changes of whom you block': 'Änderungen daran, wen du blockierst',
  'tries to sign in': 'Versuche, dich anzumelden',
  'tries to change a password': 'Versuche, ein Passwort zu ändern',
  'Too many {0}: at most {1} in {2}. Wait {3} and try again.':
    'Zu viele {0}: höchstens {1} in {2}. Warte {3} und versuch es noch einmal.',
  '{0} minutes': '{0} Minuten',
  '1 second': '1 Sekunde',
  '{0} seconds': '{0} Sekunden',

  // What was sent
  'The file broke off before it was complete. Send it again.':
    'Die Datei brach ab, bevor sie ganz da war. Schick sie noch einmal.',
  'No file came, or it has 0 bytes. Choose it again.':
    'Es kam keine Datei, oder sie hat 0 Bytes. Wähle sie noch einmal.',
  'This archive has more than {0} MB, which is the limit. Nothing of it was kept.':
    'Dieses Archiv hat mehr als {0} MB, und das ist die Grenze. Nichts davon wurde behalten.',
  'Something went wrong on the server. It was written down there as {0}; try again in a moment.':
    'Auf dem Server ging etwas schief. Es wurde dort als {0} notiert; versuch es gleich noch einmal.',
  'The body is not JSON. Send an object as application/json.':
    'Der Inhalt ist kein JSON. Schick ein Objekt als application/json.',
  'The body is longer than {0} bytes. Send less.': 'Der Inhalt ist länger als {0} Bytes. Schick weniger.',
  "This request came from {0}, which is not this server's own page. Open Veilstep at its own address, or set VEILSTEP_ORIGIN to the address people use.":
    'Diese Anfrage kam von {0}, und das ist keine Seite dieses Servers. Öffne Veilstep unter der eigenen Adresse, oder setz VEILSTEP_ORIGIN auf die Adresse, die alle benutzen.',
  'has the wrong shape': 'es hat die falsche Form',
  'The field {0} is wrong: {1}.': 'Das Feld {0} stimmt nicht: {1}.',
  'The request is wrong: {0}.': 'Die Anfrage stimmt nicht: {0}.',
  '{0} Correct it and send it again.': '{0} Berichtige es und schick es noch einmal.',
  'There is no {0}={1} of a sheet. Ask for {2}.': '{0}={1} gibt es für ein Blatt nicht. Möglich ist {2}.',
  ' or ': ' oder ',
  'A picture is sent as multipart/form-data with a part named file.':
    'Ein Bild wird als multipart/form-data geschickt, mit einem Teil namens file.',
  'The field {0} is longer than {1} bytes.': 'Das Feld {0} ist länger als {1} Bytes.',
  'The form has more than {0} fields.': 'Das Formular hat mehr als {0} Felder.',
  'No file came with this form. {0}': 'Mit diesem Formular kam keine Datei. {0}',
  'This form holds several files. Send one a time.':
    'Dieses Formular enthält mehrere Dateien. Schick eine nach der anderen.',
  'The part {0} is not known.': 'Der Teil {0} ist nicht bekannt.',
  'This file': 'Diese Datei',
  'The upload broke off before it was complete. Send it again.':
    'Das Bild brach beim Schicken ab, bevor es ganz da war. Schick es noch einmal.',

  // Who asks, and when
  'The class is looking at the painting alone. The reference and the figures come when the class reaches that step.':
    'Im Unterricht wird gerade nur das Gemälde angesehen. Vorlage und Zahlen kommen, wenn der Unterricht so weit ist.',
  'First impressions of this painting are kept back until its silent look is over. Ask again then.':
    'Die ersten Eindrücke von diesem Gemälde werden zurückgehalten, bis das stille Schauen vorbei ist. Frag dann noch einmal.',
  'You have not entered here. Open the link you were given.':
    'Du bist hier noch nicht eingetreten. Öffne den Link, den du bekommen hast.',
  'There is no such board, or you have no access to it. Ask whoever runs it for an invite.':
    'So eine Tafel gibt es nicht, oder du hast keinen Zugang zu ihr. Bitte die Person, die sie führt, um eine Einladung.',
  'There is no such group, or you do not belong to it. Ask whoever runs it for an invite.':
    'So eine Gruppe gibt es nicht, oder du gehörst nicht dazu. Bitte die Person, die sie führt, um eine Einladung.',
  '{0} Ask them to do it.': '{0} Bitte dort darum.',
  'The server is stopping. Try again in a moment.':
    'Der Server hält gerade an. Versuch es gleich noch einmal.',
  'The file of this picture ({0}…) is not in the data folder. Restore it from a backup, or remove the picture and post it again.':
    'Die Datei zu diesem Bild ({0}…) liegt nicht im Datenordner. Hol sie aus einer Sicherung zurück, oder entferne das Bild und stell es neu ein.',
  'The disk that holds the data folder is full, so this could not be saved. Nothing half-written was kept. Free some space on the server and try again.':
    'Der Datenträger mit dem Datenordner ist voll, deshalb konnte das nicht gespeichert werden. Nichts halb Geschriebenes wurde behalten. Schaff auf dem Server Platz und versuch es noch einmal.',
};
