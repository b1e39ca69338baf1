/** The documents that a person writes on, as all writers are given them. In the flow: board store -> [documents] -> writers. */
import type * as Y from 'yjs';
import type { Writer } from '#server/core/live/permission.ts';

/** Where the documents are. */
export interface Documents {
  setup(): Y.Doc | null;
  marks(): Y.Doc | null;
  painting(pictureId: string): Y.Doc | null;
  isReference(pictureId: string): boolean;
  writer: Writer;
  /** Makes one step of whatever is written meanwhile. */
  together<T>(act: () => T): T;
}
