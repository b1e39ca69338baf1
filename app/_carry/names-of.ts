/** Doubtful places with the names of their planes. Pure. */
import type { Doubt } from './unsure-places.ts';

/** Whether a plane that was carried is still one of the board. */
export const namesOf = (doubts: readonly Doubt[], planes: readonly { id: string; name: string }[]) =>
  doubts.flatMap(({ planeId, where }) => {
    const name = planes.find(({ id }) => id === planeId)?.name;
    return name === undefined ? [] : [{ name, where }];
  });
