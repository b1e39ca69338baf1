import { answering } from '#server/http/homework.ts';
import { refuseMissingRights, refusePosting } from '#server/http/picture-rules.ts';
import { countCall, UPLOADING } from '#server/http/rate-limit.ts';
import { handle } from '#server/http/respond.ts';
import { services } from '#server/http/services.ts';
import { receiveUpload } from '#server/http/upload.ts';
import { visitorOnBoard } from '#server/http/visitor.ts';
import { removeFile } from '#server/store/blobs.ts';

type Params = { boardId: string };

/** Takes in one picture: `multipart/form-data` with `file` and the fields of `PictureFields`. */
export const POST = handle<Params>(async (request, { params }) => {
  const { boardId } = await params;
  const { visitor, role } = await visitorOnBoard(request, boardId);
  refusePosting(role, null);
  countCall(UPLOADING, visitor.personId);
  const { fields, temporaryPath, fileName, sizeBytes } = await receiveUpload(request);
  try {
    refusePosting(role, fields.kind);
    refuseMissingRights(fields);
    const answer = await answering({ visitor, role }, boardId, fields);
    const file = { temporaryPath, fileName, sizeBytes };
    const incoming = { boardId, painterId: visitor.personId, fields: answer.fields, ...file };
    const taken = await services().takeInPicture(incoming);
    await answer.settle(taken.id);
    return Response.json(taken, {
      status: 201,
      headers: { 'cache-control': 'private, no-store' },
    });
  } finally {
    await removeFile(temporaryPath);
  }
});
