/**
 * Every word of the easel, the planes and the talk, in one place.
 *
 * Whole sentences; painters' words; the server's own sentences are shown as they come. Pure.
 */
import type { PlaneKind, PlaneTilt } from '#server/core/contract/setup.ts';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const words = {
  easel: {
    label: 'Easel',
    role: 'picture',
    reference: (author: string) => `Reference, posted by ${author}`,
    painting: (author: string) => `Painting by ${author}`,
    fromLife: 'Painted from life: there is no reference on this board.',
    noPainting: 'No painting yet. Post one, and the planes can be measured against the reference.',
    noPictures: 'Nothing stands here yet. Post a reference, a painting, or both.',
    edge: 'Edge between the two pictures, in percent of the width',
    referenceShort: 'Reference',
    paintingShort: 'Painting',
    view: 'View and steps',
    zoomIn: 'Closer',
    zoomOut: 'Farther',
    whole: 'Whole picture',
    undo: 'Undo',
    redo: 'Redo',
    lookKeys: 'Plus and minus zoom, zero shows the whole picture, arrow keys move it.',
  },
  outline: {
    keys: 'Arrow keys move the cross, space sets a point along the edge, Shift and space a straight one, Enter finishes, Backspace takes the last point back, Escape gives up.',
    splitKeys:
      'Arrow keys move the cross, space sets a point of the line, Enter splits the plane, Backspace takes the last point back, Escape gives up.',
    paintKeys: {
      add: 'Arrow keys move the cross, space adds the piece under it, Escape puts the tool down.',
      away: 'Arrow keys move the cross, space takes the piece under it away, Escape puts the tool down.',
    },
    keyList: {
      again: 'Outline: pull, add, take away, split, in turn',
      straight: 'Outline: straight, not along the edge',
      space: 'Outline: set a point, or paint the piece under the cross',
    },
    hand: 'What the hand does',
    hands: { line: 'Pull its line', add: 'Add to it', away: 'Take away', split: 'Split it' },
    paintOver: 'Painting over it',
    addHow: (plane: string) => `${plane}: paint over what belongs to it. Closer in, the pieces are smaller.`,
    awayHow: (plane: string) =>
      `${plane}: paint over what is not part of it. Each piece goes to the plane beside it.`,
    splitHow: (plane: string) =>
      `${plane}: click along a line across it, or draw it in one go. What lies before the line becomes a plane of its own.`,
    splitFinish: 'Split here',
    partsNeedSetup:
      'Splitting and joining change the planes for everybody. The owner of the board, a teacher or the host can do it.',
    partName: (plane: string, part: 'nearer' | 'left' | 'right') => `${plane}, ${part} part`,
    splitDone: (plane: string, part: string) =>
      `${plane} is split: “${part}” is a plane of its own now. On other pictures it still needs an outline.`,
    notAcross: (plane: string) =>
      `That line does not divide ${plane}. Draw it from one side of the plane to the other.`,
    redraw: 'Redraw …',
    redrawHow: (plane: string) => `${plane}: draw its outline anew, or remove it.`,
    join: 'Join …',
    joinWhich: (plane: string) => `Which neighbour becomes part of ${plane}?`,
    joinNot: 'Not now',
    joined: (kept: string, gone: string, left: number) =>
      left === 0
        ? `${gone} is part of ${kept} now.`
        : `${gone} is part of ${kept} now. On ${plural(left, 'painting', 'paintings')} of others the outline is left to their painters.`,
    notTouching: (kept: string, gone: string, picture: string) =>
      `${kept} and ${gone} do not touch on ${picture}, so one outline cannot hold both.`,
    sides: { reference: 'the reference', painting: 'the painting' },
    painting: {
      nothing: (_: string, own: string) => `All of that is ${own} already.`,
      apart: (_: string, own: string) => `That does not touch ${own}. Begin at its edge and paint outwards.`,
      inside: (_: string, own: string, way: 'add' | 'away') =>
        way === 'add'
          ? `That lies in the middle of another plane. Begin where ${own} ends and paint towards it.`
          : `That lies in the middle of ${own}. Begin at its edge and paint inwards.`,
      cuts: (plane: string) => `${plane} would fall into two. Take less of it, or split it first.`,
      swallows: (plane: string, own: string) =>
        plane === own
          ? `Nothing would be left of ${own}. Join it to its neighbour instead.`
          : `Nothing would be left of ${plane}. Join it to ${own} instead.`,
    },
    paintUnavailable: 'The picture could not be looked at closely just now. Try again in a moment.',
    choose: 'Choose a plane in the list, or add one, then draw where it ends against what lies behind it.',
    onlyLook: 'The painter, the teacher and the host draw outlines here.',
    ridge: 'Only its ridge',
    round: 'All the way round',
    whole: 'The whole picture',
    wholeWhy: 'What lies behind everything else may be the whole picture: nearer planes cover it.',
    how: 'How to draw it',
    drawRidge: (plane: string) =>
      `${plane}: click along its upper edge from one side to the other, or draw it in one go. It closes by itself below.`,
    drawSky: (plane: string) =>
      `${plane}: click along its lower edge from one side to the other, or draw it in one go. It closes by itself above.`,
    drawRound: (plane: string) => `${plane}: click all round it, or draw round it in one go.`,
    soFar: (count: number) => plural(count, 'point', 'points'),
    follow: 'Follow the edge',
    followWhy:
      'Between two clicks the line bends onto the strongest edge. Hold Shift while you click for a straight one.',
    finish: 'Finish',
    back: 'Take back a point',
    giveUp: 'Give up',
    on: { reference: 'On the reference:', painting: 'On the painting:' },
    again: 'Draw anew',
    remove: 'Remove',
    nudge: (plane: string) =>
      `${plane}: pull its points, pull its number to move all of it, double-click on the line for another point.`,
    point: (plane: string, at: number, of: number) =>
      `${plane}, point ${at} of ${of}. Arrow keys nudge it, comma and full stop go along the line, I adds a point, Delete takes it away.`,
    moveAll: (plane: string) => `${plane}, the whole outline. Arrow keys move it.`,
    heldBy: (person: string) => `${person} is moving this outline just now. Wait until they let go.`,
    movedBy: (person: string) => `${person} is moving this`,
    short: 'A line needs at least two points. Click along the edge, then finish.',
  },
  planes: {
    title: 'Planes, far to near',
    add: 'Add a plane',
    addNamed: (name: string) => `Add ${name}`,
    name: 'Name of the plane',
    nameShort: 'Name',
    kind: 'Kind',
    tilt: 'Lies to the sky light',
    kinds: {
      sky: 'sky',
      land: 'land',
      wood: 'wood',
      water: 'water',
      snow: 'snow',
      built: 'built',
    } satisfies Record<PlaneKind, string>,
    tilts: {
      flat: 'flat',
      slanted: 'slanted',
      upright: 'upright',
    } satisfies Record<PlaneTilt, string>,
    noTilt: 'not said',
    farther: (name: string) => `Move ${name} farther away`,
    nearer: (name: string) => `Move ${name} nearer`,
    fartherShort: 'Farther',
    nearerShort: 'Nearer',
    remove: (name: string) => `Delete ${name}`,
    removeShort: 'Delete the plane',
    removed: (name: string) => `${name} is deleted.`,
    undo: 'Undo',
    drag: (name: string) => `Drag ${name} to its place far to near`,
    change: (name: string) => `Change ${name}`,
    choose: (number: number, name: string, where: string) => `Plane ${number}, ${name}. ${where}`,
    onBoth: 'outlined on both',
    onReference: 'on the reference only',
    onPainting: 'on the painting only',
    outlined: 'outlined',
    nowhere: 'not outlined yet',
    unreliable: 'not trusted here',
    suggestions: [
      { name: 'Sky', kind: 'sky' },
      { name: 'Far hills', kind: 'land' },
      { name: 'Middle ground', kind: 'wood' },
      { name: 'Foreground', kind: 'land' },
    ] as const,
    startHint: 'Usual beginnings:',
  },
  talk: {
    title: 'Talk',
    about: 'What it is about',
    aboutHint: 'What did you want with this painting? What did you leave out or change on purpose?',
    aboutNothing: 'Its painter has not said yet.',
    aboutWhose: (name: string) => `In the words of ${name}`,
    remarks: 'Remarks',
    none: 'No remarks yet.',
    noneHow:
      'Take “Mark” and click on a picture where you see something, or show it with a line, an arrow or a loop.',
    here: 'Who is here',
    you: 'you',
    reply: 'Answer',
    replyTo: (name: string) => `Answer to ${name}`,
    send: 'Send',
    replies: (count: number) => plural(count, 'answer', 'answers'),
    change: 'Change the words',
    addWords: 'Add words',
    keep: 'Keep',
    cancel: 'Cancel',
    remove: 'Delete',
    show: (number: number) => `Show remark ${number} on the picture`,
    heard: (name: string, where: string, text: string) => `${name}, ${where}: ${text}`,
    shownPictures: 'These pictures',
    allPictures: 'All pictures',
    refusedTitle: 'This was not taken.',
    draftKept: 'What you had written:',
    copy: 'Copy the words',
    dismiss: 'Close',
  },
  line: {
    connecting: 'Opening the board’s line …',
    connected: 'Connected',
    'catching-up': 'Catching up with the others …',
    offline: 'The line is down. What you do is kept here and goes out when it is back.',
    closed: 'The board has closed its line to you. Load the page again.',
  },
} as const;
