/**
 * E-mail and password for people who began with a name alone, signing in elsewhere, and links to come back by.
 *
 * The person stays the same throughout: same id, same marks and pictures. In the flow: handlers -> [account] ->
 * store. IO: the database.
 */
import type { AccountRequest, ReturnRequest, SignInRequest } from '../core/contract/requests.ts';
import type { AccountView, ReturnLinkView } from '../core/contract/responses.ts';
import { Problem } from '../core/problem.ts';
import { say } from '../core/say/say.ts';
import {
  type AccountRow,
  accountByEmail,
  addReturnLink,
  endOtherSessions,
  findReturnLink,
  putAccount,
  putPassword,
  readAccount,
  spendReturnLink,
} from '../store/accounts.ts';
import { hashPassword, passwordFits } from './password.ts';
import { startSession, type Visitor } from './session.ts';
import { hashToken, newToken } from './tokens.ts';

const HOUR_MS = 60 * 60 * 1000;
const RETURN_LINK_HOURS = 72;

/** Somebody who is in again. */
export interface Returned {
  person: { id: string; name: string };
  /** Set-Cookie header of the new session. */
  setCookie: string;
  /** Sessions that ended with it. */
  ended: string[];
}

/** What somebody can see of themselves. */
export async function accountOf({ personId, name, isHost }: Visitor): Promise<AccountView> {
  return { id: personId, name, isHost, email: (await readAccount(personId))?.email ?? null };
}

/**
 * Gives oneself e-mail and password, or others in place of them.
 *
 * @param sessionId The session one asks with; the person's others end, for a password may have leaked.
 * @returns What the ended sessions were known by.
 * @throws Problem 'sign-in-failed' when the present password is wrong or missing, 'email-taken'.
 */
export async function setAccount(
  personId: string,
  { email, password, current }: AccountRequest,
  sessionId: string | null,
): Promise<string[]> {
  const account = await readAccount(personId);
  const has = account?.passwordHash ?? null;
  if (has !== null && !(await passwordFits(current ?? '', has))) {
    throw new Problem(
      'sign-in-failed',
      say`Your present password is another one, so nothing was changed. Write it once more, or ask the host for a link to set a new one.`,
    );
  }
  if (!(await putAccount(personId, email, await hashPassword(password)))) {
    throw new Problem(
      'email-taken',
      say`This e-mail address belongs to somebody here already. Sign in with it, or use another.`,
    );
  }
  return endOtherSessions(personId, sessionId);
}

/** @throws Problem 'sign-in-failed' alike for an unknown address and a wrong password. */
export async function signIn({ email, password }: SignInRequest, secure: boolean): Promise<Returned> {
  const account = await accountByEmail(email);
  const fits = await passwordFits(password, account?.passwordHash ?? null);
  if (account && fits) return returned(account, secure, []);
  throw new Problem(
    'sign-in-failed',
    say`E-mail address and password do not belong together. Look at both again; if the password is lost, whoever runs this server can make you a link to set a new one.`,
  );
}

/** @throws Problem 'person-not-found'. */
export async function makeReturnLink(
  personId: string,
  origin: string,
  now = new Date(),
): Promise<ReturnLinkView> {
  if (!(await readAccount(personId))) {
    throw new Problem('person-not-found', say`There is nobody here with that id. Load the page again.`);
  }
  const token = newToken();
  const expiresAt = new Date(now.getTime() + RETURN_LINK_HOURS * HOUR_MS);
  await addReturnLink(hashToken(token), personId, expiresAt);
  return { url: `${origin}/return/${token}`, expiresAt: expiresAt.toISOString() };
}

/** Whom a link lets back in, before it is used; null when it does not work. */
export async function ownerOfReturnLink(
  key: string,
  now = new Date(),
): Promise<{ id: string; name: string; email: string | null } | null> {
  const found = await findReturnLink(hashToken(key), now);
  return found && { id: found.id, name: found.name, email: found.email };
}

/**
 * Comes back by a link, which is used up.
 *
 * With a new password every session there was ends. @throws Problem 'link-not-valid', and 'bad-request' when a
 * password is given by somebody without an e-mail address to sign in with; then the link still works.
 */
export async function comeBack(
  { key, password }: ReturnRequest,
  secure: boolean,
  now = new Date(),
): Promise<Returned> {
  const account = await findReturnLink(hashToken(key), now);
  if (account && password !== undefined && account.email === null) {
    throw new Problem(
      'bad-request',
      say`A password needs an e-mail address to sign in with, and you gave none so far. Come back without one first.`,
    );
  }
  if (!account || !(await spendReturnLink(hashToken(key), now))) {
    throw new Problem(
      'link-not-valid',
      say`This link does not work: it was used already or has run out. Ask the host for a new one.`,
    );
  }
  if (password === undefined) return returned(account, secure, []);
  await putPassword(account.id, await hashPassword(password));
  return returned(account, secure, await endOtherSessions(account.id, null));
}

async function returned({ id, name }: AccountRow, secure: boolean, ended: string[]): Promise<Returned> {
  return { person: { id, name }, setCookie: await startSession(id, secure), ended };
}
