/** German: accounts, roles, invitations, reports, what was done to others, and what is sent in forms. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const housePeople: Catalogue = {
  // Accounts
  'Your present password is another one, so nothing was changed. Write it once more, or ask the host for a link to set a new one.':
    'Dein jetziges Passwort lautet anders, deshalb wurde nichts geändert. Schreib es noch einmal, oder lass dir einen Link für ein neues geben; das kann, wer den Server betreibt.',
  'This e-mail address belongs to somebody here already. Sign in with it, or use another.':
    'Diese E-Mail-Adresse gehört hier schon jemandem. Melde dich damit an, oder nimm eine andere.',
  'E-mail address and password do not belong together. Look at both again; if the password is lost, whoever runs this server can make you a link to set a new one.':
    'E-Mail-Adresse und Passwort gehören nicht zusammen. Sieh dir beides noch einmal an; ist das Passwort verloren, kann dir, wer diesen Server betreibt, einen Link für ein neues machen.',
  'There is nobody here with that id. Load the page again.':
    'Unter dieser Kennung ist hier niemand. Lade die Seite neu.',
  'A password needs an e-mail address to sign in with, and you gave none so far. Come back without one first.':
    'Zu einem Passwort gehört eine E-Mail-Adresse, mit der man sich anmeldet, und du hast bisher keine angegeben. Komm erst ohne Passwort wieder.',
  'This link does not work: it was used already or has run out. Ask the host for a new one.':
    'Dieser Link geht nicht: Er wurde schon benutzt oder ist abgelaufen. Bitte die Person, die den Server betreibt, um einen neuen.',
  'This link does not work: it was used already, has run out, or was taken back. Ask for a new one.':
    'Dieser Link geht nicht: Er wurde schon benutzt, ist abgelaufen oder wurde zurückgenommen. Bitte um einen neuen.',

  // What was done to others. Names and titles stand in cases that leave them as they are.
  teacher: 'Lehrperson',
  painter: 'Malende',
  peer: 'Mitmalende',
  onlooker: 'Zuschauende',
  guardian: 'Erziehungsberechtigte',
  'somebody who is gone': 'eine hier nicht mehr vorhandene Person',
  '{0} made {1} {2} in {3}.': '{0} hat {1} in {3} eingetragen als „{2}“.',
  '{0} ended the access of {1} to {2}.': '{0} hat den Zugang zu {2} beendet für {1}.',
  'any number of people': 'beliebig viele',
  'one person': 'eine Person',
  '{0} people': '{0} Personen',
  '{0} made an invitation to {1} as {2} for {3}.': '{0} hat eine Einladung zu {1} als „{2}“ für {3} gemacht.',
  '{0} took an invitation to {1} back, with the access of who came by it.':
    '{0} hat eine Einladung zu {1} zurückgenommen, samt dem Zugang aller, die durch sie kamen.',
  '{0} took a picture of {1} back from {2}.':
    '{0} hat ein Bild aus {2} zurückgenommen, eingestellt durch {1}.',
  '{0} removed a remark of {1} from {2}.': '{0} hat eine Bemerkung aus {2} entfernt, geschrieben durch {1}.',
  '{0} closed a report about {1} in {2}.': '{0} hat in {2} eine Meldung über {1} abgeschlossen.',
  '{0} made a link for {1} to come back by.': '{0} hat einen Link zum Wiederkommen gemacht für {1}.',
  '{0} set for the whole server: {1}.': '{0} hat für den ganzen Server festgelegt: {1}.',
  '{0} set for {1}: {2}.': '{0} hat für {1} festgelegt: {2}.',
  '{0} deleted the board {1}.': '{0} hat die Tafel {1} gelöscht.',
  '{0} moved the board {1} out of its group.': '{0} hat die Tafel {1} aus ihrer Gruppe genommen.',
  '{0} moved the board {1} into {2}.': '{0} hat die Tafel {1} in die Gruppe {2} verschoben.',
  '{0} handed the board {1} on to {2}.': '{0} hat die Tafel {1} weitergegeben an {2}.',
  '{0} said that the class is over on {1}; one picture was deleted.':
    '{0} hat den Unterricht auf {1} für beendet erklärt; ein Bild wurde gelöscht.',
  '{0} said that the class is over on {1}; {2} pictures were deleted.':
    '{0} hat den Unterricht auf {1} für beendet erklärt; {2} Bilder wurden gelöscht.',
  '{0} deleted the group {1}.': '{0} hat die Gruppe {1} gelöscht.',
  'no public links': 'keine offenen Links',
  'no mixing hints': 'keine Hinweise zum Mischen',
  'made-up names': 'erfundene Namen',
  'deletion after {0} days': 'Löschen nach {0} Tagen',
  'deletion on {0}': 'Löschen am {0}',
  'nothing is held back': 'nichts wird zurückgehalten',

  // Blocking, inviting, reporting
  'That is yourself. Choose somebody else to block.':
    'Das bist du selbst. Wähle jemand anderen zum Blockieren.',
  'That person is not on this board. Load the board again.':
    'Diese Person ist nicht auf dieser Tafel. Lade die Tafel neu.',
  'Whoever runs this board or teaches on it cannot be blocked here: the class needs them. If something they did is not right, report it; it goes to the others who run the board and to the host, not to them.':
    'Wer diese Tafel führt oder auf ihr unterrichtet, kann hier nicht blockiert werden: Der Unterricht braucht sie. Ist etwas daran nicht in Ordnung, dann melde es; es geht an die anderen, die die Tafel führen oder den Server betreiben, nicht an die gemeldete Person.',
  'That person is not a member here. Invite them first, then their guardian.':
    'Diese Person gehört hier nicht dazu. Lade erst sie ein, dann ihre Erziehungsberechtigten.',
  'There is no such invite here, or it was taken back already.':
    'So eine Einladung gibt es hier nicht, oder sie wurde schon zurückgenommen.',
  'That remark is no longer there. Report its author instead.':
    'Diese Bemerkung ist nicht mehr da. Melde stattdessen, wer sie geschrieben hat.',
  'That picture is no longer there. Report its painter instead.':
    'Dieses Bild ist nicht mehr da. Melde stattdessen, wer es gemalt hat.',
  'There is no such open report; somebody may have closed it. Load the page again.':
    'So eine offene Meldung gibt es nicht; vielleicht hat sie jemand abgeschlossen. Lade die Seite neu.',
  'Here an invitation lets in one person and works for at most {0} hours. Make one for each person; whoever runs the group or the server can change the school setting.':
    'Hier lässt eine Einladung nur eine Person ein und gilt höchstens {0} Stunden. Mach für jede Person eine; wer die Gruppe führt oder den Server betreibt, kann die Schulregeln ändern.',
  'Only its painter and those who teach here take this painting’s sheet. Others can once its painter says, under Consent, that it may be shown to others outside.':
    'Das Blatt zu diesem Gemälde nehmen nur mit, wer es gemalt hat oder hier unterrichtet. Andere können es, sobald unter „Was mit den Bildern geschehen darf“ erlaubt ist, es anderen außerhalb zu zeigen.',
  'The house': 'Das Haus',

  // What is sent in forms
  'Say in a few words what is the matter.': 'Sag in ein paar Worten, was los ist.',
  'is a whole number of days': 'es muss eine ganze Zahl von Tagen sein',
  'at least one day': 'mindestens ein Tag',
  'at most 3650 days, which is ten years': 'höchstens 3650 Tage, das sind zehn Jahre',
  'is a day such as 2027-06-30': 'es muss ein Tag wie 2027-06-30 sein',
  'Write a day as 2026-12-31.': 'Schreib einen Tag so: 2026-12-31.',
  'Write what there is to try.': 'Schreib, was versucht werden soll.',
  'Homework has at most {0} characters.': 'Eine Aufgabe hat höchstens {0} Zeichen.',
  'A check has at most {0} characters.': 'Eine Prüfung hat höchstens {0} Zeichen.',
  'A line to the teacher has at most {0} characters.':
    'Eine Bitte an die Lehrperson hat höchstens {0} Zeichen.',
  'Write the phrase.': 'Schreib die Wendung.',
  'A phrase has at most {0} characters.': 'Eine Wendung hat höchstens {0} Zeichen.',
  'At most 60 rooms.': 'Höchstens 60 Räume.',
  'Write a name.': 'Schreib einen Namen.',
  'A name has at most 60 characters.': 'Ein Name hat höchstens 60 Zeichen.',
  'Write a title.': 'Schreib einen Titel.',
  'A title has at most 120 characters.': 'Ein Titel hat höchstens 120 Zeichen.',
  'An e-mail address has at most 254 characters.': 'Eine E-Mail-Adresse hat höchstens 254 Zeichen.',
  'Write the whole e-mail address.': 'Schreib die ganze E-Mail-Adresse.',
  'A password has at least 10 characters; a few words make a good one.':
    'Ein Passwort hat mindestens 10 Zeichen; ein paar Wörter ergeben ein gutes.',
  'A password has at most 200 characters.': 'Ein Passwort hat höchstens 200 Zeichen.',
  'Write a name for the group.': 'Schreib einen Namen für die Gruppe.',
  'The name of a group has at most 120 characters.': 'Der Name einer Gruppe hat höchstens 120 Zeichen.',
  'is a whole number': 'es muss eine ganze Zahl sein',
  'at least one person': 'mindestens eine Person',
  'at most 1000 people': 'höchstens 1000 Personen',
  'A guardian’s invite names the minor it is about, and no other invite does':
    'Eine Einladung für Erziehungsberechtigte nennt die minderjährige Person, um die es geht, und keine andere Einladung tut das',
  'Write what it is painted with.': 'Schreib, womit es gemalt ist.',
  'A medium has at most 60 characters.': 'Eine Maltechnik hat höchstens 60 Zeichen.',
  'Name at least one of medium, drying and light': 'Nenn wenigstens eines von Maltechnik, Trocknen und Licht',
  'A note has at most {0} characters.': 'Eine Notiz hat höchstens {0} Zeichen.',
};
