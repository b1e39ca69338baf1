/**
 * Sends one picture and tells how much has gone. `fetch` cannot say that, hence XMLHttpRequest.
 *
 * In the flow: queue -> [send] -> app/api/boards/…/pictures. IO: HTTP to the same origin.
 */

import { Refused, refusedFrom } from '#app/_api/client.ts';
import type { PictureFields } from '#server/core/contract/requests.ts';
import type { UploadedPicture } from '#server/core/contract/responses.ts';
import { words } from '#words/shell.ts';

export interface Sending {
  /** Resolves once the server has taken the picture in. Rejects with `Refused`, or an AbortError when stopped. */
  done: Promise<UploadedPicture>;
  stop(): void;
}

/** @param onProgress Hears the sent share, 0..1; 1 = all sent, the server is at work on it. */
export function sendPicture(
  boardId: string,
  file: File,
  fields: PictureFields,
  onProgress: (share: number) => void,
): Sending {
  const request = new XMLHttpRequest();
  const done = new Promise<UploadedPicture>((resolve, reject) => {
    request.upload.onprogress = (event) => onProgress(event.total ? event.loaded / event.total : 0);
    request.upload.onload = () => onProgress(1);
    request.onload = () => {
      if (request.status < 200 || request.status > 299)
        reject(refusedFrom(request.responseText, request.status));
      // The handler answers with this very type; the page and the server are one build.
      else resolve(JSON.parse(request.responseText) as UploadedPicture);
    };
    request.onerror = () => reject(new Refused('no-answer', words.noAnswer));
    request.onabort = () => reject(new DOMException('Stopped by the person.', 'AbortError'));
  });
  request.open('POST', `/api/boards/${encodeURIComponent(boardId)}/pictures`);
  request.send(formOf(file, fields));
  return { done, stop: () => request.abort() };
}

/** Fields first, so that the server can refuse before it has read the file. */
function formOf(file: File, fields: PictureFields): FormData {
  const form = new FormData();
  for (const [name, text] of Object.entries(fields)) if (text !== undefined) form.append(name, text);
  form.append('file', file, file.name);
  return form;
}
