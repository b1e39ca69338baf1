/** German. Words about decency: reports, blocking, the school setting, what was done, whose a board is. Pure. */
import type * as en from '../en/decency.ts';
import type { Worded } from '../worded.ts';

type DecencyWords = Worded<typeof en.decencyWords>;

const counted = (count: number, one: string, many: string) => (count === 1 ? one : `${count} ${many}`);

const reportWords: DecencyWords['report'] = {
  act: 'Melden',
  title: {
    remark: 'Eine Bemerkung melden',
    picture: 'Ein Bild melden',
    person: 'Jemanden melden',
  },
  label: (name) => `Das von ${name} melden`,
  person: (name) => `${name} melden`,
  field: 'Was ist los?',
  hint: 'Ein paar Worte genügen.',
  goes: 'Die Meldung bekommen: wer den Server betreibt, wer die Tafel führt, und die Lehrpersonen der Tafel, aber nie die Person, um die es geht. Sie sehen deinen Namen und die Bemerkung, wie sie jetzt dasteht.',
  send: 'Meldung senden',
  sending: 'Wird gesendet …',
  sent: 'Gesendet. Unter „Meldungen“ auf deiner Seite mit den Tafeln siehst du, wann sie jemand gelesen hat.',
};

const blockWords: DecencyWords['block'] = {
  act: 'Blockieren',
  label: (name) => `${name} blockieren`,
  sure: (name) =>
    `Ihr seht beide nicht mehr, was die andere Person sagt, zeichnet oder zeigt, von jetzt an und auch von früher. ${name} erfährt davon nichts. Bilder bleiben im Unterricht zu sehen. Auf deiner eigenen Seite kannst du es rückgängig machen.`,
  title: 'Wen du blockierst',
  none: 'Du blockierst niemanden.',
  undo: 'Freigeben',
  undoLabel: (name) => `${name} nicht mehr blockieren`,
};

const reportsWords: DecencyWords['reports'] = {
  title: 'Meldungen',
  none: 'Nichts wurde gemeldet.',
  open: 'Offen',
  closed: 'Abgeschlossen',
  mine: 'Was du gemeldet hast',
  what: (about, person, board) =>
    `${{ remark: 'Eine Bemerkung von', picture: 'Ein Bild von', person: 'Über' }[about]} ${person}, auf „${board}“`,
  said: (reporter, when) => `${reporter}, ${when}`,
  quoted: 'Die Bemerkung, wie sie dastand',
  toBoard: 'Tafel öffnen',
  note: 'Eine Notiz für alle, die Meldungen lesen',
  acts: {
    'remove-remark': 'Bemerkung entfernen',
    'withdraw-picture': 'Bild zurücknehmen',
    'end-access': 'Zugang zur Tafel beenden',
    note: 'Mit der Notiz abschließen',
  },
  sure: {
    'remove-remark': 'Die Bemerkung verschwindet für alle. Entfernen?',
    'withdraw-picture':
      'Das Bild verschwindet sofort für alle, mit allem, was darauf gesagt wurde. Zurücknehmen?',
    'end-access': 'Die gemeldete Person verliert die Tafel sofort. Den Zugang beenden?',
    note: 'Abschließen?',
  },
  outcome: {
    'remark-removed': 'die Bemerkung wurde entfernt',
    'picture-withdrawn': 'das Bild wurde zurückgenommen',
    'access-ended': 'der Zugang wurde beendet',
    noted: 'abgeschlossen',
  },
  waits: 'noch nicht gelesen',
  seen: (when) => `gelesen: ${when}`,
  done: (outcome, when) => `${outcome}, ${when}`,
};

const recordWords: DecencyWords['record'] = {
  title: 'Was getan wurde',
  note: 'Was gegenüber anderen getan wurde, von Gastgebern, Lehrpersonen und denen, die eine Tafel führen; 365 Tage aufbewahrt. Weder Bilder noch das, was in Bemerkungen stand.',
  none: 'Bisher wurde nichts getan.',
  deletedTitle: 'Was gelöscht wurde',
  deletedNone: 'Bisher wurde nichts von selbst gelöscht.',
  deleted: (title, pictures, remarks, whole) =>
    whole
      ? `Die Tafel „${title}“ mit ${counted(pictures, 'einem Bild', 'Bildern')} und ${counted(remarks, 'einer Bemerkung', 'Bemerkungen')}`
      : `${counted(pictures, 'Ein Bild', 'Bilder')} und ${counted(remarks, 'eine Bemerkung', 'Bemerkungen')} von „${title}“`,
  reason: {
    age: 'die festgelegte Zahl von Tagen war um',
    day: 'der festgelegte Tag war gekommen',
    over: 'der Unterricht war vorbei',
  },
};

const schoolWords: DecencyWords['school'] = {
  title: 'Schulregeln',
  house: 'Schulregeln des ganzen Servers',
  lead: 'Was hier den Lernenden zuliebe nicht erlaubt ist. Gruppen können nur strenger sein als der Server.',
  noPublicLinks: 'Keine offenen Links',
  noPublicLinksWhy:
    'Eine Einladung lässt eine Person herein und gilt 48 Stunden. Offene Links für viele enden jetzt.',
  noMixingHints: 'Keine Hinweise zum Mischen',
  noMixingHintsWhy: 'Karten sagen, was zu tun ist, nicht, wie Farbe gemischt oder geschichtet wird.',
  aliases: 'Erfundene Namen',
  aliasesWhy:
    'Mitglieder sehen einander unter erfundenen Namen. Die angegebenen Namen sehen Lehrpersonen, wer die Tafel oder Gruppe führt, und wer den Server betreibt.',
  days: 'Nach so vielen Tagen löschen',
  daysHint: 'Gezählt ab dem Tag, an dem ein Bild eingestellt wurde. Lass es leer, um nichts zu löschen.',
  day: 'An diesem Tag löschen',
  dayHint: 'Was vor diesem Tag eingestellt wurde. Lass es leer, um nichts zu löschen.',
  stays:
    'Gemälde bleiben, wenn erlaubt wurde, sie aufzubewahren, von der Person, die sie gemalt hat, oder ihren Erziehungsberechtigten; Vorlagen bleiben so lange wie ein Gemälde ihrer Tafel. Eine Tafel, auf der nichts bleibt, geht ganz. Das lässt sich nicht rückgängig machen.',
  keep: 'Regeln speichern',
  keeping: 'Wird gespeichert …',
  kept: 'Die Regeln gelten von jetzt an.',
  noMessages: 'Private Nachrichten gibt es hier nicht: Was gesagt wird, steht auf einer Tafel.',
};

const placeWords: DecencyWords['place'] = {
  title: 'Diese Tafel',
  group: 'Gehört zur Gruppe',
  noGroup: 'keine Gruppe',
  move: 'Verschieben',
  moveNote:
    'Wer zu einer Gruppe gehört, ist auf all ihren Tafeln; wer nur über die alte Gruppe kam, verliert diese Tafel.',
  hand: 'Tafel weitergeben an',
  handIt: 'Weitergeben',
  handSure: (name) => `Dann gehört die Tafel ${name}, und du bleibst als Lehrperson darauf. Weitergeben?`,
  ending: 'Wenn der Unterricht vorbei ist',
  endingWhat:
    'Gemälde, die niemand aufzubewahren erlaubt hat, werden dann gelöscht. Erst werden sie gezählt, und du wirst noch einmal gefragt.',
  over: 'Der Unterricht ist vorbei …',
  overCount: (goes, stays) => {
    if (goes === 0) return 'Jedes Gemälde hier darf aufbewahrt werden, also würde nichts gelöscht.';
    const gone =
      goes === 1
        ? 'Ein Gemälde würde gelöscht, weil niemand erlaubt hat, es aufzubewahren'
        : `${goes} Gemälde würden gelöscht, weil niemand erlaubt hat, sie aufzubewahren`;
    const left = stays === 0 ? 'keines bleibt' : stays === 1 ? 'eines bleibt' : `${stays} bleiben`;
    return `${gone}; ${left}. Das lässt sich nicht rückgängig machen.`;
  },
  overDo: 'Löschen: Der Unterricht ist vorbei',
  overAt: (when) => `Der Unterricht gilt als beendet seit: ${when}.`,
};

export const decencyWords: DecencyWords = {
  report: reportWords,
  block: blockWords,
  reports: reportsWords,
  record: recordWords,
  school: schoolWords,
  place: placeWords,
  house: {
    title: 'Meldungen und Protokoll',
    link: 'Meldungen',
    linkHost: 'Meldungen und Protokoll',
    ofBoard: 'Meldungen, und was hier getan wurde',
    all: 'Alle Tafeln',
  },
  alias: (alias) => `Die anderen Mitglieder sehen dich hier als ${alias}.`,
  group: {
    rename: 'Umbenennen',
    name: 'Name der Gruppe',
    keep: 'Namen speichern',
    bring: 'Eine Tafel in diese Gruppe holen',
    bringIt: 'Hereinholen',
    board: 'Welche Tafel?',
  },
};
