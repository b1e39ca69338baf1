/** A photograph posted to a board of the bench, as large as what is measured. IO: HTTP. */
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import type { AServer, Entered } from '#tests/helpers/a-server.ts';

export const PHOTO = fileURLToPath(new URL('../fixtures/photos/canyon-river.jpg', import.meta.url));
/** Pixels. */
export const [WIDTH, HEIGHT] = [2048, 1365];

/** @param gain Factor on its values, so that no two are alike. @returns Its id. */
export async function postPhoto(
  server: AServer,
  host: Entered,
  boardId: string,
  gain: number,
  fields: Record<string, string>,
): Promise<string> {
  const bytes = await sharp(PHOTO)
    .resize(WIDTH, HEIGHT, { fit: 'fill' })
    .linear(gain, 0)
    .jpeg({ quality: 92 })
    .toBuffer();
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.set(name, value);
  form.set('file', new Blob([new Uint8Array(bytes)], { type: 'image/jpeg' }), 'picture.jpg');
  const response = await server.call(host, `/api/boards/${boardId}/pictures`, { method: 'POST', body: form });
  if (!response.ok) throw new Error(`The upload was refused: ${await response.text()}`);
  return ((await response.json()) as { id: string }).id; // the upload's answer, just checked to be one
}
