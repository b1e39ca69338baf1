/** German. Every word about homework and the sheet to take along. Kind: nobody is late, a day has passed. Pure. */
import type * as en from '../en/homework.ts';
import type { Worded } from '../worded.ts';

export const homeworkWords: Worded<typeof en.homeworkWords> = {
  title: 'Aufgabe für zu Hause',
  set: 'Aufgabe stellen',
  setMine: 'Dir selbst eine Aufgabe stellen',
  from: 'Was soll versucht werden?',
  own: 'Eine Übung in eigenen Worten',
  words: 'In Worten',
  wordsHint: 'Zum Beispiel: drei Tonwerte mit großem Pinsel, zehn Minuten.',
  check: 'Prüfung (wenn du magst)',
  day: 'Für welchen Tag?',
  answerAs: 'Was wird dazu eingestellt?',
  answers: {
    state: 'das Gemälde noch einmal, als sein nächster Stand',
    exercise: 'ein eigenes Bild, neben dem Gemälde',
  },
  keep: 'Stellen',
  keeping: 'Wird gestellt …',
  cancel: 'Jetzt nicht',

  forDay: (day) => `für ${day}`,
  passed: (day) => `Gedacht war es für ${day}. Lass dir die Zeit, die es braucht.`,
  by: (name) => `von ${name}`,
  mine: 'von dir',
  checkLabel: 'Prüfe:',
  isIn: (when) => `Es ist da, seit ${when}.`,
  see: 'Ansehen',
  notIn: 'Noch nicht da.',
  closed: 'Abgeschlossen.',
  closedOnes: (count) => (count === 1 ? 'Abgeschlossene Aufgabe' : 'Abgeschlossene Aufgaben'),

  post: { state: 'Nächsten Stand einstellen', exercise: 'Bild einstellen' },
  again: 'Noch eines einstellen',
  sending: (share) => `Wird gesendet … ${share}`,
  working: 'Ist angekommen und wird durchgesehen …',

  move: 'Anderer Tag',
  keepDay: 'Tag festhalten',
  close: 'Abschließen',
  open: 'Wieder öffnen',
  takeBack: 'Zurücknehmen',

  home: {
    label: 'Aufgaben für zu Hause',
    toTry: (board, words, day) => `Aufgabe auf „${board}“, ${day}: ${words}`,
    inAlready: (board, words) => `Zur Aufgabe auf „${board}“ ist etwas eingestellt: ${words}`,
    isIn: (painter, board, words) => `${painter} hat zur Aufgabe auf „${board}“ etwas eingestellt: ${words}`,
  },
};

export const takeAlongWords: Worded<typeof en.takeAlongWords> = {
  title: 'Zum Mitnehmen',
  about:
    'Ein Blatt, das neben der Staffelei steht: das Gemälde mit seinen Nummern, was gelingt, was du versuchen kannst, die Leiter.',
  aboutPlan: 'Ein Blatt, um danach zu malen: Ausschnitte, Tonwerte, die geplante Leiter.',
  paper: 'Papier',
  papers: { a4: 'A4', letter: 'US-Letter' },
  kinds: { pdf: 'Blatt zum Drucken (PDF)', png: 'Blatt als Bild (PNG)' },
  drawing: 'Das Blatt wird gezeichnet …',
  done: (name) => `Das Blatt liegt bei deinen heruntergeladenen Dateien, als ${name}.`,
};
