/** Every word of the wall. No counts, no ranks: paintings are told apart by letters. Pure. */

export const wallWords = {
  titleOf: (board: string) => `Wall: ${board}`,
  back: 'Back to the board',
  hidden: 'Names are hidden. Your own painting is marked for you alone.',
  shown: 'Names are shown to everybody here.',
  show: 'Show the names',
  hide: 'Hide the names again',
  yours: 'yours',
  laidAside: 'Put away',
  withheld: 'Paintings whose painters do not let them be shown to the class do not hang here.',
  veiled:
    'The class is looking at a painting alone. Values, colours, ladders and what is said of far come once it reaches the reference.',
  offline: 'The line is down. What hangs here stays; it is brought up to date when the line is back.',

  question: {
    label: 'Question of the day',
    ask: 'Ask something of the day',
    word: 'Word it anew',
    field: 'Question of the day, read by everybody here',
    hint: 'For example: how did each of us say far?',
    keep: 'Ask it',
  },

  few: {
    title: 'A wall begins with two paintings',
    text: 'When at least two paintings of this scene are on the board, they hang here side by side at one size: squinted, in a few values, with their colours and their ladders. Post one on the board, or ask the others for theirs.',
  },

  choose: {
    open: 'Which paintings',
    title: 'Which paintings hang',
    text: 'This is for your own screen. Letters stay the same for everybody.',
    most: (most: number) => `At most ${most} hang side by side: take one down to hang another.`,
    least: 'At least two hang side by side.',
    hang: (letter: string) => `Painting ${letter}`,
    state: (letter: string) => `State of painting ${letter}`,
    newest: 'newest state',
    stateNumber: (number: number) => `state ${number}`,
    more: 'More paintings are on the board than hang here.',
  },

  rows: {
    label: 'Ways of looking',
    picture: 'Picture',
    squint: 'Squint',
    values: 'Values',
    palette: 'Colours',
    ladder: 'Ladder',
    count: 'How many values',
    countOf: ['', '', 'two', 'three', 'four', 'five'],
    order: 'Order of the colours',
    byValue: 'light to dark',
    byDepth: 'far to near',
    none: 'Choose at least one way of looking.',
  },
  painting: (letter: string) => `Painting ${letter}`,
  pictureOf: (letter: string) => `Painting ${letter}, squared`,
  squintOf: (letter: string) => `Painting ${letter} with half-closed eyes`,
  valuesOf: (letter: string, count: string) => `Painting ${letter} in ${count} values`,
  paletteOf: (letter: string, order: string, colours: string) =>
    `Colours of painting ${letter}, ${order}: ${colours}`,
  colour: (words: string, share: string) => `${words}, ${share} of the painting`,
  ladderOf: (letter: string, values: string) => `Ladder of painting ${letter}, far to near: ${values}`,
  value: (plane: string, value: string) => `${plane} ${value}`,
  large: (what: string) => `${what}: see it large`,
  failed: 'This painting could not be fetched. Load the page again.',
  noDepth: 'No planes are outlined here, so the colours stand light to dark.',
  noLadder: 'Not measured yet: its planes have to be outlined on the board first.',
  measuring: 'Being measured …',

  ladders: {
    title: 'All ladders together',
    about:
      'Far at the left, near at the right, on the value scale. Each painting has a line of its own, told by its letter and its pattern.',
    part: 'Which part of each plane',
    parts: { light: 'Lights', mid: 'Middles', dark: 'Darks' },
    reference: 'reference',
    plan: 'plan',
    table: 'The same in figures',
    caption: (part: string) => `${part} of each plane on the value scale, 0 black to 10 white`,
    plane: 'Plane',
    find: (letter: string) => `Bring the line of painting ${letter} forward`,
    none: 'As soon as the planes of two paintings are measured, their ladders stand here in one chart.',
  },

  far: {
    title: 'How each said far',
    air: 'Colour of the air',
    airNone: 'no colour of the air could be taken: too little sky is outlined',
    asPhotographed: 'as photographed',
    orderOnly:
      'Where nothing neutral stands in the photo of a painting its colours are as photographed, and only the order is said.',
    of: (plane: string) => plane,
    nothing: 'What lies far could not be compared here.',
    target: {
      reference: 'Held against the reference photograph.',
      plan: 'Held against the plan.',
      none: 'Painted from life: each far plane is held against the nearest of its own painting.',
    },
  },

  beside: {
    title: 'Two paintings large',
    left: 'First painting',
    right: 'Second painting',
    apart: 'Side by side',
    over: 'One over the other',
    close: 'Back to the wall',
    how: 'Pull the edge between them, or move it with the arrow keys.',
  },

  thing: {
    title: (letter: string) => `One thing to try from painting ${letter}`,
    hint: 'Tap the painting where you see it. It becomes a remark of yours there, on the board.',
    field: 'What would you try?',
    say: 'Say it',
    saying: 'Saying it …',
    said: (letter: string) => `It stands on painting ${letter} now, as a remark of yours.`,
    place: 'Where your remark will stand',
    placed: 'Your remark will stand where you tapped.',
  },
} as const;
