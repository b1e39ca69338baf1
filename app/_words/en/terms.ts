/**
 * What the painters' words on the screen mean, in groups. Pure.
 *
 * Meanings are common practice; where a figure stands behind a word, its unit and source stand with it.
 */
export const termWords = {
  title: 'What the words mean',
  lead: 'As they are used here. Where a figure stands behind a word, its unit stands with it.',
  groups: [
    {
      title: 'Light and dark',
      terms: [
        ['Value', 'How light or dark something is, whatever its colour.'],
        [
          'Step',
          'A tenth of the way from black to white: 10 L* of CIELAB (CIE 15), close to one step of the Munsell value scale.',
        ],
        [
          'Lights, middle, darks',
          'Of a plane: 5 % of it are lighter than its lights, 5 % darker than its darks, half is darker than its middle.',
        ],
        ['Range', 'How far it is from the darkest to the lightest.'],
        ['Key', 'Where on the way from black to white a whole picture sits: high when light, low when dark.'],
        ['Reserve', 'The darkest and lightest paint, kept back for where they matter.'],
        ['Squint', 'Half close the eyes: small things go, big shapes stay.'],
        ['Big shapes', 'What is left when one squints: a few large patches of light, middle and dark.'],
        ['Notan', 'A picture in two values, to see its pattern of dark and light.'],
        ['Spotty', 'Many small patches of light and dark where a few large ones would carry.'],
      ],
    },
    {
      title: 'Colour',
      terms: [
        [
          'Hue',
          'What family a colour belongs to: red, orange, yellow, green, blue, violet. Measured as an angle (°).',
        ],
        ['Chroma', 'How strong a colour is, from grey up: C*ab of CIELAB (CIE 15).'],
        ['Greyed', 'A colour made weaker, often with a little of its opposite.'],
        [
          'Warm–cool',
          'How warm a colour looks, + for warmer, − for cooler: after what people said of single colours (Ou, Luo, Woodcock and Wright 2004). What counts is the neighbour.',
        ],
        ['Neutral', 'Without a hue: grey, white, black.'],
        ['Local colour', 'The colour a thing has close up in plain light, before air and lamp change it.'],
        ['Cast', 'One tint over everything, from the lamp or the camera.'],
        ['Broken colour', 'Several colours of one value side by side instead of one mixed.'],
      ],
    },
    {
      title: 'Depth',
      terms: [
        ['Plane', 'Everything at one distance: sky, far ridge, wood, meadow.'],
        [
          'Aerial perspective',
          'Air lifts the darks of what is far, greys it, softens it and brings it nearer the colour of the air.',
        ],
        [
          'Air colour',
          'The colour that everything far drifts toward; mostly that of the sky above the farthest ridge.',
        ],
        [
          'Distance to the air',
          'How far the middle of a plane is from the air colour: ΔE*ab (CIE 15). It shrinks with distance.',
        ],
        [
          'Share of air',
          'How much of what one sees of a plane is air before it (%), told from its darkest parts: He, Sun and Tang 2009.',
        ],
        ['Ridge', 'Where land ends against what lies behind it.'],
        ['Edge', 'How one shape turns into the next: hard, soft, or lost where both melt together.'],
        ['Detail', 'How much fine change there is inside a plane, beside its contrast.'],
      ],
    },
    {
      title: 'The picture',
      terms: [
        ['Reference', 'The photograph that is painted from.'],
        ['State', 'A painting at one moment: repainted, it is the next state.'],
        ['Frame', 'The part of the photograph that is kept.'],
        ['Focus', 'Where the eye is meant to rest.'],
        [
          'Weight',
          'How strongly a patch draws the eye. Left and right answer each other like the arms of a scale.',
        ],
        ['Accent', 'A small strong note.'],
        ['Tangent', 'Contours that only just touch, and so pull two things at different distances together.'],
        ['Overlap', 'One shape before another: the plainest sign of depth.'],
      ],
    },
    {
      title: 'The photo and the paint',
      terms: [
        ['Squared up', 'Seen as if the camera had stood straight before the painting.'],
        ['Grey card', 'A neutral of known lightness beside the painting, so that the lamp can be taken out.'],
        [
          'Grade',
          'How far a photo can be trusted: with A to a quarter of a step, with B to half a step, with C in the order of light and dark alone.',
        ],
        ['Doubt (±)', 'The truth lies within it nine times in ten.'],
        ['Glare', 'Light thrown back by wet or varnished paint; it hides what lies under it.'],
        ['Clipped', 'So light or so dark that the camera kept no difference.'],
        ['Scumble', 'A thin, light, half-covering layer dragged over dry paint.'],
        ['Glaze', 'A thin transparent layer over dry paint.'],
        ['Underpainting', 'The first large layer, which later ones rest on.'],
      ],
    },
  ],
  care: 'Paints, mediums and thinners can be harmful: follow the label, the rules of your place and of whoever teaches you, air the room, and keep paint off skin and out of your mouth.',
} as const;
