/**
 * German. Every word of the shell, in one place: entering, boards, the board's frame, posting, people.
 *
 * The server's own sentences are shown as they come. Pure.
 */
import type * as en from '../en/shell.ts';
import type { Worded } from '../worded.ts';
import { accountWords } from './account.ts';
import { peopleWords } from './people.ts';

const SMALL = ['zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];

/** "eine Vorlage", "drei Vorlagen", "12 Vorlagen". @param one With its article. */
function counted(count: number, one: string, many: string): string {
  return count === 1 ? one : `${SMALL[count - 2] ?? count} ${many}`;
}

export const words: Worded<typeof en.words> = {
  product: 'Veilstep',
  what: 'Eine Tafel für alle, die Landschaften malen: Gemälde und Vorlage nebeneinander halten, sehen, wie die Ebenen zurückweichen, und gemeinsam in beiden anmerken.',
  close: 'Schließen',
  cancel: 'Abbrechen',
  tryAgain: 'Noch einmal',
  partMissing:
    'Dieser Teil der Seite ließ sich nicht holen. Versuch es noch einmal, wenn die Verbindung wieder steht.',
  noAnswer:
    'Der Server hat nicht geantwortet. Sieh nach, ob dieses Gerät noch im Netz ist, und versuch es dann noch einmal.',
  strangeAnswer: (status) =>
    `Der Server hat auf eine Weise geantwortet, die diese Seite nicht versteht (Status ${status}). Versuch es gleich noch einmal.`,
  skipToBoard: 'Gleich zu den Bildern',

  enter: {
    title: 'Eintreten',
    lead: 'Stell eine Vorlage ein und das Gemälde, das nach ihr entstanden ist; sieh Ebene für Ebene, worin sie sich unterscheiden, und sprich darüber auf einer Tafel.',
    invited: 'Du bist zu einer Tafel eingeladen, auf der Malende gemeinsam ein Motiv betrachten.',
    name: 'Dein Name',
    nameHint: 'So, wie die anderen dich nennen sollen. Mehr wird nicht gefragt.',
    enter: 'Eintreten',
    entering: 'Wird geöffnet …',
    enterAs: (name) => `Als ${name} eintreten`,
    noKeyTitle: 'Zu dieser Adresse gehört ein Link',
    noKey:
      'Hinein kommst du mit einem Link: Der Link für Gastgeber steht dort, wo der Server gestartet wurde, alle anderen kommen mit einer Einladung. Öffne den ganzen Link so, wie du ihn bekommen hast.',
    badLinkHost:
      'Ein Link für Gastgeber gilt einmal. Wer den Server betreibt, kann mit „npm run host-link“ einen neuen ausgeben.',
    badLinkInvite: 'Wer ihn dir geschickt hat, kann einen neuen machen; Einladungen enden nach einiger Zeit.',
    back: 'Zu den Tafeln',
  },

  boards: {
    title: 'Tafeln',
    newBoard: 'Neue Tafel',
    newTitle: 'Was ist das Motiv?',
    newHint: 'Ein Titel genügt; die Bilder kommen danach.',
    make: 'Tafel anlegen',
    making: 'Wird angelegt …',
    empty:
      'Noch keine Tafel. Leg eine für ein Motiv an: Sie trägt die Vorlage, dein Gemälde und das, was dazu gesagt wird.',
    stranger: 'Bitte um einen Link',
    strangerText:
      'Was hier eingestellt wird, sehen nur die Eingeladenen. Bitte die Person, die malt oder unterrichtet, um einen Link und öffne ihn auf diesem Gerät.',
    strangerHost:
      'Du betreibst diesen Server selbst? „npm run host-link“ gibt einen Link aus, der dich hineinlässt.',
    bare: 'Noch nichts eingestellt',
    veiled: 'Die Bilder werden gerade nicht gezeigt',
    demo: 'Beispiel',
    by: (owner) => `Angelegt von ${owner}`,
    signedAs: (name) => `Du bist als ${name} hier.`,
    counts: (references, paintings) =>
      `${references === 0 ? 'nach der Natur' : counted(references, 'eine Vorlage', 'Vorlagen')}, ${
        paintings === 0 ? 'noch kein Gemälde' : counted(paintings, 'ein Gemälde', 'Gemälde')
      }`,
  },

  board: {
    toBoards: 'Tafeln',
    rename: 'Titel ändern',
    renameField: 'Titel der Tafel',
    save: 'Speichern',
    more: 'Mehr',
    takeAway: 'Mitnehmen, hereinholen',
    remove: 'Tafel löschen …',
    keys: 'Tasten',
    notFoundTitle: 'Diese Tafel gibt es für dich nicht',
    notFound:
      'Sie wurde vielleicht gelöscht, oder du bist nicht eingeladen. Öffne noch einmal den Link, den du bekommen hast, oder bitte um einen neuen.',
    easel: 'Bilder',
    ladder: 'Leiter',
    talk: 'Gespräch',
    planes: 'Ebenen',
    photo: 'Foto',
    tray: 'Ablage',
    aside: 'Gespräch, Ebenen und Foto',
    sideTabs: 'Neben den Bildern',
    lowerTabs: 'Unter den Bildern',
    noPicturesTitle: 'Beginne mit einem Bild',
    noPicturesPainter:
      'Zieh ein Gemälde irgendwo hierher, wähle seine Datei oder mach ein Foto davon. Vorlagen stellt ein, wer die Tafel angelegt hat, oder eine Lehrperson.',
    noPictures:
      'Zieh eine Vorlage oder ein Gemälde irgendwo hierher, wähle Dateien oder mach ein Foto. Nach der Natur gemalt? Dann stell nur das Gemälde ein.',
    scenario: 'Zu diesem Beispiel',
  },

  tray: {
    label: 'Was die Hand tut',
    look: 'Schauen',
    outline: 'Umriss',
    mark: 'Anmerken',
    photo: 'Entzerren',
    view: 'Was das Auge sieht',
    squint: 'Blinzeln',
    grey: 'Grau',
    lines: 'Linien',
    marks: 'Anmerkungen',
    beside: 'Nebeneinander',
    over: 'Übereinander',
    surround: { mid: 'Mittelgrau', dark: 'Dunkelgrau', light: 'Hellgrau' },
    reference: 'Vorlage',
    painting: 'Gemälde',
    shown: 'Welches Bild gezeigt wird',
  },

  shelf: {
    label: 'Bilder dieser Tafel',
    references: 'Vorlagen',
    paintings: 'Gemälde',
    reference: (painter) => `Vorlage, eingestellt von ${painter}`,
    painting: (painter, state) =>
      state > 1 ? `Gemälde von ${painter}, Stand ${state}` : `Gemälde von ${painter}`,
    post: 'Bilder einstellen',
    all: 'Alle Bilder',
    wall: 'Wand',
    size: (width, height) => `${width} × ${height} Pixel`,
    remove: 'Dieses Bild löschen',
    removeSure: 'Es verschwindet für alle, mit Umrissen und Zahlen. Das lässt sich nicht rückgängig machen.',
    removing: 'Wird gelöscht …',
    original: 'Allein öffnen',
    more: 'Mehr',
    postedBy: (name) => `Eingestellt von ${name}`,
  },

  rights: {
    mine: 'Selbst fotografiert',
    permission: 'Mit Erlaubnis verwendet',
    free: 'Freie Lizenz',
  },

  post: {
    title: 'Bilder einstellen',
    choose: 'Dateien wählen',
    camera: 'Foto machen',
    dropHere: 'Loslassen zum Einstellen',
    kinds:
      'JPEG, PNG, WebP, TIFF, AVIF oder HEIC, je bis 60 MB. Angaben zu Ort und Kamera werden bei der Ankunft entfernt.',
    whatIsIt: 'Was ist es?',
    reference: 'Eine Vorlage',
    painting: 'Ein Gemälde',
    rightsLabel: 'Von wem ist das Foto?',
    creditFree: 'Nachweis: von wem, unter welcher Lizenz',
    creditPermission: 'Nachweis (wer es erlaubt hat), wenn du magst',
    creditNeeded:
      'Noch nicht eingestellt: Eine freie Lizenz braucht einen Nachweis, von wem das Foto ist und unter welcher Lizenz.',
    rightsNeeded: 'Noch nicht eingestellt: Wähle oben, von wem das Foto ist.',
    follows: 'Ist es ein späterer Stand eines Gemäldes hier?',
    followsNone: 'Nein, ein eigenes Gemälde',
    fromLife:
      'Diese Tafel hat keine Vorlage. Für ein Gemälde nach der Natur ist das in Ordnung; eine Vorlage kann später kommen.',
    send: (count) => (count === 1 ? 'Einstellen' : `Alle ${count} einstellen`),
    more: 'Noch eines',
    leaveOut: 'Dieses nicht einstellen',
    noPreview: 'lässt sich vor dem Einstellen nicht zeigen',
    waiting: 'wartet noch',
    sending: (percent) => `${percent} gesendet`,
    taking: 'wird durchgesehen und abgelegt',
    done: 'eingestellt',
    cancelled: 'angehalten',
    stop: 'Anhalten',
    dismiss: 'Aus der Liste',
    progressLabel: 'Bilder, die gerade eingestellt werden',
    tooLarge: (name, size) =>
      `${name} hat ${size}; ein Bild darf höchstens 60 MB haben. Mach es kleiner und versuch es noch einmal.`,
    emptyFile: (name) => `${name} ist leer (0 Byte). Wähle eine andere Datei.`,
  },

  people: peopleWords,

  account: accountWords,

  remove: {
    title: 'Diese Tafel löschen',
    sure: 'Bilder, Ebenen, Anmerkungen und Zahlen verschwinden für alle. Das lässt sich nicht rückgängig machen.',
    type: (title) => `Schreib zur Sicherheit den Titel: ${title}`,
    button: 'Für alle löschen',
    removing: 'Wird gelöscht …',
  },

  trouble: {
    title: 'Auf dieser Seite ist etwas schiefgegangen',
    text: 'Was die anderen sehen, ist davon nicht berührt, und was abgelegt war, bleibt abgelegt. Versuch es noch einmal.',
    again: 'Noch einmal versuchen',
    notFoundTitle: 'Unter dieser Adresse ist nichts',
    notFound: 'Der Link wurde unterwegs vielleicht abgeschnitten. Öffne ihn ganz oder geh zu den Tafeln.',
  },

  keys: {
    title: 'Tasten',
    lead: 'Sie wirken, solange nichts geschrieben wird.',
    look: 'umherschauen',
    outline: 'Ebenen umreißen',
    photo: 'das Foto des Gemäldes entzerren',
    squint: 'blinzeln: die Bilder verschwimmen lassen',
    grey: 'grau: Tonwert ohne Farbe',
    surround: 'das nächste Grau um die Bilder',
    lines: 'Umrisse an und aus',
    marks: 'Anmerkungen an und aus',
    arrange: 'nebeneinander oder übereinander',
    side: 'das andere Bild, auf schmalem Bildschirm',
    table: 'die Leiter als Tabelle und zurück',
    undo: 'rückgängig machen',
    redo: 'wiederholen',
    help: 'diese Liste',
    zoom: 'näher, weiter weg, ganzes Bild (auf einem Bild)',
    pan: 'das Bild oder den Punkt verschieben (auf einem Bild)',
    letters: 'Buchstabentasten sind an',
  },
};
