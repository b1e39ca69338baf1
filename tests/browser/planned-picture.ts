/** A photograph with planes on a plan page, and how browser tests read what is painted there and drag it. */
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { differenceCiede2000 } from 'culori';
import { putReferenceOutline } from '#server/core/live/outlines.ts';
import { addPlane } from '#server/core/live/planes.ts';
import { type TracedPicture, tracedPictures } from '#tests/fixtures/traced/traced.ts';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';
import { writeInto } from '#tests/helpers/joined-room.ts';
import { expect, makeBoard, postPicture } from './story.ts';

/** Free-licensed, see the fixture's CREDITS.md. */
export const PICTURE = 'castle-over-plain.jpg';
export const PHOTOGRAPH = fileURLToPath(new URL(`../fixtures/traced/${PICTURE}`, import.meta.url));
/** Soft edges of a whole picture are worked out once, on whatever processor the tests have. */
export const PAINTED = { timeout: 120_000 };

export const traced = () => tracedPictures().find(({ picture }) => picture === PICTURE) as TracedPicture;

export async function aPhotographed(server: AServer, who: Entered, title: string) {
  const board = await makeBoard(server, who, title);
  const { id } = await postPicture(server, who, board.id, PHOTOGRAPH, { kind: 'reference', rights: 'mine' });
  await writeInto(server.url, who, board.id, 'setup', (doc) => {
    for (const [at, { name, kind, outline }] of traced().planes.entries()) {
      addPlane(doc, { id: `plane-${at}`, name, kind, tilt: null });
      putReferenceOutline(doc, id, `plane-${at}`, outline);
    }
  });
  return { boardId: board.id, photographId: id, address: `${server.url}/boards/${board.id}/plan` };
}

export const litPicture = (page: Page) =>
  page.getByRole('img', { name: 'The photograph in its planned light' });

export async function openPart(page: Page, address: string, part: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('tab', { name: part }).click();
}

/** Every `each`th pixel of the painted canvas, red, green, blue. */
export function pixelsOf(page: Page, each = 97): Promise<{ width: number; height: number; codes: number[] }> {
  return page.evaluate((step) => {
    const canvas = document.querySelector<HTMLCanvasElement>('[data-by] canvas');
    if (!canvas) throw new Error('There is no painted canvas.');
    const copy = document.createElement('canvas');
    [copy.width, copy.height] = [canvas.width, canvas.height];
    const context = copy.getContext('2d');
    if (!context) throw new Error('There is no canvas to read from.');
    context.drawImage(canvas, 0, 0);
    const { data } = context.getImageData(0, 0, copy.width, copy.height);
    const codes: number[] = [];
    for (let at = 0; at < data.length; at += 4 * step)
      codes.push(data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0);
    return { width: copy.width, height: copy.height, codes };
  }, each);
}

/** Every 97th of so many pixels, as `pixelsOf` reads them. */
export function every(samples: Uint8Array, pixels: number): number[] {
  const codes: number[] = [];
  for (let at = 0; at < pixels; at += 97) codes.push(...samples.subarray(at * 3, at * 3 + 3));
  return codes;
}

/** Waits until what is painted passes; a painted frame may reach the screen after its worker said so. */
export async function until(page: Page, passes: (codes: number[]) => void): Promise<number[]> {
  let seen: number[] = [];
  await expect(async () => {
    seen = (await pixelsOf(page)).codes;
    passes(seen);
  }).toPass(PAINTED);
  return seen;
}

export const away = differenceCiede2000();

/** dE00 of each pair of pixels, rising. */
export function apart(one: readonly number[], other: readonly number[]): number[] {
  const colour = (codes: readonly number[], at: number) => {
    const [r = 0, g = 0, b = 0] = codes.slice(at, at + 3).map((code) => code / 255);
    return { mode: 'rgb' as const, r, g, b };
  };
  return Array.from({ length: one.length / 3 }, (_, at) =>
    away(colour(one, at * 3), colour(other, at * 3)),
  ).sort((p, q) => p - q);
}

export const share = (sorted: readonly number[], part: number) =>
  sorted[Math.floor((sorted.length - 1) * part)] ?? 0;

export async function drag(
  page: Page,
  from: { x: number; y: number },
  by: readonly [number, number],
): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let step = 1; step <= 8; step++) {
    await page.mouse.move(from.x + (by[0] * step) / 8, from.y + (by[1] * step) / 8);
  }
  await page.mouse.up();
}

export async function middleOf(page: Page, name: string | RegExp, role: 'button' | 'slider' = 'button') {
  await page.getByRole(role, { name }).scrollIntoViewIfNeeded();
  const box = await page.getByRole(role, { name }).boundingBox();
  if (!box) throw new Error(`There is no ${name} on the screen.`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
