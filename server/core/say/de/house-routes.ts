/** German: what is refused where somebody asks for what they may not do, or for what is not there. Pure. */
import type { Catalogue } from '../catalogue.ts';

export const houseRoutes: Catalogue = {
  'There is nobody here with that id. Load the page again.':
    'Hier ist niemand mit dieser Kennung. Lade die Seite neu.',
  'To delete yourself, write your name as it stands here: {0}. Nothing was deleted.':
    'Um dich zu löschen, schreib deinen Namen so, wie er hier steht: {0}. Gelöscht wurde nichts.',
  'Viewers cannot take boards in; painters and teachers can.':
    'Wer nur zuschaut, kann keine Tafeln hereinholen; Malende und Lehrpersonen können es.',
  'Only the host may read what was done on the whole server.':
    'Was auf dem ganzen Server geschah, darf nur lesen, wer ihn betreibt.',
  'Only the owner of a board and the host may take the whole of it away.':
    'Eine ganze Tafel mitnehmen darf nur, wem sie gehört oder wer den Server betreibt.',
  'Only those who teach on the board or run it may do this.':
    'Das darf nur, wer auf der Tafel unterrichtet oder sie führt.',
  'Only the painter who asked may withdraw it.': 'Zurückziehen darf die Bitte nur, wer sie gestellt hat.',
  'A look is promised for a day between today and a year from now, and {0} is not. Choose another day.':
    'Ein Blick wird für einen Tag zwischen heute und heute in einem Jahr zugesagt, und {0} liegt nicht dazwischen. Wähle einen anderen Tag.',
  'Only its painter may ask for a look at a painting.':
    'Um einen Blick auf ein Gemälde bitten darf nur, wer es gemalt hat.',
  'Nobody of that id gives looks on this board. Ask any teacher instead.':
    'Niemand mit dieser Kennung wirft auf dieser Tafel einen Blick auf Gemälde. Bitte stattdessen irgendeine Lehrperson.',
  'Only the owner of a board, its teachers and the host may read this.':
    'Das dürfen nur die lesen, denen die Tafel gehört, die auf ihr unterrichten oder die den Server betreiben.',
  'Whoever runs a board or teaches on it has to see everybody there, so blocking is for the others.':
    'Wer eine Tafel führt oder auf ihr unterrichtet, muss dort alle sehen; blockieren können nur die anderen.',
  'Only the painter may answer for their pictures, and for a minor their guardian.':
    'Über die eigenen Bilder entscheidet nur, wer sie gemalt hat, und für Minderjährige die Erziehungsberechtigten.',
  'There is no such use. Name one of {0}.': 'Eine solche Verwendung gibt es nicht. Nenne eine von {0}.',
  'Only the owner of a board and the host may move it into a group or out of one.':
    'Eine Tafel in eine Gruppe hinein- oder aus ihr herausnehmen darf nur, wem sie gehört oder wer den Server betreibt.',
  'Only the owner of a group, its teachers and the host may bring boards into it.':
    'Tafeln in eine Gruppe hereinholen dürfen nur die, denen sie gehört, die in ihr unterrichten oder die den Server betreiben.',
  'Only teachers and the host change homework; painters what they set for themselves.':
    'Aufgaben ändern nur Lehrpersonen und wer den Server betreibt; Malende die, die sie sich selbst gestellt haben.',
  'Only teachers and the host set homework for others; painters may set it for themselves.':
    'Aufgaben für andere stellen nur Lehrpersonen und wer den Server betreibt; sich selbst dürfen Malende welche stellen.',
  'Only the owner of a board, its teachers and the host may take an invite back.':
    'Eine Einladung zurücknehmen dürfen nur die, denen die Tafel gehört, die auf ihr unterrichten oder die den Server betreiben.',
  'Only the owner of a board, its teachers and the host may invite.':
    'Einladen dürfen nur die, denen die Tafel gehört, die auf ihr unterrichten oder die den Server betreiben.',
  'Only who may make marks on a board may bring some in.':
    'Anmerkungen hereinholen darf nur, wer auf der Tafel auch anmerken darf.',
  'This file holds no annotations: it is not JSON. Choose a file of Web Annotations (JSON-LD).':
    'Diese Datei enthält keine Anmerkungen: Sie ist kein JSON. Wähle eine Datei mit Web Annotations (JSON-LD).',
  'Only the owner of a board and the host may change what somebody is.':
    'Als was jemand hier ist, darf nur ändern, wem die Tafel gehört oder wer den Server betreibt.',
  'Only the owner of a board and the host may send people away.':
    'Den Zugang anderer beenden darf nur, wem die Tafel gehört oder wer den Server betreibt.',
  'That person is not a member of this board. Load the board again.':
    'Diese Person gehört nicht zu dieser Tafel. Lade die Tafel neu.',
  'Only the owner of a board and the host may say that its class is over.':
    'Dass der Unterricht zu Ende ist, darf nur sagen, wem die Tafel gehört oder wer den Server betreibt.',
  'Only the owner of a board and the host may hand it on.':
    'Eine Tafel weitergeben darf nur, wem sie gehört oder wer den Server betreibt.',
  'A board is handed on to somebody who is a member of it, and that person is not. Invite them first.':
    'Eine Tafel wird an jemanden weitergegeben, der schon zu ihr gehört, und diese Person gehört nicht dazu. Lade sie zuerst ein.',
  'There is no size {0}. Ask for {1}.': 'Eine Größe {0} gibt es nicht. Möglich: {1}.',
  'This picture is a reference: medium, drying and light are noted of paintings only. Choose a painting.':
    'Dieses Bild ist eine Vorlage: Maltechnik, Trocknen und Licht werden nur zu Gemälden vermerkt. Wähle ein Gemälde.',
  'Only the owner of a board, its teachers and the host may act on reports.':
    'Meldungen bearbeiten dürfen nur die, denen die Tafel gehört, die auf ihr unterrichten oder die den Server betreiben.',
  'Only who is on this board may report something on it.':
    'Auf dieser Tafel etwas melden darf nur, wer zu ihr gehört.',
  'Only the owner of a board and the host may rename it.':
    'Eine Tafel umbenennen darf nur, wem sie gehört oder wer den Server betreibt.',
  'Only the owner of a board and the host may delete it.':
    'Eine Tafel löschen darf nur, wem sie gehört oder wer den Server betreibt.',
  'There is no such card on this state any more. Load the page again.':
    'Eine solche Karte gibt es an diesem Stand nicht mehr. Lade die Seite neu.',
  'There is no such picture of two states. Ask for before, after or change.':
    'Ein solches Bild zweier Stände gibt es nicht. Möglich: before, after oder change.',
  '{0} Try again in a moment.': '{0} Versuch es gleich noch einmal.',
  'Only the owner of a group, its teachers and the host may make boards for it.':
    'Tafeln für eine Gruppe anlegen dürfen nur die, denen sie gehört, die in ihr unterrichten oder die den Server betreiben.',
  'Viewers cannot make boards; painters and teachers can.':
    'Wer nur zuschaut, kann keine Tafeln anlegen; Malende und Lehrpersonen können es.',
  'Only the owner of a group, its teachers and the host may take an invite back.':
    'Eine Einladung zurücknehmen dürfen nur die, denen die Gruppe gehört, die in ihr unterrichten oder die den Server betreiben.',
  'Only the owner of a group, its teachers and the host may invite to it.':
    'In eine Gruppe einladen dürfen nur die, denen sie gehört, die in ihr unterrichten oder die den Server betreiben.',
  'Only the owner of a group and the host may change what somebody is.':
    'Als was jemand hier ist, darf nur ändern, wem die Gruppe gehört oder wer den Server betreibt.',
  'Only the owner of a group and the host may send people away.':
    'Den Zugang anderer beenden darf nur, wem die Gruppe gehört oder wer den Server betreibt.',
  'That person is not a member of this group. Load the page again.':
    'Diese Person gehört nicht zu dieser Gruppe. Lade die Seite neu.',
  'Only the owner of a group and the host may rename it.':
    'Eine Gruppe umbenennen darf nur, wem sie gehört oder wer den Server betreibt.',
  'Only the owner of a group and the host may delete it.':
    'Eine Gruppe löschen darf nur, wem sie gehört oder wer den Server betreibt.',
  'Only the owner of a group and the host may change its school setting.':
    'Die Schulregeln einer Gruppe ändern darf nur, wem sie gehört oder wer den Server betreibt.',
  'Who only looks on cannot make groups; painters and teachers can.':
    'Wer nur zuschaut, kann keine Gruppen anlegen; Malende und Lehrpersonen können es.',
  'There is no such path, or it is not yours to read.':
    'Einen solchen Werdegang gibt es nicht, oder du darfst ihn nicht lesen.',
  'Only the host may make a link for somebody to come back by.':
    'Einen Link zum Wiederkommen darf nur machen, wer den Server betreibt.',
  'You keep no such phrase. Load your phrases again.':
    'Eine solche Wendung hast du nicht. Lade deine Wendungen neu.',
  'You keep {0} phrases already, which is as many as there may be. Delete one you no longer use.':
    'Du hast schon {0} Wendungen, mehr dürfen es nicht sein. Lösche eine, die du nicht mehr brauchst.',
  'Only the host may set what the whole server does not allow.':
    'Was der ganze Server nicht erlaubt, darf nur festlegen, wer ihn betreibt.',
};
