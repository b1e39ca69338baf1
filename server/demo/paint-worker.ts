/** Paints one demo painting in a thread of its own and hands back its JPEG. IO: reads the photograph. */
import { parentPort, workerData } from 'node:worker_threads';
import { photoJpeg } from '../imaging/photo-jpeg.ts';
import { type DemoPaintingName, paintDemo, STUDY_WIDTH_PX, shotOf } from './paintings.ts';
import { readPhotograph } from './photograph.ts';

const port = parentPort;
if (!port) throw new Error('paint-worker.ts runs in a worker thread only.');

// Our own `paintAside` is the only one who starts this thread, always with a painting's name.
const name = workerData as DemoPaintingName;
const painting = paintDemo(name, await readPhotograph(STUDY_WIDTH_PX));
const { widthPx: width, heightPx: height, samples } = shotOf(name, painting);
port.postMessage(await photoJpeg({ width, height, samples: new Uint8Array(samples) }));
