/** German. Words about people: who belongs to a board, as what, and the links that bring them. Pure. */
import type * as en from '../en/people.ts';
import type { Worded } from '../worded.ts';

type PeopleWords = Worded<typeof en.peopleWords>;

const groupWords: PeopleWords['groups'] = {
  title: 'Gruppen',
  owner: 'hat die Gruppe angelegt',
  about: 'Eine Klasse oder ein Malkreis: Wer dazugehört, ist auf allen Tafeln der Gruppe.',
  make: 'Neue Gruppe',
  name: 'Wie heißt sie?',
  nameHint: 'Zum Beispiel „Donnerstagsgruppe“. Die Leute kommen mit einer Einladung.',
  makeIt: 'Gruppe anlegen',
  making: 'Wird angelegt …',
  counts: (members, boards) =>
    `${members === 1 ? 'eine Person' : `${members} Personen`}, ${boards === 0 ? 'noch keine Tafel' : boards === 1 ? 'eine Tafel' : `${boards} Tafeln`}`,
  noBoard: 'Noch keine Tafel. Leg eine für ein Motiv an; alle aus der Gruppe sind darauf.',
  people: 'Leute',
  remove: 'Diese Gruppe löschen',
  removeSure:
    'Die Tafeln bleiben bei denen, die sie angelegt haben; die anderen verlieren sie. Die Gruppe löschen?',
};

const consentWords: PeopleWords['consent'] = {
  title: 'Was mit den Bildern geschehen darf',
  mine: 'Was darf man mit deinen Bildern auf dieser Tafel tun?',
  ward: (name) => `Was darf man mit den Bildern von ${name} auf dieser Tafel tun?`,
  uses: {
    class: 'allen auf dieser Tafel zeigen',
    keep: 'aufbewahren, wenn der Unterricht vorbei ist',
    others: 'anderen außerhalb zeigen',
    example: 'im Unterricht als Beispiel verwenden',
  },
  hidden:
    'Ohne das Erste bekommen die Bilder nur zu sehen: wer sie gemalt hat, Lehrpersonen, wer die Tafel führt, und die erziehungsberechtigte Person.',
  of: (name, uses) => `${name}: ${uses}`,
  nothing: 'bisher nichts',
  said: (by, when) => `${by}, ${when}`,
};

export const peopleWords: PeopleWords = {
  title: 'Leute',
  andMore: (count) => `und ${count}`,
  invite: 'Einladen',
  inviteTitle: 'Zu dieser Tafel einladen',
  inviteToGroup: 'In diese Gruppe einladen',
  fromGroup: (name) => `Eine Tafel der Gruppe „${name}“: Wer zur Gruppe gehört, ist auch hier.`,
  groups: groupWords,
  consent: consentWords,
  roleLabel: 'Als was?',
  hoursLabel: 'So lange gilt der Link',
  hours: { 2: 'zwei Stunden', 24: 'einen Tag', 168: 'eine Woche', 720: 'einen Monat' },
  usesLabel: 'Wie viele dürfen damit kommen?',
  uses: { 0: 'beliebig viele', 1: 'eine Person', 2: 'zwei', 5: 'fünf', 12: 'zwölf', 30: 'dreißig' },
  wardLabel: 'Erziehungsberechtigt für wen?',
  guardianOf: (name) => `für ${name}`,
  came: (used, uses) => {
    const who =
      used === 0
        ? 'noch niemand ist gekommen'
        : used === 1
          ? 'eine Person ist gekommen'
          : `${used} Personen sind gekommen`;
    if (uses === null) return who;
    if (used >= uses) return `${who}, mehr können nicht kommen`;
    const left = uses - used;
    return left === 1 ? `${who}, eine kann noch kommen` : `${who}, ${left} können noch kommen`;
  },
  makeLink: 'Link machen',
  makingLink: 'Wird gemacht …',
  linkLabel: 'Schick diesen Link',
  linkHint: 'Er wird nur jetzt gezeigt. Wer ihn öffnet, nennt einen Namen und ist auf der Tafel.',
  linkHere:
    'Nur dieser Computer kann diesen Link öffnen: Öffne die Tafel unter dem Namen oder der Adresse dieses Computers in deinem Netz (wie, steht in der README) und mach den Link dort.',
  copy: 'Link kopieren',
  copied: 'Kopiert',
  copyFailed: 'Kopieren ging hier nicht; der Link ist ausgewählt, kopiere ihn von Hand.',
  open: 'Offene Einladungen',
  noneOpen: 'Keine Einladung ist offen.',
  until: (when) => `bis ${when}`,
  takeBack: 'Zurücknehmen',
  takeBackHint: 'Wer eine Einladung zurücknimmt, beendet auch den Zugang aller, die mit ihr gekommen sind.',
  takingBack: 'Wird zurückgenommen …',
  whatIs: (name) => `Als was ${name} hier ist`,
  sendAway: 'Zugang beenden',
  sendAwaySure: (name) => `Den Zugang von ${name} beenden?`,
  leave: 'Tafel verlassen',
  leaveSure: 'Wirklich verlassen? Zum Wiederkommen brauchst du einen neuen Link.',
  here: (name, role) => `${name}, ${role}, gerade hier`,
  away: (name, role) => `${name}, ${role}`,
  you: 'du',
  role: {
    host: 'Gastgeber',
    owner: 'hat die Tafel angelegt',
    teacher: 'Lehrperson',
    painter: 'malt',
    peer: 'malt mit',
    viewer: 'schaut zu',
    guardian: 'erziehungsberechtigt',
  },
  inviteRole: {
    teacher: {
      name: 'Lehrperson',
      may: 'hier alles tun, außer die Tafel zu löschen: Ebenen, Anmerkungen, Bilder von allen',
    },
    painter: { name: 'Malende', may: 'Gemälde einstellen, sie umreißen, anmerken und mitreden' },
    peer: { name: 'Mitmalende', may: 'anmerken und mitreden' },
    viewer: { name: 'Zuschauende', may: 'die Tafel sehen und nichts ändern' },
    guardian: {
      name: 'Erziehungsberechtigte',
      may: 'die Tafel einer minderjährigen Person sehen und bestimmen, was mit deren Bildern geschehen darf',
    },
  },
};
