import { Readable } from 'node:stream';
import { PICTURE_SIZES } from '#server/core/contract/picture-choices.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { pictureNotFound } from '#server/http/picture-not-found.ts';
import { handle } from '#server/http/respond.ts';
import { refuseUnseen } from '#server/http/seen-picture.ts';
import { refuseVeiledReference } from '#server/http/veil.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';
import { openBlob } from '#server/store/blobs.ts';
import { findRendition } from '#server/store/renditions.ts';

type Params = { boardId: string; pictureId: string; size: string };

/** Names of what browsers may have; the plate and the clip map stay here. */
const SERVED = [...PICTURE_SIZES.map(String), 'lossless-640'];

/**
 * Bytes of a picture at a size: JPEG for 640, 1280 and 2560, PNG for lossless-640.
 *
 * Kept by the browser but asked about each time, so that a picture taken back is gone for everyone at once, and a
 * reference that was seen before is not shown while a class looks at the painting alone.
 */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId, size } = await params;
  await refuseUnseen(boardId, pictureId, await visitorOnBoard(request, boardId));
  if (!SERVED.includes(size)) {
    throw new Problem(
      'bad-request',
      say`There is no size ${size.slice(0, 40)}. Ask for ${SERVED.join(', ')}.`,
    );
  }
  await refuseVeiledReference(boardId, pictureId);
  const rendition = await findRendition(boardId, pictureId, size);
  if (!rendition) throw pictureNotFound();
  const headers = {
    etag: `"${rendition.hash}"`,
    'cache-control': 'private, max-age=0, must-revalidate',
    'content-type': rendition.mediaType,
    'x-content-type-options': 'nosniff',
  };
  if (namesTag(request.headers.get('if-none-match'), headers.etag)) {
    return new Response(null, { status: 304, headers });
  }
  const body = Readable.toWeb(await openBlob(rendition.hash)) as ReadableStream;
  return new Response(body, { headers: { ...headers, 'content-length': String(rendition.sizeBytes) } });
});

/** RFC 9110 §13.1.2: a list of tags, weak ones match too. */
function namesTag(header: string | null, tag: string): boolean {
  if (!header) return false;
  return header.split(',').some((part) => ['*', tag, `W/${tag}`].includes(part.trim()));
}
