/**
 * What can go wrong in a way that a person can do something about.
 *
 * A `Problem` carries a code for machines and whole sentences for people: what happened, the number behind
 * it, what to do. Bugs are plain `Error`s. Factories for each family live beside the code that throws them.
 * Pure: no IO.
 */

/** Every code a person may meet. `server/http/respond.ts` maps each to a status; a missing one does not compile. */
export type ProblemCode =
  | 'bad-request'
  | 'body-too-large'
  | 'not-entered'
  | 'link-not-valid'
  | 'sign-in-failed'
  | 'email-taken'
  | 'not-allowed'
  | 'not-yet'
  | 'states-apart'
  | 'board-not-found'
  | 'group-not-found'
  | 'picture-not-found'
  | 'person-not-found'
  | 'invite-not-found'
  | 'report-not-found'
  | 'remark-not-found'
  | 'card-not-found'
  | 'ask-not-found'
  | 'ask-settled'
  | 'homework-not-found'
  | 'homework-settled'
  | 'phrase-not-found'
  | 'phrases-full'
  | 'too-many-requests'
  | 'file-empty'
  | 'file-too-large'
  | 'archive-refused'
  | 'account-held'
  | 'picture-not-a-picture'
  | 'picture-kind-refused'
  | 'picture-animated'
  | 'picture-too-many-pixels'
  | 'picture-too-small'
  | 'picture-unreadable'
  | 'picture-too-slow'
  | 'rights-missing'
  | 'disk-full'
  | 'setup-invalid'
  | 'outline-invalid'
  | 'corners-invalid'
  | 'card-invalid'
  | 'planes-missing'
  | 'environment-invalid'
  | 'data-folder-busy'
  | 'database-newer'
  | 'database-unreachable'
  | 'port-in-use'
  | 'stopping'
  | 'live-not-allowed'
  | 'live-malformed'
  | 'live-too-large';

/** An expected trouble, in words for the person who meets it. */
export class Problem extends Error {
  override readonly name = 'Problem';
  readonly code: ProblemCode;

  /** @param message Whole sentences: what happened, the number behind it, what to do next. */
  constructor(code: ProblemCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.code = code;
  }
}

/**
 * Whether a thrown thing is a `Problem`.
 *
 * Next bundles its own copy of this module, so `instanceof` fails across the two; the name does not.
 */
export function isProblem(thrown: unknown): thrown is Problem {
  return thrown instanceof Error && thrown.name === 'Problem' && 'code' in thrown;
}
