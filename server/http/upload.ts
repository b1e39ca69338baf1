/**
 * A multipart body as one file in the data folder and its fields; streamed, within limits.
 *
 * In the flow: pictures handler → [upload] → `services().takeInPicture`. IO: writes `<data>/incoming/`.
 * Whatever goes wrong – too large, broken off, disk full, a wrong field – leaves no file.
 */
import { randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { Readable, Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ReadableStream } from 'node:stream/web';
import { Busboy, type BusboyFileStream, type BusboyHeaders } from '@fastify/busboy';
import { PictureFields } from '../core/contract/requests.ts';
import { CHOOSE_A_PICTURE, fileEmpty, fileTooLarge, MAX_FILE_BYTES } from '../core/contract/upload-limits.ts';
import { isProblem, Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { incomingFolder } from '../store/blobs.ts';
import { storeProblem } from '../store/trouble.ts';

/** An upload that arrived whole. */
export interface ReceivedUpload {
  readonly fields: PictureFields;
  /** The caller hands it on or removes it. */
  readonly temporaryPath: string;
  /** The sender's name for it, without folders; for sentences only. */
  readonly fileName: string;
  readonly sizeBytes: number;
}

/** Beyond the limit this much is still read and dropped, so that the browser gets to see the refusal. */
const DROPPED_BYTES = 4 * MAX_FILE_BYTES;
const MOST_FIELDS = 20;
const MOST_FIELD_BYTES = 4_000;

/**
 * Receives `multipart/form-data` with one part `file` and the fields of `PictureFields`, in any order.
 *
 * @throws Problem `bad-request`, `file-empty`, `file-too-large`, `disk-full`; ZodError for a wrong field.
 */
export async function receiveUpload(request: Request): Promise<ReceivedUpload> {
  const reception = new Reception();
  try {
    await mkdir(incomingFolder(), { recursive: true, mode: 0o700 });
    await reception.read(request);
    return reception.result();
  } catch (thrown) {
    await reception.discard();
    throw refusalOf(thrown, request);
  }
}

class Reception {
  private readonly path = join(incomingFolder(), randomUUID());
  private readonly fields: Record<string, string> = {};
  private writing: Promise<void> | null = null;
  private name = '';
  private sizeBytes = 0;
  private trouble: unknown = null;

  async read(request: Request): Promise<void> {
    const type = request.headers.get('content-type') ?? '';
    if (!request.body || !/^multipart\/form-data;/i.test(type)) {
      throw badRequest(say`A picture is sent as multipart/form-data with a part named file.`);
    }
    const headers: BusboyHeaders = { 'content-type': type };
    const parser = new Busboy({
      headers,
      limits: { fields: MOST_FIELDS, fieldSize: MOST_FIELD_BYTES, parts: MOST_FIELDS + 4 },
    });
    parser.on('file', (part, stream, name) => this.takeFile(part, stream, name));
    parser.on('field', (name, value, nameCut, valueCut) => {
      if (nameCut || valueCut)
        this.trouble ??= badRequest(say`The field ${name} is longer than ${MOST_FIELD_BYTES} bytes.`);
      this.fields[name] = value;
    });
    parser.on('fieldsLimit', () => {
      this.trouble ??= badRequest(say`The form has more than ${MOST_FIELDS} fields.`);
    });
    // The two types of web stream differ in name only.
    await pipeline(Readable.fromWeb(request.body as unknown as ReadableStream), parser);
    await this.writing;
    if (this.trouble) throw this.trouble;
  }

  result(): ReceivedUpload {
    if (!this.writing) throw badRequest(say`No file came with this form. ${CHOOSE_A_PICTURE}`);
    if (this.sizeBytes === 0) throw fileEmpty(this.name);
    const fields = PictureFields.parse(withoutBlanks(this.fields));
    return { fields, temporaryPath: this.path, fileName: this.name, sizeBytes: this.sizeBytes };
  }

  async discard(): Promise<void> {
    await this.writing?.catch(() => undefined);
    await rm(this.path, { force: true });
  }

  private takeFile(part: string, stream: BusboyFileStream, name: string): void {
    if (part !== 'file' || this.writing) {
      this.trouble ??= badRequest(
        part === 'file'
          ? say`This form holds several files. Send one a time.`
          : say`The part ${part} is not known.`,
      );
      stream.resume();
      return;
    }
    this.name = nameFor(name);
    this.writing = pipeline(
      stream,
      this.counter(),
      createWriteStream(this.path, { flags: 'wx', mode: 0o600 }),
    ).catch((thrown: unknown) => {
      this.trouble ??= thrown;
      stream.resume();
    });
  }

  /** Lets bytes through up to the limit, drops some beyond it, and gives up on a sender that goes on. */
  private counter(): Transform {
    return new Transform({
      transform: (chunk: Buffer, _encoding, done) => {
        this.sizeBytes += chunk.length;
        if (this.sizeBytes <= MAX_FILE_BYTES) return done(null, chunk);
        this.trouble ??= fileTooLarge(this.name, null);
        if (this.sizeBytes > DROPPED_BYTES) return done(fileTooLarge(this.name, null));
        done();
      },
    });
  }
}

/** Forms send an empty text for what was left blank. */
function withoutBlanks(fields: Record<string, string>): Record<string, string> {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== ''));
}

function nameFor(name: string): string {
  const last = name.split(/[\\/]/).at(-1)?.trim() ?? '';
  return last === '' ? say`This file` : last.slice(0, 100);
}

function refusalOf(thrown: unknown, request: Request): unknown {
  const known = storeProblem(thrown);
  if (isProblem(known) || (known instanceof Error && known.name === 'ZodError')) return known;
  const broke = request.signal.aborted || isBroken(known);
  return broke
    ? new Problem('bad-request', say`The upload broke off before it was complete. Send it again.`, {
        cause: known,
      })
    : known;
}

/** What busboy and Node.js throw when a body ends early, is cut or is no multipart inside. */
function isBroken(thrown: unknown): boolean {
  if (!(thrown instanceof Error)) return true;
  const code = 'code' in thrown ? String(thrown.code) : '';
  return (
    /^(ERR_STREAM_PREMATURE_CLOSE|ECONNRESET|ABORT_ERR|UND_ERR_.*)$/.test(code) ||
    thrown.name === 'AbortError' ||
    /(unexpected end|multipart|boundary|terminated|aborted|malformed)/i.test(thrown.message)
  );
}

function badRequest(sentence: string): Problem {
  return new Problem('bad-request', say`${sentence} Correct it and send it again.`);
}
