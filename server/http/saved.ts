/** Something that a browser saves as a file instead of showing it. In the flow: handlers -> [saved] -> browser. */
import { Readable } from 'node:stream';

/** @param name As people see it; what file systems do not take is replaced. */
export function saved(body: Readable | string, mediaType: string, name: string): Response {
  const plain = name.replace(/[\\/:*?"<>|\p{C}]/gu, ' ').trim();
  const ascii = plain.replace(/[^\x20-\x7e]/g, '_');
  return new Response(typeof body === 'string' ? body : (Readable.toWeb(body) as ReadableStream), {
    headers: {
      'content-type': mediaType,
      // RFC 6266 and RFC 8187.
      'content-disposition': `attachment; filename="${ascii}"; filename*=UTF-8''${encoded(plain)}`,
      'cache-control': 'private, no-store',
      'x-content-type-options': 'nosniff',
    },
  });
}

function encoded(name: string): string {
  return encodeURIComponent(name).replace(
    /['()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );
}
