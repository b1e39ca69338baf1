/** Words about people: who belongs to a board, as what, and the links that bring them. Painters' words. Pure. */
import type { BoardRole, ConsentUse, InviteRole } from '#server/core/contract/roles.ts';

const groupWords = {
  title: 'Groups',
  owner: 'made the group',
  about: 'A class or a painting circle: everybody in it is on all its boards.',
  make: 'New group',
  name: 'What is it called?',
  nameHint: 'Such as “Thursday class”. People come by an invitation.',
  makeIt: 'Make the group',
  making: 'Making it …',
  counts: (members: number, boards: number) =>
    `${members === 1 ? 'one person' : `${members} people`}, ${boards === 0 ? 'no board yet' : boards === 1 ? 'one board' : `${boards} boards`}`,
  noBoard: 'No board yet. Make one for a scene; everybody in the group is on it.',
  people: 'People',
  remove: 'Delete this group',
  removeSure: 'Its boards stay with whoever made them; the others lose them. Delete the group?',
};

const consentWords = {
  title: 'What the pictures may be used for',
  mine: 'What may your pictures on this board be used for?',
  ward: (name: string) => `What may the pictures of ${name} on this board be used for?`,
  uses: {
    class: 'shown to everybody on this board',
    keep: 'kept when the class is over',
    others: 'shown to others outside',
    example: 'used as an example in teaching',
  } satisfies Record<ConsentUse, string>,
  hidden:
    'Without the first, only teachers, whoever runs the board and the guardian see them beside the painter.',
  of: (name: string, uses: string) => `${name}: ${uses}`,
  nothing: 'nothing so far',
  said: (by: string, when: string) => `${by}, ${when}`,
};

export const peopleWords = {
  title: 'People',
  andMore: (count: number) => `and ${count}`,
  invite: 'Invite',
  inviteTitle: 'Invite to this board',
  inviteToGroup: 'Invite to this group',
  fromGroup: (name: string) => `A board of ${name}: whoever belongs to the group is here too.`,
  groups: groupWords,
  consent: consentWords,
  roleLabel: 'As what?',
  hoursLabel: 'The link works for',
  hours: { 2: 'two hours', 24: 'a day', 168: 'a week', 720: 'a month' } as Record<number, string>,
  usesLabel: 'How many people may come by it?',
  uses: { 0: 'any number', 1: 'one', 2: 'two', 5: 'five', 12: 'twelve', 30: 'thirty' } as Record<
    number,
    string
  >,
  wardLabel: 'Guardian of whom?',
  guardianOf: (name: string) => `of ${name}`,
  came: (used: number, uses: number | null) => {
    const who = used === 1 ? 'one person came' : `${used === 0 ? 'nobody' : `${used} people`} came`;
    if (uses === null) return who;
    return used >= uses ? `${who}, no more can` : `${who}, ${uses - used} more can`;
  },
  makeLink: 'Make a link',
  makingLink: 'Making it …',
  linkLabel: 'Send this link',
  linkHint: 'It is shown only now. Whoever opens it gives a name and is on the board.',
  linkHere:
    'Only this computer can open this link: open the board under this computer’s name or address in your network (the README says how) and make the link there.',
  copy: 'Copy the link',
  copied: 'Copied',
  copyFailed: 'Copying did not work here; the link is selected, copy it by hand.',
  open: 'Open invitations',
  noneOpen: 'No invitation is open.',
  until: (when: string) => `until ${when}`,
  takeBack: 'Take back',
  takeBackHint: 'Taking one back also ends the access of everyone who came by it.',
  takingBack: 'Taking it back …',
  whatIs: (name: string) => `What ${name} is here`,
  sendAway: 'End access',
  sendAwaySure: (name: string) => `End ${name}’s access?`,
  leave: 'Leave this board',
  leaveSure: 'Leave? You need a new link to come back.',
  here: (name: string, role: string) => `${name}, ${role}, here now`,
  away: (name: string, role: string) => `${name}, ${role}`,
  you: 'you',
  role: {
    host: 'host',
    owner: 'made the board',
    teacher: 'teacher',
    painter: 'painter',
    peer: 'peer',
    viewer: 'looks on',
    guardian: 'guardian',
  } satisfies Record<BoardRole, string>,
  inviteRole: {
    teacher: {
      name: 'Teacher',
      may: 'may do everything here but delete the board: planes, marks, everyone’s pictures',
    },
    painter: { name: 'Painter', may: 'posts paintings, outlines them, marks and talks' },
    peer: { name: 'Peer', may: 'marks and talks' },
    viewer: { name: 'Onlooker', may: 'sees the board and changes nothing' },
    guardian: {
      name: 'Guardian',
      may: 'sees the board of a minor and answers for what their pictures may be used for',
    },
  } satisfies Record<InviteRole, { name: string; may: string }>,
};
