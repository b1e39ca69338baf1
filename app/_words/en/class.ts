/** Words of a live class: steps, what each asks of whom, the clock, the running order, first impressions. Pure. */
import type { ClassWho } from '#server/core/class/allowed.ts';
import type { Step } from '#server/core/class/steps.ts';

const minutes = (ms: number) => {
  const seconds = Math.round(Math.abs(ms) / 1000);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
};

export const classWords = {
  label: 'Class',
  steps: {
    silent: 'Silent look',
    intention: 'Intention',
    strengths: 'What works',
    reference: 'Reference and values',
    priorities: 'Priorities',
    actions: 'What to try',
    'say-back': 'Say it back',
  } satisfies Record<Step, string>,

  /** What the step asks of the one who runs the class, of the painter whose turn it is, of everybody else. */
  asks: {
    silent: {
      teacher: 'Write the first thing you see. Nobody speaks.',
      painter:
        'Look at your own painting as if you saw it for the first time. Write the first thing you see.',
      others: 'Write the first thing you see. Nobody reads it until the silent look is over.',
    },
    intention: {
      teacher: 'The painter says what it is about. Listen.',
      painter: 'Say what it is about, what you changed on purpose, and mark the focus.',
      others: 'The painter says what it is about. Listen.',
    },
    strengths: {
      teacher: 'Two strengths, placed on the picture. You speak last.',
      painter: 'Hear what works; you may mark what works for you.',
      others: 'Two strengths, placed on the picture.',
    },
    reference: {
      teacher: 'Show the reference, squint, and go through the planes.',
      painter: 'Look with the teacher: the reference, then the planes.',
      others: 'Look with the teacher: the reference, then the planes.',
    },
    priorities: {
      teacher: 'One to three things, in order. Ask before you say. You begin.',
      painter: 'Listen for what comes first. Ask when something is unclear.',
      others: 'The teacher begins; ask before you say.',
    },
    actions: {
      teacher: 'Write what to try on cards, few and plain.',
      painter: 'Take on each card, take it another way, or leave it.',
      others: 'Listen: the teacher and the painter settle what to try.',
    },
    'say-back': {
      teacher: 'The painter says the first thing they will do.',
      painter: 'Say in your own words the first thing you will do.',
      others: 'The painter says the first thing they will do.',
    },
  } satisfies Record<Step, Record<ClassWho, string>>,
  asksOpened: 'Everybody may mark now: place every remark on the picture.',
  onlooker: 'You look on.',

  turnOf: (name: string) => `${name}’s turn`,
  mine: 'Your turn',
  notShown: 'This painting is not shown to you.',
  waiting: 'The class is looking at a painting …',
  left: (ms: number) => minutes(ms),
  over: (ms: number) => `${minutes(ms)} over`,
  stepLeft: 'this step',
  turnLeft: 'whole turn',
  paused: 'Held',
  next: (step: Step) => `On to: ${classWords.steps[step]}`,
  nextPainter: 'Next painter',
  end: 'End the class',
  said: (step: string, whose: string, asks: string) => `${whose}, ${step}. ${asks}`,
  overSaid: (step: string) => `The time planned for “${step}” is over.`,

  run: {
    title: 'Running the class',
    hold: 'Hold the clock',
    goOn: 'Let it go on',
    letIn: 'Let everybody mark',
    skip: 'Come back to this painting last',
    nextTurn: 'End this turn',
    stop: 'Stop the class here',
  },

  order: {
    title: 'Running order',
    now: 'now',
    had: 'had a turn',
    toCome: 'to come',
    missing: (names: string) => `No turn yet: ${names}.`,
    notIn: (names: string) => `Not in the order: ${names}.`,
    allHad: 'Everybody in the order had a turn.',
    goOn: 'Go on with them',
    up: (name: string) => `${name} earlier`,
    down: (name: string) => `${name} later`,
    leaveOut: (name: string) => `Leave ${name} out`,
    putIn: (name: string) => `Take ${name} in`,
    remove: 'Take out of the order',
    add: 'Take into the order',
  },

  start: {
    open: 'Begin a class',
    title: 'Begin a class',
    lead: 'Every painting has one turn: looked at alone first, then its painter’s intention, what works, the reference, what comes first, what to try, and the painter saying it back.',
    none: 'There is no painting on this board yet. Post one first.',
    order: 'Who comes when',
    draw: 'Draw the order by lot',
    lengths: 'How long each step is planned',
    minutes: (step: string) => `${step}, minutes`,
    whole: (turn: string, all: string) => `${turn} a painting, ${all} for all.`,
    begin: 'Begin with the silent look',
    min: (seconds: number) => `${Math.round(seconds / 6) / 10} min`,
  },

  impression: {
    title: 'The first thing you see',
    hint: 'A few words, before anybody speaks.',
    kept: 'Kept for you alone until the silent look is over.',
    all: 'What was seen first',
    none: 'Nobody wrote anything.',
    mine: 'you',
    trouble: 'What was seen first could not be read just now.',
    later: 'You look on; those who paint and mark write now.',
  },

  sayBack: {
    title: 'First thing to do',
    ask: 'The first thing I will do',
    by: (name: string) => `${name} will do first:`,
    notYet: 'Not said yet.',
  },

  intentionFirst: {
    open: 'Now the cards and readings',
    note: 'What the painter wanted comes first.',
    ask: 'Say what it is about before the figures speak, if you like.',
    skip: 'Not this time',
  },
} as const;
