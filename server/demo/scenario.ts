/**
 * The demo's invented evening: who paints, what they wanted, what they say to each other.
 *
 * Everybody here is invented. Places are in 0..1 of the painting they speak of. Pure: texts and tables only.
 */
import type { MemberRole } from '../core/contract/roles.ts';
import type { FractionPoint } from '../core/contract/setup.ts';
import type { DemoPaintingName } from './paintings.ts';

export const DEMO_TITLE = 'One autumn meadow, two hands';

export const DEMO_SCENARIO =
  'An evening painting circle works from one autumn photograph. Maren and Jonas each paint the meadow, the ' +
  'wood and the massif in one sitting; Edda looks on from elsewhere and says what she sees. The people are ' +
  'invented and so are their paintings, which the program painted itself. Move and mark whatever you like; ' +
  'delete the board when you no longer need it.';

export type DemoPersonName = 'Maren' | 'Jonas' | 'Edda';

export const DEMO_PEOPLE: readonly { name: DemoPersonName; role: MemberRole }[] = [
  { name: 'Maren', role: 'painter' },
  { name: 'Jonas', role: 'painter' },
  { name: 'Edda', role: 'teacher' },
];

export interface DemoPainting {
  name: DemoPaintingName;
  painter: DemoPersonName;
  caption: string;
  intention: string;
  /** Where the painter wants the eye to go. */
  focus: FractionPoint;
}

/** In the order of posting: the board shows the last one first, and that is the one with something to say. */
export const DEMO_STUDIES: readonly DemoPainting[] = [
  {
    name: 'far-massif',
    painter: 'Jonas',
    caption: 'One sitting, the air first',
    intention:
      'A quiet distance. The rust of the wood is the loud note, everything behind it lies in the air, and the ' +
      'whole is a little lighter than the photograph.',
    focus: [0.745, 0.47],
  },
  {
    name: 'close-massif',
    painter: 'Maren',
    caption: 'One sitting, the massif first',
    intention:
      'The weight of the massif behind the wood, and the wood glowing in front of it. The eye should come to ' +
      'rest at the dark fir.',
    focus: [0.745, 0.5],
  },
];

export interface DemoMark {
  /** A name for replies to point at. */
  key: string;
  author: DemoPersonName;
  painting: DemoPaintingName;
  kind: 'pin' | 'stroke' | 'reply';
  planeId: string | null;
  points: FractionPoint[];
  text: string;
  answers?: string;
}

/** In the order in which they were said. */
export const DEMO_MARKS: readonly DemoMark[] = [
  {
    key: 'heavy',
    author: 'Edda',
    painting: 'close-massif',
    kind: 'pin',
    planeId: 'massif',
    points: [[0.3, 0.27]],
    text:
      'The massif stands as near as the trees. Its darks are about one step too heavy and too warm: squint, and ' +
      'it joins the wood.',
  },
  {
    key: 'known',
    author: 'Maren',
    painting: 'close-massif',
    kind: 'reply',
    planeId: null,
    points: [],
    text: 'Now that I squint, yes. I painted the rock brown because I know it is brown.',
    answers: 'heavy',
  },
  {
    key: 'foot',
    author: 'Edda',
    painting: 'close-massif',
    kind: 'stroke',
    planeId: 'massif',
    points: [
      [0.44, 0.425],
      [0.478, 0.432],
      [0.52, 0.447],
      [0.558, 0.466],
      [0.594, 0.487],
      [0.63, 0.5],
      [0.664, 0.502],
    ],
    text:
      'Begin along the foot: scumble the air colour thinly over these darks, then step back and look before you ' +
      'touch the lit rock.',
  },
  {
    key: 'ground',
    author: 'Jonas',
    painting: 'close-massif',
    kind: 'pin',
    planeId: 'meadow',
    points: [[0.3, 0.78]],
    text: 'The ground lies flat with very few strokes. I would leave it as it is.',
  },
  {
    key: 'how',
    author: 'Maren',
    painting: 'far-massif',
    kind: 'pin',
    planeId: 'massif',
    points: [[0.62, 0.3]],
    text: 'How did you keep it this quiet and still see rock?',
  },
  {
    key: 'into',
    author: 'Jonas',
    painting: 'far-massif',
    kind: 'reply',
    planeId: null,
    points: [],
    text: 'I laid the air colour first, at the right value, and worked the rock into it on the canvas.',
    answers: 'how',
  },
  {
    key: 'dark',
    author: 'Edda',
    painting: 'far-massif',
    kind: 'pin',
    planeId: 'wood',
    points: [[0.745, 0.5]],
    text: 'The heaviest dark stands in the near wood and nowhere behind it. That carries the whole distance.',
  },
];
