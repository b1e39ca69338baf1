import { createHash } from 'node:crypto';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { pairOf, seenPainting } from '#server/http/states.ts';

type Params = { boardId: string; pictureId: string; which: string };

const KINDS = { before: 'image/jpeg', after: 'image/jpeg', change: 'image/png' } as const;

/**
 * A state and an earlier one (`?from=`, else the one before) laid on one another: `before`, `after`, or `change` in neutral
 * greys. Asked about each time, as pictures are.
 */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId, pictureId, which } = await params;
  if (which !== 'before' && which !== 'after' && which !== 'change') {
    throw new Problem(
      'bad-request',
      say`There is no such picture of two states. Ask for before, after or change.`,
    );
  }
  const seen = await seenPainting(request, boardId, pictureId);
  const pair = pairOf(seen, new URL(request.url).searchParams.get('from'));
  const bytes = await services().statePicture(pair, which);
  const etag = `"${createHash('sha256').update(bytes).digest('base64url')}"`;
  const headers = {
    etag,
    'cache-control': 'private, max-age=0, must-revalidate',
    'content-type': KINDS[which],
    'x-content-type-options': 'nosniff',
  };
  if (request.headers.get('if-none-match') === etag) return new Response(null, { status: 304, headers });
  return new Response(Buffer.from(bytes), { headers });
});
