/** The pictures of the README: which screen, how wide, and what is open on it. */
import { BOARD_SCREENS } from './list-board.ts';
import { PLAN_AND_WALL_SCREENS } from './list-plan-wall.ts';
import type { Screen } from './screen.ts';

export interface ReadmePicture extends Screen {
  /** Of the window, px. */
  width: number;
}

function of(name: string, screen: string, width: number): ReadmePicture {
  const found = [...BOARD_SCREENS, ...PLAN_AND_WALL_SCREENS].find((each) => each.name === screen);
  if (!found) throw new Error(`There is no screen ${screen}.`);
  return { ...found, name, width };
}

export const README_PICTURES: readonly ReadmePicture[] = [
  of('board', 'board-first-look', 1440),
  of('plan', 'plan-frame-in-hand', 1440),
];
