/** Words of being on a board at the same time: looking with somebody, asking to speak, the line. Pure. */

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** "one remark", "three changes", "12 changes". */
function counted(count: number, thing: string): string {
  return `${SMALL[count] ?? count} ${thing}${count === 1 ? '' : 's'}`;
}

/** "Pia", "Pia and Tove", "Pia, Tove and Nils". */
function listed(names: readonly string[]): string {
  const [last, ...before] = [...names].reverse();
  return before.length > 0 ? `${before.reverse().join(', ')} and ${last}` : (last ?? '');
}

const capital = (sentence: string) => sentence.charAt(0).toUpperCase() + sentence.slice(1);

export const togetherWords = {
  label: 'Together',
  lookWith: (name: string) => `Look with ${name}`,
  lookingWith: (name: string) => `You look with ${name}.`,
  broughtTo: (name: string) => `${name} shows everybody something: you look with them.`,
  letGo: 'Let go',
  letGoHow: 'Let go (Escape). Moving the picture yourself does it too.',
  left: (name: string) => `${name} is not here any more. What you see stays as it was.`,
  lookers: (names: readonly string[]) =>
    `${capital(listed(names))} ${names.length === 1 ? 'looks' : 'look'} with you.`,
  bring: 'Bring everybody',
  bringHow: 'Everybody here looks with you, until they let go',
  bringAgain: 'Bring them again',
  setFree: 'Let everybody go',
  quiet: 'Quiet the marks',
  quietHow: 'Marks are not drawn on anybody’s screen',
  closeMarking: 'Close the marking',
  closeMarkingHow: 'Nobody but teacher and host makes or changes marks, until it is opened again',
  quieted: 'The marks are put away on every screen just now.',
  closed: 'The marking is closed just now: look, and talk.',
  ask: 'Ask to speak',
  asked: 'You asked to speak.',
  takeBack: 'Take it back',
  wishes: (names: readonly string[]) => `${listed(names)} would like to speak.`,
  thank: (name: string) => `Thank ${name}`,
  thankHow: (name: string) => `${name} has spoken; the wish is laid down`,

  line: {
    down: (since: string) =>
      `The line has been down since ${since}. What you do is kept here and sent when it is back; it is tried again by itself.`,
    /** Said once to those who listen. */
    downSaid: 'The line is down. What you do is kept and sent when it is back.',
    backSaid: 'The line is back.',
    catchingUp: 'The line is back. Catching up …',
    waiting: (remarks: number, others: number) => {
      const things = [
        ...(remarks > 0 ? [counted(remarks, 'remark')] : []),
        ...(others > 0 ? [counted(others, 'other change')] : []),
      ];
      if (things.length === 0) return 'Nothing waits so far.';
      const one = remarks + others === 1;
      return `${capital(listed(things))} ${one ? 'waits' : 'wait'} to be sent.`;
    },
    closedHow: 'Nothing more is sent from this page.',
    toBoards: 'To the boards',
  },
};
