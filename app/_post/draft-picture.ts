/**
 * Pictures chosen but not yet sent: what each is, and what must still be said about it.
 *
 * In the flow: files -> [drafts] -> queue. Pure, but for reading a file's name, type and size.
 */

import { fileSize } from '#app/_words/figures.ts';
import type { Rights } from '#server/core/contract/picture-choices.ts';
import type { PictureFields } from '#server/core/contract/requests.ts';
import { mediumFrom } from '#words/noted.ts';
import { words } from '#words/shell.ts';
import type { NotedDraft } from './noted-fields.tsx';

/** As the server's limit: 60 MB. Asked here too, so that nobody waits for a refusal. */
export const MOST_BYTES = 60_000_000;

export interface DraftPicture extends NotedDraft {
  key: string;
  file: File;
  kind: PictureFields['kind'];
  rights: Rights | null;
  credit: string;
  /** Id of the earlier state, or null. */
  follows: string | null;
}

export interface DraftRules {
  /** The board has a reference already, or this person may not post one. */
  paintingsOnly: boolean;
  /** Number of the first key, so that keys stay unlike those given before. */
  firstKey: number;
}

/** A board's first picture is most likely its reference; later ones are paintings. */
export function draftsFrom(files: readonly File[], { paintingsOnly, firstKey }: DraftRules): DraftPicture[] {
  return files.map((file, index) => ({
    key: `draft-${firstKey + index}`,
    file,
    kind: !paintingsOnly && index === 0 ? 'reference' : 'painting',
    rights: null,
    credit: '',
    follows: null,
    medium: '',
    drying: null,
    light: null,
  }));
}

/** The sentence saying what is missing or wrong, or null when it can be sent. */
export function troubleWith(draft: DraftPicture): string | null {
  const { file } = draft;
  if (file.size === 0) return words.post.emptyFile(file.name);
  if (file.size > MOST_BYTES) return words.post.tooLarge(file.name, fileSize(file.size));
  if (draft.kind === 'painting') return null;
  if (draft.rights === null) return words.post.rightsNeeded;
  if (draft.rights === 'free' && draft.credit.trim() === '') return words.post.creditNeeded;
  return null;
}

/** The fields that go with the file; empty ones are left out. */
export function fieldsOf(draft: DraftPicture): PictureFields {
  if (draft.kind === 'painting') {
    const { follows, drying, light } = draft;
    const medium = mediumFrom(draft.medium);
    return {
      kind: 'painting',
      ...(follows ? { follows } : {}),
      ...(medium ? { medium } : {}),
      ...(drying ? { drying } : {}),
      ...(light ? { light } : {}),
    };
  }
  const credit = draft.credit.trim();
  return {
    kind: 'reference',
    ...(draft.rights ? { rights: draft.rights } : {}),
    ...(credit ? { credit } : {}),
  };
}
