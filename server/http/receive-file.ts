/**
 * The body of a request as one file in the data folder, streamed within a limit.
 *
 * In the flow: archives handler -> [receive-file] -> `services().takeInBoard`. Whatever goes wrong leaves no file. IO:
 * writes `<data>/incoming/`.
 */
import { randomUUID } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { mkdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { Readable, Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ReadableStream } from 'node:stream/web';
import { isProblem, Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { incomingFolder } from '../store/blobs.ts';
import { isDiskFull, storeProblem } from '../store/trouble.ts';

/**
 * Receives it and hands it on; the file is gone afterwards, whatever `use` does.
 *
 * @param mostBytes How long the body may be.
 * @throws Problem 'file-empty', 'file-too-large', 'bad-request' when it broke off, 'disk-full'; what `use` throws.
 */
export async function withReceivedFile<T>(
  request: Request,
  mostBytes: number,
  use: (path: string) => Promise<T>,
): Promise<T> {
  if (!request.body) throw empty();
  const path = join(incomingFolder(), randomUUID());
  try {
    await mkdir(incomingFolder(), { recursive: true, mode: 0o700 });
    await receive(request.body as unknown as ReadableStream, path, mostBytes); // the two types differ in name only
    return await use(path);
  } catch (thrown) {
    throw storeProblem(thrown);
  } finally {
    await rm(path, { force: true });
  }
}

async function receive(body: ReadableStream, path: string, mostBytes: number): Promise<void> {
  let sizeBytes = 0;
  const counting = new Transform({
    transform(chunk: Buffer, _encoding, done) {
      sizeBytes += chunk.length;
      done(sizeBytes > mostBytes ? tooLarge(mostBytes) : null, chunk);
    },
  });
  try {
    await pipeline(Readable.fromWeb(body), counting, createWriteStream(path, { flags: 'wx', mode: 0o600 }));
  } catch (thrown) {
    if (isProblem(thrown) || isDiskFull(thrown)) throw thrown;
    throw new Problem('bad-request', say`The file broke off before it was complete. Send it again.`, {
      cause: thrown,
    });
  }
  if (sizeBytes === 0) throw empty();
}

function empty(): Problem {
  return new Problem('file-empty', say`No file came, or it has 0 bytes. Choose it again.`);
}

function tooLarge(mostBytes: number): Problem {
  return new Problem(
    'file-too-large',
    say`This archive has more than ${Math.round(mostBytes / 1e6)} MB, which is the limit. Nothing of it was kept.`,
  );
}
