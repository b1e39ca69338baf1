/** An upload on its way from the handler to the pipeline. Types only. */
import type { PictureFields } from './requests.ts';

export interface IncomingPicture {
  boardId: string;
  painterId: string;
  fields: PictureFields;
  /** Uploaded bytes in a temporary file of the data folder; the callee removes or adopts it. */
  temporaryPath: string;
  /** The sender's name for the file; for sentences only, nothing is concluded from it. */
  fileName: string;
  sizeBytes: number;
}
