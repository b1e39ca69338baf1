/**
 * Opens an archive that may be anything: truncated, hostile, of another kind or a later version.
 *
 * In the flow: taking a board in, restore -> [unpacking]. Nothing is written here. What is read is compared with the
 * manifest's sizes and hashes; names that climb, links, encrypted or doubled files, files that nobody named and bombs
 * are refused. IO: reads the archive.
 */
import { createHash } from 'node:crypto';
import { type Readable, Transform } from 'node:stream';
import { crc32 } from 'node:zlib';
import { type Entry, openPromise, type ZipFile } from 'yauzl';
import { ARCHIVE_VERSION, type ArchiveFormat, MANIFEST, ManifestBase } from '../core/outward/manifest.ts';
import { isProblem, Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';

/** How much an archive may hold once it is unpacked. */
export interface UnpackingLimits {
  mostBytes: number;
  mostFiles: number;
}

/** Largest text that is read into memory whole, bytes. */
const MOST_TEXT_BYTES = 128 * 1024 * 1024;
/** A text of ours shrinks to a tenth or so; what shrinks to less than this share of itself was made to burst. */
const LEAST_SHARE = 1 / 400;
const SMALL_BYTES = 1024 * 1024;
const [TYPE_MASK, REGULAR] = [0o170000, 0o100000];

/** @param what Completes "This archive …". */
export function archiveRefused(what: string, cause?: unknown): Problem {
  return new Problem(
    'archive-refused',
    say`This archive ${what}, so nothing was taken from it. Take a fresh one from where it was made, and try again.`,
    { cause },
  );
}

export class Archive {
  readonly manifest: ManifestBase;
  readonly #zip: ZipFile;
  readonly #entries: ReadonlyMap<string, Entry>;

  private constructor(zip: ZipFile, entries: ReadonlyMap<string, Entry>, manifest: ManifestBase) {
    this.#zip = zip;
    this.#entries = entries;
    this.manifest = manifest;
  }

  /**
   * Reads the list of files and the manifest; the caller closes it.
   *
   * @throws Problem 'archive-refused' for anything that is not whole, of that format, and within the limits.
   */
  static async open(path: string, format: ArchiveFormat, limits: UnpackingLimits): Promise<Archive> {
    const options = { autoClose: false, lazyEntries: true, strictFileNames: true, validateEntrySizes: true };
    const zip = await openPromise(path, options).catch((thrown: unknown) => {
      throw archiveRefused(say`is no archive, or it broke off on its way`, thrown);
    });
    try {
      const entries = await listEntries(zip, limits);
      const bytes = await bytesOf(zip, entries.get(MANIFEST));
      const manifest = parseManifest(bytes, format);
      compare(entries, manifest);
      return new Archive(zip, entries, manifest);
    } catch (thrown) {
      zip.close();
      throw isProblem(thrown) ? thrown : archiveRefused(say`is damaged`, thrown);
    }
  }

  has(path: string): boolean {
    return this.#entries.has(path);
  }

  /** @throws Problem 'archive-refused' when it is not there, too long, or no JSON. */
  async json(path: string): Promise<unknown> {
    try {
      const bytes: Buffer[] = [];
      for await (const chunk of await this.stream(path, MOST_TEXT_BYTES)) bytes.push(chunk as Buffer);
      return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(bytes)));
    } catch (thrown) {
      throw isProblem(thrown)
        ? thrown
        : archiveRefused(say`has a part that cannot be read (${path})`, thrown);
    }
  }

  /**
   * The bytes of one file. The stream fails with a Problem when they are not those that the manifest names.
   *
   * @throws Problem 'archive-refused' when it is not there or larger than `mostBytes`.
   */
  async stream(path: string, mostBytes = Number.POSITIVE_INFINITY): Promise<Readable> {
    const [entry, named] = [this.#entries.get(path), this.#fileNamed(path)];
    if (!entry || !named) throw archiveRefused(say`lacks a part (${path})`);
    if (entry.uncompressedSize > mostBytes) throw archiveRefused(say`has a part that is too large (${path})`);
    const source = await this.#zip.openReadStreamPromise(entry).catch((thrown: unknown) => {
      throw archiveRefused(say`is damaged`, thrown);
    });
    const checked = checking(path, named.sha256);
    source.on('error', (thrown) => checked.destroy(archiveRefused(say`is damaged (${path})`, thrown)));
    checked.on('close', () => source.destroy());
    return source.pipe(checked);
  }

  close(): void {
    this.#zip.close();
  }

  #byPath: Map<string, { sha256: string }> | null = null;

  #fileNamed(path: string): { sha256: string } | undefined {
    this.#byPath ??= new Map(this.manifest.files.map((file) => [file.path, file]));
    return this.#byPath.get(path);
  }
}

function checking(path: string, sha256: string): Transform {
  const digest = createHash('sha256');
  return new Transform({
    transform(chunk: Buffer, _encoding, done) {
      digest.update(chunk);
      done(null, chunk);
    },
    flush(done) {
      const same = digest.digest('hex') === sha256;
      done(same ? null : archiveRefused(say`holds something else than its list says (${path})`));
    },
  });
}

async function listEntries(
  zip: ZipFile,
  { mostBytes, mostFiles }: UnpackingLimits,
): Promise<Map<string, Entry>> {
  const entries = new Map<string, Entry>();
  let [whole, packed] = [0, 0];
  if (zip.entryCount > mostFiles)
    throw archiveRefused(say`holds ${zip.entryCount} files, more than ${mostFiles}`);
  for await (const entry of zip.eachEntry()) {
    refuseStrange(entry);
    if (entries.has(entry.fileName)) throw archiveRefused(say`holds one file twice (${entry.fileName})`);
    whole += entry.uncompressedSize;
    packed += entry.compressedSize;
    if (whole > mostBytes) throw archiveRefused(say`holds more than ${Math.round(mostBytes / 1e6)} MB`);
    entries.set(entry.fileName, entry);
  }
  // Files that share their bytes make a small archive large.
  if (packed > zip.fileSize) throw archiveRefused(say`holds files that lie inside one another`);
  return entries;
}

function refuseStrange(entry: Entry): void {
  const mode = (entry.externalFileAttributes >>> 16) & TYPE_MASK;
  if (mode !== 0 && mode !== REGULAR) throw archiveRefused(say`holds something that is no file`);
  if ((entry.generalPurposeBitFlag & 1) !== 0) throw archiveRefused(say`is encrypted`);
  const { uncompressedSize, compressedSize } = entry;
  if (uncompressedSize > SMALL_BYTES && compressedSize < uncompressedSize * LEAST_SHARE) {
    throw archiveRefused(say`holds a part that was made to burst when it is unpacked`);
  }
}

async function bytesOf(zip: ZipFile, entry: Entry | undefined): Promise<Buffer> {
  if (!entry) throw archiveRefused(say`has no list of what it holds`);
  if (entry.uncompressedSize > MOST_TEXT_BYTES) throw archiveRefused(say`has a list that is too long`);
  const chunks: Buffer[] = [];
  for await (const chunk of await zip.openReadStreamPromise(entry)) chunks.push(chunk as Buffer);
  const bytes = Buffer.concat(chunks);
  // No hash names the list itself, but the archive's own sum does.
  if (crc32(bytes) !== entry.crc32) throw archiveRefused(say`is damaged`);
  return bytes;
}

function parseManifest(bytes: Buffer, format: ArchiveFormat): ManifestBase {
  let found: unknown;
  try {
    found = JSON.parse(bytes.toString('utf8'));
  } catch (cause) {
    throw archiveRefused(say`has a list that cannot be read`, cause);
  }
  const parsed = ManifestBase.safeParse(found);
  if (!parsed.success) {
    if (isFromLater(found)) throw fromLater();
    throw archiveRefused(say`has a list that cannot be read`, parsed.error);
  }
  if (parsed.data.format !== format) {
    throw archiveRefused(OTHER_KIND[parsed.data.format]);
  }
  if (parsed.data.formatVersion > ARCHIVE_VERSION) throw fromLater();
  return parsed.data;
}

/** Completes "This archive …", by what it is of. */
const OTHER_KIND: Record<ArchiveFormat, string> = {
  'veilstep board': say`is a board archive, another kind than is asked for here`,
  'veilstep person': say`is a person archive, another kind than is asked for here`,
  'veilstep backup': say`is a backup archive, another kind than is asked for here`,
};

function isFromLater(found: unknown): boolean {
  const version = (found as { formatVersion?: unknown } | null)?.formatVersion;
  return typeof version === 'number' && version > ARCHIVE_VERSION;
}

function fromLater(): Problem {
  return new Problem(
    'archive-refused',
    say`A later version of Veilstep made this archive, and this one cannot read it. Bring this server up to date, then try again.`,
  );
}

/** Every file of the list is there in its size, and nothing else is. */
function compare(entries: ReadonlyMap<string, Entry>, { files }: ManifestBase): void {
  const named = new Set(files.map(({ path }) => path));
  if (named.size !== files.length) throw archiveRefused(say`names one file twice`);
  for (const { path, sizeBytes } of files) {
    const entry = entries.get(path);
    if (!entry) throw archiveRefused(say`lacks a part (${path})`);
    if (entry.uncompressedSize !== sizeBytes)
      throw archiveRefused(say`holds something else than its list says (${path})`);
  }
  for (const path of entries.keys()) {
    if (path !== MANIFEST && !named.has(path))
      throw archiveRefused(say`holds a file that its list does not name`);
  }
}
