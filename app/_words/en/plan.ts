/** Words of the plan: its page, its parts, the photograph it is made from. Pure. */
export const planWords = {
  link: 'Plan',
  title: 'Plan',
  titleOf: (board: string) => `Plan of ${board}`,
  back: 'Back to the board',
  skip: 'Skip to the photograph',
  stage: 'The photograph',
  partsLabel: 'What to settle',
  parts: {
    frames: 'Frames',
    weight: 'Weight',
    values: 'Values',
    rearrange: 'Rearrange',
    ladder: 'Ladder',
  },
  photograph: 'Planned from',
  of: 'Of',
  whole: 'The whole photograph',
  undo: 'Undo',
  redo: 'Redo',
  nothing:
    'There is no photograph on this board to plan from yet. Post the one you want to paint from, then come back.',
  lookOn:
    'You can look at everything here and try it out for yourself; what is kept is written by whoever runs the board or teaches on it.',
  veiled:
    'The class is looking at the painting alone. The photograph and its plan come back when the class reaches that step.',
} as const;
