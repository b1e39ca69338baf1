/**
 * Puts files together into one archive (ZIP, PKWARE APPNOTE 6.3), streamed, with a manifest that names every file, its
 * size and its SHA-256.
 *
 * In the flow: board archive, own data, backup -> [packing] -> response or file. IO: reads the files it was given when
 * their turn comes; nothing is held in memory but what was given as text.
 */
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { PassThrough, type Readable } from 'node:stream';
import { ZipFile } from 'yazl';
import { MANIFEST, type ManifestBase } from '../core/outward/manifest.ts';

interface Packed {
  path: string;
  sha256: string;
  sizeBytes: number;
  put(zip: ZipFile): void;
}

const OPTIONS = { mode: 0o100600 };

export class Packing {
  readonly #files = new Map<string, Packed>();

  /** Adds a text, compressed. */
  addText(path: string, text: string): void {
    const bytes = Buffer.from(text);
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    const put = (zip: ZipFile) => zip.addBuffer(bytes, path, OPTIONS);
    this.#files.set(path, { path, sha256, sizeBytes: bytes.length, put });
  }

  /** Adds a value as JSON that people can read. */
  addJson(path: string, value: unknown): void {
    this.addText(path, `${JSON.stringify(value, null, 2)}\n`);
  }

  /**
   * Adds a file of the disk as it is.
   *
   * @param sha256 Of its content when it is known already; else the file is read for it.
   * @param compress For texts; pictures are compressed already.
   * @throws Error when it is not there.
   */
  async addFile(
    path: string,
    realPath: string,
    { sha256, compress = false }: { sha256?: string; compress?: boolean } = {},
  ): Promise<void> {
    const { size: sizeBytes } = await stat(realPath);
    const put = (zip: ZipFile) => zip.addFile(realPath, path, { ...OPTIONS, compress });
    this.#files.set(path, { path, sha256: sha256 ?? (await hashOfFile(realPath)), sizeBytes, put });
  }

  /** What was added so far, as the manifest lists it. */
  get files(): ManifestBase['files'] {
    return [...this.#files.values()].map(({ path, sha256, sizeBytes }) => ({ path, sha256, sizeBytes }));
  }

  /** The archive: the manifest first, then every file. An error of a file ends the stream with that error. */
  finish(about: Omit<ManifestBase, 'files'> & Record<string, unknown>): Readable {
    const zip = new ZipFile();
    zip.addBuffer(
      Buffer.from(`${JSON.stringify({ ...about, files: this.files }, null, 2)}\n`),
      MANIFEST,
      OPTIONS,
    );
    for (const file of this.#files.values()) file.put(zip);
    const out = new PassThrough();
    zip.on('error', (thrown: Error) => out.destroy(thrown));
    zip.outputStream.on('error', (thrown: Error) => out.destroy(thrown));
    zip.outputStream.pipe(out);
    zip.end();
    return out;
  }
}

/** SHA-256 of a file, 64 hexadecimal digits. */
async function hashOfFile(path: string): Promise<string> {
  const digest = createHash('sha256');
  for await (const chunk of createReadStream(path)) digest.update(chunk as Buffer);
  return digest.digest('hex');
}
