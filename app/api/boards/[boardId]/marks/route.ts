import type { MarksTaken } from '#server/core/contract/outward.ts';
import { ANNOTATION_TYPE } from '#server/core/outward/annotations/vocabulary.ts';
import { Problem } from '#server/core/problem.ts';
import { say } from '#server/core/say/say.ts';
import { countCall, UPLOADING } from '#server/http/rate-limit.ts';
import { handle, readText } from '#server/http/respond.ts';
import { saved } from '#server/http/saved.ts';
import { services } from '#server/http/services.ts';
import { refuseVeiled } from '#server/http/veil.ts';
import { boardNotFound, originOf, refuseUnlessMay, visitorOnBoard } from '#server/http/visitor.ts';
import { marksIn, marksOut } from '#server/outward/board-marks.ts';

type Params = { boardId: string };

/** 16 MB: ten thousand lines of a careful hand. */
const MOST_BYTES = 16 * 1024 * 1024;

/** The marks that the caller sees, as W3C Web Annotations. */
export const GET = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const who = await visitorOnBoard(request, boardId);
  await refuseVeiled(boardId);
  const found = await marksOut(boardId, who, originOf(request));
  if (!found) throw boardNotFound();
  return saved(
    `${JSON.stringify(found.collection, null, 2)}\n`,
    ANNOTATION_TYPE,
    `${found.title} marks.jsonld`,
  );
});

/**
 * Takes Web Annotations in as marks of the caller's own; `?picture=` is where those go whose picture is not here.
 * What cannot be taken is listed with its reason; nothing that is there is touched.
 */
export const POST = handle<Params>(async (request, { params }): Promise<MarksTaken> => {
  const { boardId } = await params;
  const who = await visitorOnBoard(request, boardId);
  refuseUnlessMay(who.role, 'room.mark', say`Only who may make marks on a board may bring some in.`, 'own');
  countCall(UPLOADING, who.visitor.personId);
  const document = parsed(await readText(request, MOST_BYTES));
  const found = await marksIn(boardId, who, document, new URL(request.url).searchParams.get('picture'));
  if (!found) throw boardNotFound();
  const { marks, leftOut, passedOver } = found;
  const writer = { personId: who.visitor.personId, role: who.role, paints: false };
  if (marks.length > 0) await services().marksTakenIn(boardId, writer, marks);
  return { taken: marks.length, leftOut, passedOver };
});

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (cause) {
    throw new Problem(
      'bad-request',
      say`This file holds no annotations: it is not JSON. Choose a file of Web Annotations (JSON-LD).`,
      { cause },
    );
  }
}
