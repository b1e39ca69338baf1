/**
 * What a handler returned or threw becomes a response; the only place with status codes.
 *
 * In the flow: app/api -> [respond] -> browser. IO: logs what is a bug.
 */
import { randomBytes } from 'node:crypto';
import { ZodError, z } from 'zod';
import { originAllowed } from '../access/origin.ts';
import type { ErrorBody } from '../core/contract/responses.ts';
import { isProblem, Problem, type ProblemCode } from '../core/problem.ts';
import { LANGUAGE } from '../core/say/language.ts';
import { say } from '../core/say/say.ts';
import { logError } from '../log.ts';
import { storeProblem } from '../store/trouble.ts';

/** Where a shape has no sentence of ours, the parser's own is told; it speaks English unless it is told otherwise. */
if (LANGUAGE === 'de') z.config(z.locales.de());

/** A missing code is a compile error, so no problem can ship without a status. */
const STATUS: Record<ProblemCode, number> = {
  'bad-request': 400,
  'body-too-large': 413,
  'not-entered': 401,
  'link-not-valid': 403,
  'sign-in-failed': 403,
  'email-taken': 409,
  'not-allowed': 403,
  'not-yet': 403,
  'states-apart': 409,
  'board-not-found': 404,
  'group-not-found': 404,
  'picture-not-found': 404,
  'person-not-found': 404,
  'invite-not-found': 404,
  'report-not-found': 404,
  'remark-not-found': 404,
  'card-not-found': 404,
  'ask-not-found': 404,
  'ask-settled': 409,
  'homework-not-found': 404,
  'homework-settled': 409,
  'phrase-not-found': 404,
  'phrases-full': 409,
  'too-many-requests': 429,
  'file-empty': 422,
  'file-too-large': 413,
  'archive-refused': 422,
  'account-held': 409,
  'picture-not-a-picture': 415,
  'picture-kind-refused': 415,
  'picture-animated': 415,
  'picture-too-many-pixels': 413,
  'picture-too-small': 422,
  'picture-unreadable': 422,
  'picture-too-slow': 422,
  'rights-missing': 422,
  'disk-full': 507,
  'setup-invalid': 422,
  'outline-invalid': 422,
  'corners-invalid': 422,
  'card-invalid': 422,
  'planes-missing': 422,
  'environment-invalid': 500,
  'data-folder-busy': 500,
  'database-newer': 500,
  'database-unreachable': 503,
  'port-in-use': 500,
  stopping: 503,
  'live-not-allowed': 403,
  'live-malformed': 400,
  'live-too-large': 413,
};

const SAFE_METHODS = new Set(['GET', 'HEAD', 'OPTIONS']);
/** Nothing that a session decides may be kept by a cache between us and the browser. */
const JSON_HEADERS = { 'cache-control': 'private, no-store' };

/** What Next hands to a handler: the parts of the address in brackets. */
export interface HandlerContext<Params> {
  params: Promise<Params>;
}

type Handler<Params> = (request: Request, context: HandlerContext<Params>) => Promise<unknown>;

/**
 * Wraps a handler. A `Response` passes through, undefined is 204, anything else becomes JSON; a `Problem`
 * becomes its status and sentence; anything else thrown is logged once under a short id and becomes 500.
 */
export function handle<Params = Record<string, never>>(answer: Handler<Params>) {
  return async (request: Request, context: HandlerContext<Params>): Promise<Response> => {
    try {
      refuseOtherOrigins(request);
      const answered = await answer(request, context);
      if (answered instanceof Response) return answered;
      if (answered === undefined) return new Response(null, { status: 204, headers: JSON_HEADERS });
      return Response.json(answered, { headers: JSON_HEADERS });
    } catch (thrown) {
      return refusal(thrown, request);
    }
  };
}

/** The status and the error body for whatever was thrown. */
export function refusal(thrown: unknown, request?: Request): Response {
  const problem = asProblem(thrown);
  if (problem) return errorResponse(STATUS[problem.code], problem.code, problem.message);
  const id = randomBytes(4).toString('hex');
  const path = request ? new URL(request.url).pathname : undefined;
  logError('unexpected', thrown, { id, method: request?.method, path });
  const message = say`Something went wrong on the server. It was written down there as ${id}; try again in a moment.`;
  return errorResponse(500, 'unexpected', message);
}

/** @throws Problem 'bad-request' when the body is not JSON of that shape, naming the field. */
export async function readJson<Shape>(
  request: Request,
  shape: { parse(input: unknown): Shape },
): Promise<Shape> {
  const text = await readText(request, MOST_JSON_BYTES);
  let body: unknown;
  try {
    body = JSON.parse(text);
  } catch (cause) {
    throw new Problem('bad-request', say`The body is not JSON. Send an object as application/json.`, {
      cause,
    });
  }
  return shape.parse(body);
}

/** Longest JSON body that any call takes, in bytes. */
const MOST_JSON_BYTES = 64 * 1024;

/** The body as text. @throws Problem 'body-too-large'. */
export async function readText(request: Request, mostBytes: number): Promise<string> {
  const reader = request.body?.getReader();
  const decoder = new TextDecoder();
  let text = '';
  let sizeBytes = 0;
  for (let part = await reader?.read(); part?.value; part = await reader?.read()) {
    sizeBytes += part.value.byteLength;
    if (sizeBytes > mostBytes) {
      throw new Problem('body-too-large', say`The body is longer than ${mostBytes} bytes. Send less.`);
    }
    text += decoder.decode(part.value, { stream: true });
  }
  return text + decoder.decode();
}

function refuseOtherOrigins(request: Request): void {
  if (SAFE_METHODS.has(request.method)) return;
  const headers = { origin: request.headers.get('origin'), host: request.headers.get('host') };
  if (originAllowed(headers)) return;
  throw new Problem(
    'not-allowed',
    say`This request came from ${String(headers.origin)}, which is not this server's own page. Open Veilstep at its own address, or set VEILSTEP_ORIGIN to the address people use.`,
  );
}

function asProblem(thrown: unknown): Problem | null {
  if (thrown instanceof ZodError) return shapeProblem(thrown);
  const found = storeProblem(thrown);
  return isProblem(found) ? found : null;
}

function shapeProblem(error: ZodError): Problem {
  const [issue] = error.issues;
  const field = issue?.path.join('.');
  const said = (issue?.message ?? say`has the wrong shape`).replace(/\.$/, '');
  const sentence = field ? say`The field ${field} is wrong: ${said}.` : say`The request is wrong: ${said}.`;
  return new Problem('bad-request', say`${sentence} Correct it and send it again.`, { cause: error });
}

function errorResponse(status: number, code: string, message: string): Response {
  const body: ErrorBody = { error: { code, message } };
  return Response.json(body, { status, headers: JSON_HEADERS });
}
