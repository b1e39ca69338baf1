/** Every word of the light and weather of the scene, and of planes whose photo is not to be trusted. Pure. */
import type { Condition } from '#server/core/contract/setup.ts';

export const sceneWords = {
  title: 'The light and weather of the scene',
  about: 'What is ticked here keeps those readings quiet that would not be fair in such light.',
  onlyLook: 'The owner of the board, a teacher or the host says what light it was.',
  nothing: 'Nothing out of the ordinary is noted.',
  more: 'Say what light and weather it was',
  names: {
    snow: 'Snow',
    'against-light': 'Against the light',
    'low-sun': 'Low sun',
    fog: 'Fog',
    'valley-mist': 'Mist in the valley',
    'cloud-shadow': 'Foreground in cloud shadow',
    'sun-spot': 'A spot of sun',
    'clear-air': 'Very clear air',
    smoke: 'Smoke or dust',
    shallow: 'A short distance',
    night: 'Night',
  } satisfies Record<Condition, string>,

  trust: {
    ask: 'The photo is not to be trusted here',
    why: 'Why not?',
    change: 'Change the reason',
    whyHint: 'For example: the camera has blown the snow out, or darkened the sky.',
    keep: 'Do not trust it here',
    keepChange: 'Keep the reason',
    leave: 'Not now',
    again: 'Trust it again',
    effect: 'The painting is then not compared with the photo in this plane.',
  },
} as const;
