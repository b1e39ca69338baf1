/** Every word of the air view. Pure. */

export const airWords = {
  about:
    'Air draws every colour along a curve to its own. Here each plane has a column: upward is lighter, to the right is stronger in colour.',
  key: {
    plane: 'the plane',
    start: 'where its way begins: the nearest plane of its kind',
    air: 'the air',
    doubt: 'doubt',
  },
  chromaAxis: (most: number) => `chroma, from 0 (grey) to ${most}`,
  plot: 'From far to near, on the way to the air',

  colour: {
    title: 'Colour of the air',
    of: { reference: 'reference', painting: 'painting' },
    lab: (L: string, a: string, b: string) => `L* ${L}, a* ${a}, b* ${b}`,
    measured: 'measured',
    measuredTitle: 'Measured in the sky just above the farthest ridge',
    picked: 'picked by hand',
    none: 'not measured: too little sky is outlined',
    pick: 'Pick it',
    pickOf: {
      reference: 'Pick the air colour in the reference',
      painting: 'Pick the air colour in the painting',
    },
    again: 'Pick it again',
    measure: 'As measured',
    measureOf: {
      reference: 'Go back to the measured air colour of the reference',
      painting: 'Go back to the measured air colour of the painting',
    },
    stop: 'Not now',
    how: 'Tap where the sky meets the farthest ridge: that is the colour of the air.',
    keys: 'Arrow keys move the cross, Enter takes the colour of the air, Escape stops.',
    onlyLook: 'The owner of the board, a teacher and the host pick the colour of the air.',
    unavailable: 'The colours of this picture could not be fetched. Try again in a moment.',
    outside: 'That lies outside the picture.',
  },

  rows: {
    achieved: 'way back, 1 = as far',
    airDistance: 'way to the air (ΔE)',
    airShare: 'share of air',
  },
  sky: 'The air is measured here, just above the ridge.',
  skyPicked: 'The sky itself.',
  nearest: 'Nearest: the others are held against it.',
  noTarget: 'Painted from life: there is nothing to say how far it should go back.',
  noStep: 'Here the reference goes back too little to be compared.',
  noLight: 'Too little could be taken here to say how far it goes back.',
  orderOnly:
    'Nothing neutral in the photo of the painting can be trusted, so all its colours may be shifted together: the places are as photographed, and only the order is said. With a grey or white card in the photo, amounts can be said as well.',
  noShare: 'Share of air is not taken for sky, snow and built things, which can be pale by themselves.',
  noAir:
    'Without a colour of the air there is no way to draw. Pick it where the sky meets the farthest ridge.',
} as const;
