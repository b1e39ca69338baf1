/**
 * Every word of the shell, in one place: entering, boards, the board's frame, posting, people.
 *
 * The ladder's words are in `en-ladder.ts`. Whole sentences; painters' words; the server's own sentences are
 * shown as they come. Pure.
 */
import type { Rights } from '#server/core/contract/picture-choices.ts';
import { accountWords } from './account.ts';
import { peopleWords } from './people.ts';

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** "one painting", "three paintings", "12 paintings". */
function counted(count: number, thing: string): string {
  return `${SMALL[count] ?? count} ${thing}${count === 1 ? '' : 's'}`;
}

export const words = {
  product: 'Veilstep',
  what: 'A board where landscape painters hold a painting beside its reference, see how the planes step back, and mark both together.',
  close: 'Close',
  cancel: 'Cancel',
  tryAgain: 'Try again',
  partMissing: 'This part of the page could not be fetched. Try again when the line is there.',
  noAnswer: 'The server did not answer. Look whether this device is still on the network, then try again.',
  strangeAnswer: (status: number) =>
    `The server answered in a way this page does not understand (status ${status}). Try again in a moment.`,
  skipToBoard: 'Skip to the pictures',

  enter: {
    title: 'Enter',
    lead: 'Post a reference and the painting made from it; see plane by plane how they differ, and talk about it on one board.',
    invited: 'You have been invited to a board where painters look at one scene together.',
    name: 'Your name',
    nameHint: 'As the others should call you. Nothing else is asked.',
    enter: 'Enter',
    entering: 'Entering …',
    enterAs: (name: string) => `Enter as ${name}`,
    noKeyTitle: 'This address needs its link',
    noKey:
      'You get in by a link: the host’s link is printed where the server was started, others come by an invitation. Open the whole link as you got it.',
    badLinkHost:
      'A host link works once. Whoever runs the server can print another with “npm run host-link”.',
    badLinkInvite: 'Whoever sent it to you can make another; invitations end after a while.',
    back: 'To the boards',
  },

  boards: {
    title: 'Boards',
    newBoard: 'New board',
    newTitle: 'What is the scene?',
    newHint: 'A title is enough; pictures come next.',
    make: 'Make the board',
    making: 'Making it …',
    empty:
      'No board yet. Make one for a scene: it holds the reference, your painting and what is said about them.',
    stranger: 'Ask for a link',
    strangerText:
      'What painters post here is seen only by those they invite. Ask the painter or teacher for a link, and open it on this device.',
    strangerHost: 'Running this server yourself? “npm run host-link” prints a link that lets you in.',
    bare: 'Nothing posted yet',
    veiled: 'Its pictures are not shown just now',
    demo: 'Example',
    by: (owner: string) => `Made by ${owner}`,
    signedAs: (name: string) => `You are here as ${name}.`,
    counts: (references: number, paintings: number) =>
      `${references === 0 ? 'from life' : counted(references, 'reference')}, ${
        paintings === 0 ? 'no painting yet' : counted(paintings, 'painting')
      }`,
  },

  board: {
    toBoards: 'Boards',
    rename: 'Change the title',
    renameField: 'Title of the board',
    save: 'Keep',
    more: 'More',
    takeAway: 'Take away, bring in',
    remove: 'Delete the board …',
    keys: 'Keys',
    notFoundTitle: 'There is no such board for you',
    notFound:
      'It may have been deleted, or you have not been invited to it. Open the link you were given once more, or ask for a new one.',
    easel: 'Pictures',
    ladder: 'Ladder',
    talk: 'Talk',
    planes: 'Planes',
    photo: 'Photo',
    tray: 'Tray',
    aside: 'Talk, planes and photo',
    sideTabs: 'Beside the pictures',
    lowerTabs: 'Under the pictures',
    noPicturesTitle: 'Begin with a picture',
    noPicturesPainter:
      'Drop a painting anywhere here, choose its file, or take a photo of it. References are posted by whoever made the board, or by a teacher.',
    noPictures:
      'Drop a reference photograph or a painting anywhere here, choose files, or take a photo. Painted from life? Post only the painting.',
    scenario: 'About this example',
  },

  tray: {
    label: 'What the hand does',
    look: 'Look',
    outline: 'Outline',
    mark: 'Mark',
    photo: 'Square up',
    view: 'What the eye sees',
    squint: 'Squint',
    grey: 'Grey',
    lines: 'Outlines',
    marks: 'Marks',
    beside: 'Side by side',
    over: 'One over the other',
    surround: { mid: 'Middle grey', dark: 'Dark grey', light: 'Light grey' },
    reference: 'Reference',
    painting: 'Painting',
    shown: 'Which picture is shown',
  },

  shelf: {
    label: 'Pictures of this board',
    references: 'References',
    paintings: 'Paintings',
    reference: (painter: string) => `Reference, posted by ${painter}`,
    painting: (painter: string, state: number) =>
      state > 1 ? `Painting by ${painter}, state ${state}` : `Painting by ${painter}`,
    post: 'Post pictures',
    all: 'All pictures',
    wall: 'Wall',
    size: (width: number, height: number) => `${width} × ${height} pixels`,
    remove: 'Delete this picture',
    removeSure: 'It goes for everyone, with its outlines and figures. This cannot be taken back.',
    removing: 'Deleting …',
    original: 'Open it alone',
    more: 'More',
    postedBy: (name: string) => `Posted by ${name}`,
  },

  rights: {
    mine: 'I took it myself',
    permission: 'Used with permission',
    free: 'Free licence',
  } satisfies Record<Rights, string>,

  post: {
    title: 'Post pictures',
    choose: 'Choose files',
    camera: 'Take a photo',
    dropHere: 'Let go to post here',
    kinds:
      'JPEG, PNG, WebP, TIFF, AVIF or HEIC, up to 60 MB each. Place and camera data are removed on arrival.',
    whatIsIt: 'What is it?',
    reference: 'A reference',
    painting: 'A painting',
    rightsLabel: 'Whose photograph is it?',
    creditFree: 'Credit: who made it, which licence',
    creditPermission: 'Credit (who gave it), if you like',
    creditNeeded: 'Not posted yet: a free licence needs its credit: who made it and which licence.',
    rightsNeeded: 'Not posted yet: choose above whose photograph it is.',
    follows: 'Is it a later state of a painting here?',
    followsNone: 'No, a painting of its own',
    fromLife:
      'This board has no reference. That is fine for a painting made from life; a reference can come later.',
    send: (count: number) => (count === 1 ? 'Post it' : `Post all ${count}`),
    more: 'Add another',
    leaveOut: 'Do not post this one',
    noPreview: 'cannot be shown before it is posted',
    waiting: 'waits its turn',
    sending: (percent: string) => `${percent} sent`,
    taking: 'being looked through and stored',
    done: 'posted',
    cancelled: 'stopped',
    stop: 'Stop',
    dismiss: 'Off this list',
    progressLabel: 'Pictures being posted',
    tooLarge: (name: string, size: string) =>
      `${name} has ${size}; a picture may have 60 MB at most. Save it smaller and try again.`,
    emptyFile: (name: string) => `${name} is empty (0 bytes). Choose another file.`,
  },

  people: peopleWords,

  account: accountWords,

  remove: {
    title: 'Delete this board',
    sure: 'Its pictures, planes, marks and figures go for everyone. This cannot be taken back.',
    type: (title: string) => `To be sure, write its title: ${title}`,
    button: 'Delete for everyone',
    removing: 'Deleting …',
  },

  trouble: {
    title: 'Something went wrong on this page',
    text: 'What others see is not touched, and what was stored stays stored. Try the page again.',
    again: 'Try the page again',
    notFoundTitle: 'There is nothing at this address',
    notFound: 'The link may have been cut off on its way. Open it whole, or go to the boards.',
  },

  keys: {
    title: 'Keys',
    lead: 'They work while no text is being written.',
    look: 'look about',
    outline: 'outline planes',
    photo: 'square up the photo of the painting',
    squint: 'squint: blur the pictures',
    grey: 'grey: value without colour',
    surround: 'next grey round the pictures',
    lines: 'outlines on and off',
    marks: 'marks on and off',
    arrange: 'side by side, or one over the other',
    side: 'the other picture, on a narrow screen',
    table: 'ladder as a table, and back',
    undo: 'take back',
    redo: 'do again',
    help: 'this list',
    zoom: 'closer, farther, whole picture (on a picture)',
    pan: 'move the picture or the point (on a picture)',
    letters: 'Letter keys are on',
  },
} as const;
