/**
 * A planned picture of a photograph as a response: to be looked at large, or taken away.
 *
 * In the flow: handlers -> [planned-picture] -> services. Kept by the browser but asked about each time, since the plan
 * changes and a class may keep photographs back. IO: the main process.
 */
import { refuseUnseen } from './seen-picture.ts';
import { services } from './services.ts';
import { refuseVeiled } from './veil.ts';
import { visitorOnBoard } from './visitor.ts';

/** @param lit in the planned light, or rearranged alone. @throws Problem as the services do. */
export async function plannedPicture(
  request: Request,
  { boardId, pictureId }: { boardId: string; pictureId: string },
  lit: boolean,
): Promise<Response> {
  await refuseUnseen(boardId, pictureId, await visitorOnBoard(request, boardId));
  await refuseVeiled(boardId);
  const { hash, bytes } = await services().plannedJpeg(boardId, pictureId, lit);
  const headers = {
    etag: `"${hash}"`,
    'cache-control': 'private, max-age=0, must-revalidate',
    'content-type': 'image/jpeg',
    'content-disposition': `inline; filename="${lit ? 'planned-light' : 'rearranged'}.jpg"`,
    'x-content-type-options': 'nosniff',
  };
  if (request.headers.get('if-none-match')?.includes(headers.etag)) {
    return new Response(null, { status: 304, headers });
  }
  return new Response(new Uint8Array(bytes), { headers });
}
