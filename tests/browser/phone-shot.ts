/** A painting of level bands as a phone photographs it: turned, under a lamp of its own, with grey cards beside it. */
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { type CameraCase, type CameraShot, takePhoto } from '#tests/fixtures/camera/rendered-camera.ts';
import { linearOfLab, type Scene } from '#tests/fixtures/scenes/render-scene.ts';
import { RIDGES } from './scenes.ts';

const OUT = fileURLToPath(new URL('../.out/scenes/', import.meta.url));
const [WIDTH, HEIGHT] = [720, 480];

type Bands = readonly (readonly [L: number, a: number, b: number])[];

/** The bands of the browser scenes as light. */
function paintedScene(bands: Bands): Scene {
  const linear = new Float64Array(WIDTH * HEIGHT * 3);
  for (let pixel = 0; pixel < WIDTH * HEIGHT; pixel++) {
    const height = Math.floor(pixel / WIDTH) / HEIGHT;
    const [L = 0, a = 0, b = 0] = bands[RIDGES.filter((ridge) => height >= ridge).length] ?? [];
    linear.set(linearOfLab({ L, a, b }), pixel * 3);
  }
  const labels = new Uint8Array(WIDTH * HEIGHT);
  return { widthPx: WIDTH, heightPx: HEIGHT, linear, labels, names: [], kinds: [], outlines: [] };
}

/** Takes the photo and writes it as a JPEG. */
export async function phoneShot(
  bands: Bands,
  shown: CameraCase,
): Promise<{ shot: CameraShot; path: string }> {
  const shot = await takePhoto(paintedScene(bands), shown);
  await mkdir(OUT, { recursive: true });
  const path = `${OUT}${shown.name.replaceAll(' ', '-')}.jpg`;
  await writeFile(path, shot.jpeg);
  return { shot, path };
}
