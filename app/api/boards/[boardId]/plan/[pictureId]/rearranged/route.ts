import { plannedPicture } from '#server/http/planned-picture.ts';
import { handle } from '#server/http/respond.ts';

type Params = { boardId: string; pictureId: string };

/** The photograph as it is rearranged, as a JPEG of its plate's size. */
export const GET = handle<Params>(async (request, { params }) =>
  plannedPicture(request, await params, false),
);
