/**
 * The demo's invented evening: who paints, what they wanted, what they say to each other.
 *
 * Everybody here is invented. Places are in 0..1 of the painting they speak of. Pure: texts and tables only.
 */
import type { MemberRole } from '../core/contract/roles.ts';
import type { FractionPoint } from '../core/contract/setup.ts';
import type { MarkKind, MarkPaint, MarkPatch } from '../core/live/layout.ts';
import { say } from '../core/say/say.ts';
import type { DemoPaintingName } from './paintings.ts';

export const DEMO_TITLE = say`One autumn meadow, five hands`;

export const DEMO_SCENARIO = say`An evening painting circle works from one autumn photograph. Maren and Jonas each paint the meadow, the wood and the massif in one sitting; Ida, Ruben and Sunna add their own answers to the same air; Edda looks on from elsewhere and says what she sees. The wall holds all five side by side, names hidden. The people are invented and so are their paintings, which the program painted itself. Move and mark whatever you like; delete the board when you no longer need it.`;

/** On the wall. */
export const DEMO_QUESTION = say`How did each of us say far?`;

export type DemoPersonName = 'Maren' | 'Jonas' | 'Ida' | 'Ruben' | 'Sunna' | 'Edda';

export const DEMO_PEOPLE: readonly { name: DemoPersonName; role: MemberRole }[] = [
  { name: 'Maren', role: 'painter' },
  { name: 'Jonas', role: 'painter' },
  { name: 'Ida', role: 'painter' },
  { name: 'Ruben', role: 'painter' },
  { name: 'Sunna', role: 'painter' },
  { name: 'Edda', role: 'teacher' },
];

export interface DemoPainting {
  name: DemoPaintingName;
  painter: DemoPersonName;
  caption: string;
  intention: string;
  /** Where the painter wants the eye to go. */
  focus: FractionPoint;
  /** Others may sketch over it. */
  allowsSketch?: true;
}

/** In the order of posting: the board shows the last one first, and that is the one with something to say. */
export const DEMO_STUDIES: readonly DemoPainting[] = [
  {
    name: 'grey-massif',
    painter: 'Ruben',
    caption: say`One sitting, everything from one grey`,
    intention: say`An overcast evening in few colours. Distance by greying, not by paling; the value steps stay small.`,
    focus: [0.745, 0.49],
  },
  {
    name: 'violet-massif',
    painter: 'Sunna',
    caption: say`Two hours, colour before value`,
    intention: say`The massif as a violet against the orange of the wood. The colours should ring; the rest may be simple.`,
    focus: [0.62, 0.4],
  },
  {
    name: 'pale-massif',
    painter: 'Ida',
    caption: say`One hour, big brushes only`,
    intention: say`As much air as it will bear: the massif no more than a breath, the meadow heavy in front of it.`,
    focus: [0.5, 0.56],
  },
  {
    name: 'far-massif',
    painter: 'Jonas',
    caption: say`One sitting, the air first`,
    intention: say`A quiet distance. The rust of the wood is the loud note, everything behind it lies in the air, and the whole is a little lighter than the photograph.`,
    focus: [0.745, 0.47],
  },
  {
    name: 'close-massif',
    painter: 'Maren',
    caption: say`One sitting, the massif first`,
    intention: say`The weight of the massif behind the wood, and the wood glowing in front of it. The eye should come to rest at the dark fir.`,
    focus: [0.745, 0.5],
    allowsSketch: true,
  },
];

export interface DemoMark {
  /** A name for replies to point at. */
  key: string;
  author: DemoPersonName;
  painting: DemoPaintingName;
  kind: MarkKind;
  planeId: string | null;
  points: FractionPoint[];
  text: string;
  /** Key of the mark it answers, or of the first stroke of its sketch. */
  answers?: string;
  /** Of a stroke that is painted over a painting. */
  paint?: MarkPaint;
  /** Of a sample of colour. */
  patch?: MarkPatch;
  /** Who agrees. */
  nods?: readonly DemoPersonName[];
}

/** The air colour of the photograph, thin. */
const AIR_PAINT: MarkPaint = { hex: '#aeb6c2', width: 0.03, opacity: 0.45 };

/** What a small disc there measures in the light of the cards; a test takes it again. */
const MAREN_BROWN: MarkPatch['lab'] = { L: 52, a: 11, b: 24 };

/** In the order in which they were said. */
export const DEMO_MARKS: readonly DemoMark[] = [
  {
    key: 'heavy',
    author: 'Edda',
    painting: 'close-massif',
    kind: 'pin',
    planeId: 'massif',
    points: [[0.3, 0.27]],
    text: say`The massif stands as near as the trees. Its darks are about one step too heavy and too warm: squint, and it joins the wood.`,
    nods: ['Jonas', 'Ida'],
  },
  {
    key: 'known',
    author: 'Maren',
    painting: 'close-massif',
    kind: 'reply',
    planeId: null,
    points: [],
    text: say`Now that I squint, yes. I painted the rock brown because I know it is brown.`,
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
    text: say`Begin along the foot: scumble the air colour thinly over these darks, then step back and look before you touch the lit rock.`,
  },
  {
    key: 'ground',
    author: 'Jonas',
    painting: 'close-massif',
    kind: 'pin',
    planeId: 'meadow',
    points: [[0.3, 0.78]],
    text: say`The ground lies flat with very few strokes. I would leave it as it is.`,
    nods: ['Edda'],
  },
  {
    key: 'brown',
    author: 'Edda',
    painting: 'close-massif',
    kind: 'patch',
    planeId: 'massif',
    points: [[0.25, 0.38]],
    text: say`This is the brown I mean. The same place in the photograph is a cool grey.`,
    patch: { lab: MAREN_BROWN, trust: 'A' },
  },
  {
    key: 'lead',
    author: 'Ida',
    painting: 'close-massif',
    kind: 'arrow',
    planeId: 'wood',
    points: [
      [0.28, 0.53],
      [0.7, 0.6],
    ],
    text: say`The edge of the wood leads me straight to the fir. That works.`,
  },
  {
    key: 'lit',
    author: 'Jonas',
    painting: 'close-massif',
    kind: 'outline',
    planeId: 'massif',
    points: [
      [0.395, 0.315],
      [0.42, 0.3],
      [0.445, 0.33],
      [0.475, 0.385],
      [0.5, 0.415],
      [0.47, 0.42],
      [0.425, 0.4],
      [0.4, 0.36],
    ],
    text: say`Only this lit rock need stay as warm as it is.`,
  },
  {
    key: 'veil',
    author: 'Edda',
    painting: 'close-massif',
    kind: 'sketch',
    planeId: 'massif',
    points: [
      [0.14, 0.37],
      [0.2, 0.36],
      [0.26, 0.375],
      [0.32, 0.4],
    ],
    text: say`About this much air over the foot of it.`,
    paint: AIR_PAINT,
  },
  {
    key: 'veil-2',
    author: 'Edda',
    painting: 'close-massif',
    kind: 'sketch',
    planeId: 'massif',
    points: [
      [0.3, 0.42],
      [0.37, 0.43],
      [0.44, 0.45],
    ],
    text: '',
    answers: 'veil',
    paint: AIR_PAINT,
  },
  {
    key: 'how',
    author: 'Maren',
    painting: 'far-massif',
    kind: 'pin',
    planeId: 'massif',
    points: [[0.62, 0.3]],
    text: say`How did you keep it this quiet and still see rock?`,
  },
  {
    key: 'into',
    author: 'Jonas',
    painting: 'far-massif',
    kind: 'reply',
    planeId: null,
    points: [],
    text: say`I laid the air colour first, at the right value, and worked the rock into it on the canvas.`,
    answers: 'how',
  },
  {
    key: 'dark',
    author: 'Edda',
    painting: 'far-massif',
    kind: 'pin',
    planeId: 'wood',
    points: [[0.745, 0.5]],
    text: say`The heaviest dark stands in the near wood and nowhere behind it. That carries the whole distance.`,
  },
];
