/** Every word of the planned ladder: its handles, its air, what is taken and kept. Pure. */
import type { HandlePart, LikelyAir } from '#server/core/contract/plan-wishes.ts';

export const planLadderWords = {
  title: 'Planned ladder',
  photograph: 'photograph',
  plan: 'plan',
  about: 'Drag lights, middle or darks of a plane up and down, or take them by key.',
  working: 'Planning …',
  connecting: 'Fetching the planes …',
  failed: 'The small copy of the photograph could not be fetched, so nothing can be planned. Try again.',
  noPlanes:
    'No plane is outlined on this photograph yet. Outline them on the board, far to near; then a plan that recedes is proposed here.',
  toBoard: 'Outline them on the board',
  part: {
    light: 'Lights',
    mid: 'Middle',
    dark: 'Darks',
    chroma: 'Chroma',
    warmCool: 'Warm–cool',
  } satisfies Record<HandlePart, string>,
  handle: (part: HandlePart, plane: string) => `${planLadderWords.part[part]} of ${plane}`,
  value: (value: string) => `value ${value}`,
  handleKeys:
    'Up and down move it by a tenth of a step, page keys by half a step; Delete gives it back to the air.',
  chroma: (chroma: string, times: string) =>
    times === '' ? `chroma ${chroma}` : `chroma ${chroma}, × ${times}`,
  warmCool: (amount: string, by: string) => (by === '' ? amount : `${amount}, moved ${by}`),
  asAir: 'As the air leaves it',
  asAirOf: (plane: string) => `As the air leaves it: ${plane}`,
  allAsAir: 'All planes as the air leaves them',

  air: {
    title: 'Colour of the air',
    about: 'Everything far drifts toward it. How light the air is stays as in the photograph.',
    own: 'The photograph’s own',
    likely: {
      blue: 'Blue',
      'blue-violet': 'Blue-violet',
      'red-violet': 'Red-violet',
      'blue-green': 'Blue-green',
      warm: 'Warm',
    } satisfies Record<LikelyAir, string>,
    picked: 'Picked',
    pick: 'Pick it from the picture',
    picking:
      'Point at the sky just above the farthest ridge, or at any colour you want the distance to turn to.',
    pickKeys: 'Arrow keys move the point, Enter takes the colour, Escape leaves it.',
    pickPoint: 'Where the colour of the air is taken',
    leave: 'Leave it',
    outside: 'That point lies outside the picture. Point inside it.',
    unavailable: 'The colours of the picture could not be fetched. Try again.',
  },
  strength: {
    title: 'How much air',
    as: 'as the photograph',
    usual: 'usual',
    times: (times: string) => `${times} × the usual`,
  },
  count: {
    title: 'Planes in the plan',
    all: (planes: number) => `As they are (${planes})`,
    some: (planes: number) => `${planes}`,
  },
  said: 'What the plan decided',
  nothingAmiss: 'The plan recedes: darks climb, and no two planes merge.',

  take: 'Take this as the plan',
  taken: 'This is the plan that was taken.',
  takenAfter: 'The plan that was taken is another one.',
  name: 'A name for it, if you like',
  kept: {
    title: 'Plans that were taken',
    by: (name: string, when: string) => `${name}, ${when}`,
    somebody: 'Somebody who has left',
    unnamed: 'Without a name',
    again: 'Take it again',
    againOf: (name: string) => `Take it again: ${name}`,
    forget: 'Forget it',
    forgetOf: (name: string) => `Forget it: ${name}`,
    now: 'taken now',
  },
} as const;
