/** Words of the list of keys besides what each letter of the board does: its parts, and keys of a place. Pure. */
export const keyListWords = {
  anywhere: 'Anywhere on the board',
  places: 'On a picture, or what lies on it',
  pages: 'On other pages',
  points: 'outline: along its line to the next point',
  addPoint: 'outline: another point here',
  takePoint: 'outline: this point away; a plan’s handle: back to the air',
  finish: 'finish or take what is begun',
  leave: 'leave what is begun, or a panel',
  back: 'a point of the line back',
  size: 'planes being carried: smaller, larger',
  fine: 'with the arrows: farther for what is moved, finer for the cross',
  along: 'on marks: the first, the last',
  alone: 'plan: the photograph alone, and back',
  hold: 'states, held down: the state before',
} as const;
