/** Every word of what paintings are held against. Pure. */
export const targetWords = {
  title: 'Paintings are held against',
  reference: 'the photograph',
  plan: 'the plan',
  none: 'No plan was taken yet: paintings are held against the photograph.',
} as const;
