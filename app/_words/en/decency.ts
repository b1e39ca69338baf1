/** Words about decency: reports, blocking, the school setting, what was done, whose a board is. Painters' words. Pure. */
import type { DeletionReason, ReportAct, Reported, ReportOutcome } from '#server/core/contract/decency.ts';

const counted = (count: number, one: string, many: string) =>
  count === 1 ? `one ${one}` : `${count} ${many}`;

const reportWords = {
  act: 'Report',
  title: {
    remark: 'Report a remark',
    picture: 'Report a picture',
    person: 'Report somebody',
  } satisfies Record<Reported, string>,
  label: (name: string) => `Report this by ${name}`,
  person: (name: string) => `Report ${name}`,
  field: 'What is the matter?',
  hint: 'A few words are enough.',
  goes: 'It goes to the host, the owner of this board and its teachers, but never to the one it is about. They see your name, and the remark as it stands now.',
  send: 'Send the report',
  sending: 'Sending it …',
  sent: 'It was sent. Under “Reports” on your page of boards you see when somebody has read it.',
};

const blockWords = {
  act: 'Block',
  label: (name: string) => `Block ${name}`,
  sure: (name: string) =>
    `Neither of you sees what the other says, draws or points at, from now on and from before. ${name} is not told. Pictures stay in the class. You can undo it on your own page.`,
  title: 'Whom you block',
  none: 'You block nobody.',
  undo: 'Unblock',
  undoLabel: (name: string) => `Unblock ${name}`,
};

const reportsWords = {
  title: 'Reports',
  none: 'Nothing was reported.',
  open: 'Open',
  closed: 'Closed',
  mine: 'What you reported',
  what: (about: Reported, person: string, board: string) =>
    `${{ remark: 'A remark of', picture: 'A picture of', person: 'About' }[about]} ${person}, on ${board}`,
  said: (reporter: string, when: string) => `${reporter}, ${when}`,
  quoted: 'The remark as it was',
  toBoard: 'Open the board',
  note: 'A note for those who read reports',
  acts: {
    'remove-remark': 'Remove the remark',
    'withdraw-picture': 'Take the picture back',
    'end-access': 'End their access to the board',
    note: 'Close with the note',
  } satisfies Record<ReportAct, string>,
  sure: {
    'remove-remark': 'The remark goes for everybody. Remove it?',
    'withdraw-picture': 'The picture goes for everybody at once, with what was said on it. Take it back?',
    'end-access': 'They lose the board at once. End their access?',
    note: 'Close it?',
  } satisfies Record<ReportAct, string>,
  outcome: {
    'remark-removed': 'the remark was removed',
    'picture-withdrawn': 'the picture was taken back',
    'access-ended': 'access was ended',
    noted: 'closed',
  } satisfies Record<ReportOutcome, string>,
  waits: 'not read yet',
  seen: (when: string) => `read ${when}`,
  done: (outcome: string, when: string) => `${outcome}, ${when}`,
};

const recordWords = {
  title: 'What was done',
  note: 'What hosts, owners and teachers did to others; kept for 365 days. Neither pictures nor what remarks said.',
  none: 'Nothing was done so far.',
  deletedTitle: 'What was deleted',
  deletedNone: 'Nothing was deleted by itself so far.',
  deleted: (title: string, pictures: number, remarks: number, whole: boolean) => {
    const what = `${counted(pictures, 'picture', 'pictures')} and ${counted(remarks, 'remark', 'remarks')}`;
    return whole ? `The board “${title}” with ${what}` : `${what} of “${title}”`;
  },
  reason: {
    age: 'the set number of days was over',
    day: 'the set day had come',
    over: 'the class was over',
  } satisfies Record<DeletionReason, string>,
};

const schoolWords = {
  title: 'School setting',
  house: 'School setting of the whole server',
  lead: 'What is not allowed here, for the sake of pupils. Groups can only be stricter than the server.',
  noPublicLinks: 'No public links',
  noPublicLinksWhy: 'An invitation lets in one person and works for 48 hours. Open links for many end now.',
  noMixingHints: 'No mixing hints',
  noMixingHintsWhy: 'Cards say what to do, not how paint is mixed or layered.',
  aliases: 'Made-up names',
  aliasesWhy:
    'Members see each other under made-up names. Teachers, the owner and the host see the names given.',
  days: 'Delete after so many days',
  daysHint: 'Counted from the day a picture was posted. Leave it empty to delete nothing.',
  day: 'Delete on this day',
  dayHint: 'Whatever was posted before that day. Leave it empty to delete nothing.',
  stays:
    'Paintings stay whose painter, or the guardian, said that they may be kept; references as long as a painting of their board. A board on which nothing stays goes whole. It cannot be undone.',
  keep: 'Keep the setting',
  keeping: 'Keeping it …',
  kept: 'The setting counts from now on.',
  noMessages: 'There are no private messages here: whatever is said stands on a board.',
};

const placeWords = {
  title: 'This board',
  group: 'Belongs to the group',
  noGroup: 'no group',
  move: 'Move it',
  moveNote: 'Everybody in a group is on all its boards; who came by the old group alone loses this board.',
  hand: 'Hand the board on to',
  handIt: 'Hand it on',
  handSure: (name: string) => `${name} owns the board then, and you stay on it as a teacher. Hand it on?`,
  ending: 'When the class is over',
  endingWhat:
    'Paintings that nobody allowed to be kept are then deleted. First they are counted, and you are asked once more.',
  over: 'The class is over …',
  overCount: (goes: number, stays: number) =>
    goes === 0
      ? 'Every painting here may be kept, so nothing would be deleted.'
      : `${counted(goes, 'painting', 'paintings')} would be deleted, because nobody said that they may be kept; ${counted(stays, 'stays', 'stay')}. It cannot be undone.`,
  overDo: 'Delete them: the class is over',
  overAt: (when: string) => `The class was said to be over ${when}.`,
};

export const decencyWords = {
  report: reportWords,
  block: blockWords,
  reports: reportsWords,
  record: recordWords,
  school: schoolWords,
  place: placeWords,
  house: {
    title: 'Reports and records',
    link: 'Reports',
    linkHost: 'Reports and records',
    ofBoard: 'Reports and what was done here',
    all: 'All boards',
  },
  alias: (alias: string) => `The other members see you here as ${alias}.`,
  group: {
    rename: 'Rename',
    name: 'Name of the group',
    keep: 'Keep the name',
    bring: 'Bring a board into this group',
    bringIt: 'Bring it in',
    board: 'Which board?',
  },
};
