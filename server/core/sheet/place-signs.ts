/**
 * Where the numbers and letters stand on the painting of a sheet: near what they are about, inside the picture, none
 * over another.
 *
 * In the flow: content -> [place-signs] -> drawing. Signs are discs of one size; places are searched on rings around the
 * wanted one, the nearest free one is taken. Pure.
 */

export interface WantedSign {
  x: number;
  y: number;
}

export interface PlacedSign {
  x: number;
  y: number;
  /** How far it stands from where it was wanted, in the unit of the page. */
  moved: number;
}

export interface SignField {
  width: number;
  height: number;
  /** Of a sign, its rim included. */
  radius: number;
}

const DIRECTIONS = 24;

/**
 * @param wanted Places in the field's unit; the first ones choose first.
 * @returns One place for each, inside the field and two radii apart from all others. Where the field is too small for
 *   all of them, signs lie over one another as a last resort, still inside.
 */
export function placeSigns(wanted: readonly WantedSign[], field: SignField): PlacedSign[] {
  const placed: PlacedSign[] = [];
  for (const sign of wanted) placed.push(freePlace(sign, placed, field));
  return placed;
}

function freePlace(wanted: WantedSign, placed: readonly PlacedSign[], field: SignField): PlacedSign {
  const step = field.radius / 2;
  const farthest = Math.hypot(field.width, field.height);
  const home = held(wanted, field);
  for (let away = 0; away <= farthest; away += step) {
    const turns = away === 0 ? 1 : DIRECTIONS;
    for (let turn = 0; turn < turns; turn++) {
      // The first direction is up and to the right, where a hand that points does not cover it.
      const angle = -Math.PI / 4 + (turn * 2 * Math.PI) / DIRECTIONS;
      const at = { x: home.x + away * Math.cos(angle), y: home.y + away * Math.sin(angle) };
      if (isInside(at, field) && isFree(at, placed, field.radius)) return withWay(at, wanted);
    }
  }
  return withWay(home, wanted);
}

function withWay(at: WantedSign, wanted: WantedSign): PlacedSign {
  return { ...at, moved: Math.hypot(at.x - wanted.x, at.y - wanted.y) };
}

function held({ x, y }: WantedSign, { width, height, radius }: SignField): WantedSign {
  const within = (place: number, length: number) =>
    length < 2 * radius ? length / 2 : Math.min(length - radius, Math.max(radius, place));
  return { x: within(x, width), y: within(y, height) };
}

const CLOSE = 1e-9;

function isInside({ x, y }: WantedSign, { width, height, radius }: SignField): boolean {
  const fits = (place: number, length: number) => place >= radius - CLOSE && place <= length - radius + CLOSE;
  return fits(x, width) && fits(y, height);
}

function isFree({ x, y }: WantedSign, placed: readonly PlacedSign[], radius: number): boolean {
  return placed.every((other) => Math.hypot(other.x - x, other.y - y) >= 2 * radius - CLOSE);
}
