/**
 * How a sheet is asked for and sent: its paper and kind from the address, its bytes as a file with a name.
 *
 * In the flow: handlers -> [sheet-answer] -> services. IO: the worker behind the services.
 */

import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import { PAPERS, type Paper, SHEET_KINDS, type SheetContent, type SheetKind } from '../core/sheet/content.ts';
import { services } from './services.ts';

/** What was asked for. */
export interface SheetWish {
  as: SheetKind;
  paper: Paper;
}

/** `?as=pdf|png&paper=a4|letter`; left out = PDF, A4. @throws Problem 'bad-request' with what there is. */
export function sheetWish(request: Request): SheetWish {
  const { searchParams } = new URL(request.url);
  return {
    as: oneOf(SHEET_KINDS, 'as', searchParams.get('as') ?? 'pdf'),
    paper: oneOf(PAPERS, 'paper', searchParams.get('paper') ?? 'a4'),
  };
}

function oneOf<Choice extends string>(choices: readonly Choice[], name: string, asked: string): Choice {
  const found = choices.find((choice) => choice === asked);
  if (found) return found;
  throw new Problem(
    'bad-request',
    say`There is no ${name}=${asked.slice(0, 40)} of a sheet. Ask for ${choices.join(say` or `)}.`,
  );
}

const MEDIA_TYPE: Record<SheetKind, string> = { pdf: 'application/pdf', png: 'image/png' };

/** The sheet drawn now. @param name Of the file, without its ending. */
export async function sheetAnswer(content: SheetContent, wish: SheetWish, name: string): Promise<Response> {
  const bytes = await services().drawSheet({ content, ...wish });
  return new Response(new Uint8Array(bytes), {
    headers: {
      'cache-control': 'private, no-store',
      'content-type': MEDIA_TYPE[wish.as],
      'content-length': String(bytes.byteLength),
      'content-disposition': `attachment; filename="${fileName(name)}.${wish.as}"`,
      'x-content-type-options': 'nosniff',
    },
  });
}

/** Letters, digits and hyphens alone, so that it stands in a header and on every disk. */
function fileName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return plain.slice(0, 60).toLowerCase() || 'sheet';
}
