/** The pictures on the easel. Types only. */
import type { PictureView } from '#server/core/contract/responses.ts';

export interface Shown {
  reference: PictureView | null;
  painting: PictureView | null;
}
