/** German. Words of a live class: steps, what each asks of whom, the clock, the order, first impressions. Pure. */
import type * as en from '../en/class.ts';
import { figure } from '../figures.ts';
import type { Worded } from '../worded.ts';

const clock = (ms: number) => {
  const seconds = Math.round(Math.abs(ms) / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
};

/** Whose turn it is may be a sentence with its full stop or a few words without one. */
const stopped = (words: string) => (words.endsWith('.') ? words : `${words}.`);

export const classWords: Worded<typeof en.classWords> = {
  label: 'Stunde',
  steps: {
    silent: 'Stilles Schauen',
    intention: 'Absicht',
    strengths: 'Was gelingt',
    reference: 'Vorlage und Tonwerte',
    priorities: 'Das Wichtigste',
    actions: 'Zum Ausprobieren',
    'say-back': 'In eigenen Worten',
  },

  /** What the step asks of the one who runs the class, of the painter whose turn it is, of everybody else. */
  asks: {
    silent: {
      teacher: 'Schreib auf, was du zuerst siehst. Niemand spricht.',
      painter:
        'Schau dein eigenes Gemälde an, als sähst du es zum ersten Mal. Schreib auf, was du zuerst siehst.',
      others: 'Schreib auf, was du zuerst siehst. Niemand liest es, bevor das stille Schauen vorbei ist.',
    },
    intention: {
      teacher: 'Wer gemalt hat, sagt, worum es geht. Hör zu.',
      painter: 'Sag, worum es geht und was du mit Absicht geändert hast, und setz den Blickpunkt.',
      others: 'Wer gemalt hat, sagt, worum es geht. Hör zu.',
    },
    strengths: {
      teacher: 'Zwei Stärken, auf dem Bild gezeigt. Du sprichst zuletzt.',
      painter: 'Hör, was gelingt; du darfst anmerken, was für dich gelingt.',
      others: 'Zwei Stärken, auf dem Bild gezeigt.',
    },
    reference: {
      teacher: 'Zeig die Vorlage, blinzle und geh die Ebenen durch.',
      painter: 'Schau mit der Lehrperson: erst die Vorlage, dann die Ebenen.',
      others: 'Schau mit der Lehrperson: erst die Vorlage, dann die Ebenen.',
    },
    priorities: {
      teacher: 'Ein bis drei Dinge, der Reihe nach. Frag, bevor du etwas sagst. Du beginnst.',
      painter: 'Hör heraus, was zuerst kommt. Frag, wenn etwas unklar ist.',
      others: 'Die Lehrperson beginnt; frag, bevor du etwas sagst.',
    },
    actions: {
      teacher: 'Schreib auf Karten, was sich ausprobieren lässt, wenig und einfach.',
      painter: 'Nimm jede Karte an, mach es anders oder lass es.',
      others: 'Hör zu: Lehrperson und Malende machen aus, was ausprobiert wird.',
    },
    'say-back': {
      teacher: 'Wer gemalt hat, sagt, was als Erstes kommt.',
      painter: 'Sag in deinen eigenen Worten, was du als Erstes tust.',
      others: 'Wer gemalt hat, sagt, was als Erstes kommt.',
    },
  },
  asksOpened: 'Jetzt dürfen alle anmerken: Setz jede Bemerkung auf das Bild.',
  onlooker: 'Du schaust zu.',

  turnOf: (name) => `${name} ist dran`,
  mine: 'Du bist dran',
  notShown: 'Dieses Gemälde wird dir nicht gezeigt.',
  waiting: 'In der Stunde wird gerade ein Gemälde betrachtet …',
  left: (ms) => clock(ms),
  over: (ms) => `${clock(ms)} darüber`,
  stepLeft: 'dieser Schritt',
  turnLeft: 'ganze Runde',
  paused: 'Angehalten',
  next: (step) => `Weiter: ${classWords.steps[step]}`,
  nextPainter: 'Nächstes Gemälde',
  end: 'Stunde beenden',
  said: (step, whose, asks) => `${step}. ${stopped(whose)} ${asks}`,
  overSaid: (step) => `Die Zeit für „${step}“ ist um.`,

  run: {
    title: 'Die Stunde leiten',
    hold: 'Uhr anhalten',
    goOn: 'Uhr weiterlaufen lassen',
    letIn: 'Alle anmerken lassen',
    skip: 'Dieses Gemälde zuletzt',
    nextTurn: 'Diese Runde beenden',
    stop: 'Stunde hier beenden',
  },

  order: {
    title: 'Reihenfolge',
    now: 'jetzt',
    had: 'war dran',
    toCome: 'kommt noch',
    missing: (names) => `Noch nicht dran: ${names}.`,
    notIn: (names) => `Nicht in der Reihenfolge: ${names}.`,
    allHad: 'Alle in der Reihenfolge waren dran.',
    goOn: 'Mit ihnen weiter',
    up: (name) => `${name} früher`,
    down: (name) => `${name} später`,
    leaveOut: (name) => `${name} auslassen`,
    putIn: (name) => `${name} aufnehmen`,
    remove: 'Herausnehmen',
    add: 'Aufnehmen',
  },

  start: {
    open: 'Stunde beginnen',
    title: 'Stunde beginnen',
    lead: 'Jedes Gemälde hat eine Runde: erst für sich allein betrachtet, dann die Absicht dahinter, was gelingt, die Vorlage, das Wichtigste, was sich ausprobieren lässt, und am Ende in eigenen Worten, was als Erstes kommt.',
    none: 'Auf dieser Tafel ist noch kein Gemälde. Stell zuerst eines ein.',
    order: 'Wer wann drankommt',
    draw: 'Reihenfolge auslosen',
    lengths: 'Wie lange jeder Schritt dauern soll',
    minutes: (step) => `${step}, Minuten`,
    whole: (turn, all) => `${turn} je Gemälde, ${all} für alle.`,
    begin: 'Mit dem stillen Schauen beginnen',
    min: (seconds) => {
      const minutes = Math.round(seconds / 6) / 10;
      return `${figure(minutes, Number.isInteger(minutes) ? 0 : 1)} min`;
    },
  },

  impression: {
    title: 'Was du zuerst siehst',
    hint: 'Ein paar Worte, bevor jemand spricht.',
    kept: 'Bleibt bei dir allein, bis das stille Schauen vorbei ist.',
    all: 'Was zuerst gesehen wurde',
    none: 'Niemand hat etwas geschrieben.',
    mine: 'du',
    trouble: 'Was zuerst gesehen wurde, ließ sich gerade nicht lesen.',
    later: 'Du schaust zu; jetzt schreibt, wer malt und anmerkt.',
  },

  sayBack: {
    title: 'Was als Erstes kommt',
    ask: 'Was ich als Erstes tue',
    by: (name) => `${name} tut als Erstes:`,
    notYet: 'Noch nicht gesagt.',
  },

  intentionFirst: {
    open: 'Nun Karten und Befunde',
    note: 'Zuerst kommt, was mit dem Gemälde gewollt war.',
    ask: 'Sag, worum es geht, bevor die Zahlen sprechen, wenn du magst.',
    skip: 'Diesmal nicht',
  },
};
