/** E-mail and password for a guest, signing in elsewhere, and coming back without a cookie. */
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { GET as seeAccount, PUT as setAccount } from '#app/api/account/route.ts';
import { GET as seeBoard } from '#app/api/boards/[boardId]/route.ts';
import { POST as enter } from '#app/api/enter/route.ts';
import { POST as leave } from '#app/api/leave/route.ts';
import { GET as me } from '#app/api/me/route.ts';
import { POST as makeReturnLink } from '#app/api/people/[personId]/return-link/route.ts';
import { POST as comeBack } from '#app/api/return/route.ts';
import { POST as signIn } from '#app/api/sign-in/route.ts';
import { hostsBehind } from '#server/access/enter.ts';
import { makeHostLink } from '#server/access/host-link.ts';
import { hashPassword, passwordFits } from '#server/access/password.ts';
import type { BoardView, ReturnLinkView } from '#server/core/contract/responses.ts';
import { putMark, readMarks } from '#server/core/live/marks.ts';
import { CLOSE } from '#server/core/live/wire.ts';
import { database } from '#server/store/database.ts';
import { putMember } from '#server/store/members.ts';
import { aPainting, eventually, join, type Somebody, somebody } from '#tests/live/a-live-server.ts';
import { aBoard, call, closeStage, openStage, type Stage } from './cast.ts';
import { aMark } from './room-probes.ts';

let stage: Stage;
let boardId: string;
beforeAll(async () => {
  stage = await openStage();
  boardId = await aBoard(stage);
});
afterAll(() => closeStage(stage));
afterEach(() => {
  vi.useRealTimers();
});

/** A guest of the board with a name and nothing else. */
async function aGuest(name: string): Promise<Somebody> {
  const guest = await somebody(name);
  await putMember(boardId, guest.id, 'painter', null);
  return guest;
}

const PASSWORD = 'reeds at the weir';
const put = (who: Somebody, body: unknown) => call(setAccount, who, {}, { method: 'PUT', body });
const signsIn = (email: string, password: string, who: Somebody | null = null) =>
  call(signIn, who, {}, { method: 'POST', body: { email, password } });
const codeOf = async (response: Response) =>
  response.ok ? null : ((await response.json()) as { error: { code: string } }).error.code;
const messageOf = async (response: Response) =>
  ((await response.json()) as { error: { message: string } }).error.message;

async function cameIn(response: Response): Promise<Somebody> {
  expect(response.status).toBe(200);
  const { id, name } = (await response.json()) as { id: string; name: string };
  return { id, name, cookie: response.headers.get('set-cookie')?.split(';')[0] ?? '' };
}

/** The key at the end of a link to come back by. */
async function linkFor(personId: string): Promise<string> {
  const answer = await call(makeReturnLink, stage.people.host, { personId }, { method: 'POST' });
  return ((await answer.json()) as ReturnLinkView).url.split('/').at(-1) ?? '';
}

const returns = (key: string, password?: string, who: Somebody | null = null) =>
  call(comeBack, who, {}, { method: 'POST', body: { key, ...(password === undefined ? {} : { password }) } });

describe('a guest who gives e-mail and password', () => {
  test('stays who they are, and is the same person on another device, with marks and pictures', async () => {
    const guest = await aGuest('Agda');
    const pictureId = await aPainting(boardId, guest.id);
    const here = join(stage.server.port, guest, boardId, 'marks');
    await here.synced;
    putMark(here.doc, aMark('agdas', guest.id));
    expect(await codeOf(await put(guest, { email: ' Agda@Example.org ', password: PASSWORD }))).toBeNull();
    // The session it was asked with goes on, and so does its socket.
    expect(here.provider.wsconnected).toBe(true);
    const elsewhere = await cameIn(await signsIn('agda@example.ORG', PASSWORD));
    expect(elsewhere.id).toBe(guest.id);
    expect(elsewhere.cookie).not.toBe(guest.cookie);
    const board = (await (await call(seeBoard, elsewhere, { boardId })).json()) as BoardView;
    expect(board.role).toBe('painter');
    expect(board.pictures.find(({ id }) => id === pictureId)?.painter.id).toBe(guest.id);
    const there = join(stage.server.port, elsewhere, boardId, 'marks');
    await eventually('the mark is there', () => readMarks(there.doc).some(({ id }) => id === 'agdas'));
    there.doc.getMap('marks').delete('agdas');
    await eventually('it is theirs to remove', () => readMarks(here.doc).length === 0);
    here.leave();
    there.leave();
  });

  test('signs in from a browser that was somebody else, whose session ends', async () => {
    const guest = await aGuest('Birger');
    await put(guest, { email: 'birger@example.org', password: PASSWORD });
    const passing = await aGuest('Passing');
    const client = join(stage.server.port, passing, boardId, 'marks');
    await client.synced;
    const again = await cameIn(await signsIn('birger@example.org', PASSWORD, passing));
    expect(again.id).toBe(guest.id);
    expect((await client.closed).code).toBe(CLOSE.notEntered);
    expect(await codeOf(await call(me, passing, {}))).toBe('not-entered');
    client.leave();
  });

  test('changes the password only with the present one, and then every other device is out', async () => {
    const guest = await aGuest('Cajsa');
    await put(guest, { email: 'cajsa@example.org', password: PASSWORD });
    const elsewhere = await cameIn(await signsIn('cajsa@example.org', PASSWORD));
    const client = join(stage.server.port, elsewhere, boardId, 'marks');
    await client.synced;
    const next = { email: 'cajsa@example.org', password: 'another long one' };
    expect(await codeOf(await put(guest, next))).toBe('sign-in-failed');
    expect(await codeOf(await put(guest, { ...next, current: 'not the right one' }))).toBe('sign-in-failed');
    expect(client.provider.wsconnected).toBe(true);
    expect(await codeOf(await put(guest, { ...next, current: PASSWORD }))).toBeNull();
    expect((await client.closed).code).toBe(CLOSE.notEntered);
    expect(await codeOf(await call(me, elsewhere, {}))).toBe('not-entered');
    expect(await codeOf(await call(me, guest, {}))).toBeNull();
    expect(await codeOf(await signsIn('cajsa@example.org', PASSWORD))).toBe('sign-in-failed');
    client.leave();
  });

  test('cannot take an address that somebody else has', async () => {
    const [one, two] = [await aGuest('Disa'), await aGuest('Edvin')];
    await put(one, { email: 'disa@example.org', password: PASSWORD });
    expect(await codeOf(await put(two, { email: 'DISA@example.org', password: PASSWORD }))).toBe(
      'email-taken',
    );
    expect(await (await call(seeAccount, two, {})).json()).toMatchObject({ email: null });
  });

  test.each([
    [{ email: 'no address', password: PASSWORD }, 'email'],
    [{ email: 'f@example.org', password: 'too short' }, '10 characters'],
    [{ email: 'f@example.org', password: 'x'.repeat(201) }, '200 characters'],
  ])('hears what is wrong with %j', async (body, said) => {
    const answer = await put(await aGuest('Folke'), body);
    expect(answer.status).toBe(400);
    expect(await messageOf(answer)).toContain(said);
  });
});

describe('signing in', () => {
  test('tells nobody whether an address is known', async () => {
    const guest = await aGuest('Greta');
    await put(guest, { email: 'greta@example.org', password: PASSWORD });
    const wrong = await signsIn('greta@example.org', 'not the right one');
    const unknown = await signsIn('nobody@example.org', 'not the right one');
    expect(wrong.status).toBe(403);
    expect(await wrong.json()).toEqual(await unknown.json());
  });

  test('is refused from the eleventh try in a quarter of an hour, with how long to wait', async () => {
    const guest = await aGuest('Harald');
    await put(guest, { email: 'harald@example.org', password: PASSWORD });
    for (let count = 0; count < 10; count++) {
      expect(await codeOf(await signsIn('harald@example.org', `guess number ${count}`))).toBe(
        'sign-in-failed',
      );
    }
    const answer = await signsIn('harald@example.org', PASSWORD);
    expect(answer.status).toBe(429);
    expect(await messageOf(answer)).toMatch(/at most 10 in 15 minutes\. Wait 1[45] minutes/);
    // Whoever has a session goes on working.
    expect(await codeOf(await call(me, guest, {}))).toBeNull();
    vi.useFakeTimers({ toFake: ['Date'], now: Date.now() + 15 * 60_000 + 1000 });
    expect(await codeOf(await signsIn('harald@example.org', PASSWORD))).toBeNull();
  });
});

describe('a password', () => {
  test('is kept as scrypt with a salt of its own', async () => {
    const [one, two] = await Promise.all([hashPassword(PASSWORD), hashPassword(PASSWORD)]);
    expect(one).toMatch(/^scrypt\$32768\$8\$3\$[\w-]{22}\$[\w-]{43}$/);
    expect(one).not.toBe(two);
    expect(await passwordFits(PASSWORD, one)).toBe(true);
    expect(await passwordFits(`${PASSWORD} `, one)).toBe(false);
    expect(await passwordFits(PASSWORD, null)).toBe(false);
  });

  test('fits the published scrypt vector', async () => {
    // RFC 7914 §12: scrypt("password", "NaCl", N = 1024, r = 8, p = 16), its first 32 of 64 bytes.
    const hash = 'fdbabe1c9d3472007856e7190d01e9fe7c6ad7cbc8237830e77376634b373162';
    const stored = ['scrypt', 1024, 8, 16, base64url('NaCl'), Buffer.from(hash, 'hex').toString('base64url')];
    expect(await passwordFits('password', stored.join('$'))).toBe(true);
    expect(await passwordFits('passwore', stored.join('$'))).toBe(false);
  });
  const base64url = (text: string) => Buffer.from(text).toString('base64url');
});

describe('a link to come back by', () => {
  test('lets its person back in under their id, once', async () => {
    const guest = await aGuest('Inga');
    const key = await linkFor(guest.id);
    const again = await cameIn(await returns(key));
    expect(again.id).toBe(guest.id);
    expect((await call(seeBoard, again, { boardId })).status).toBe(200);
    expect(await codeOf(await returns(key))).toBe('link-not-valid');
  });

  test('of two who open it at once lets one in', async () => {
    const key = await linkFor((await aGuest('Jarl')).id);
    const codes = await Promise.all((await Promise.all([returns(key), returns(key)])).map(codeOf));
    expect(codes.sort()).toEqual(['link-not-valid', null]);
  });

  test('runs out', async () => {
    const key = await linkFor((await aGuest('Kerstin')).id);
    await database().returnLink.updateMany({ data: { expiresAt: new Date(Date.now() - 1) } });
    expect(await codeOf(await returns(key))).toBe('link-not-valid');
  });

  test('sets a new password, and every session there was ends', async () => {
    const guest = await aGuest('Lage');
    await put(guest, { email: 'lage@example.org', password: PASSWORD });
    const client = join(stage.server.port, guest, boardId, 'marks');
    await client.synced;
    const again = await cameIn(await returns(await linkFor(guest.id), 'quite another one'));
    expect(again.id).toBe(guest.id);
    expect((await client.closed).code).toBe(CLOSE.notEntered);
    expect(await codeOf(await call(me, guest, {}))).toBe('not-entered');
    expect(await codeOf(await signsIn('lage@example.org', PASSWORD))).toBe('sign-in-failed');
    expect(await codeOf(await signsIn('lage@example.org', 'quite another one'))).toBeNull();
    client.leave();
  });

  test('asks for no password of somebody without an e-mail address, and still works then', async () => {
    const key = await linkFor((await aGuest('Majken')).id);
    expect(await codeOf(await returns(key, 'quite another one'))).toBe('bad-request');
    expect(await codeOf(await returns(key))).toBeNull();
  });
});

describe('a host who lost cookie and link', () => {
  test('goes on as themselves with a new host link, and only as a host', async () => {
    const { host, peer } = stage.people;
    const newLink = async () => (await makeHostLink('http://localhost')).split('key=')[1] ?? '';
    const enters = (key: string, as: string) =>
      call(enter, null, {}, { method: 'POST', body: { key, name: 'Somebody', as } });
    const key = await newLink();
    expect((await hostsBehind(key, null)).map(({ id }) => id)).toContain(host.id);
    expect(await hostsBehind('no such key', null)).toEqual([]);
    const again = await cameIn(await enters(key, host.id));
    expect(again).toMatchObject({ id: host.id, name: 'host' });
    // A host's key makes nobody else's cookie.
    const other = await cameIn(await enters(await newLink(), peer.id));
    expect(other.id).not.toBe(peer.id);
  });
});

test('leaving closes the sockets of this session within 5 s', async () => {
  const guest = await aGuest('Nils');
  const client = join(stage.server.port, guest, boardId, 'marks');
  await client.synced;
  const fromMs = performance.now();
  await call(leave, guest, {}, { method: 'POST' });
  expect((await client.closed).code).toBe(CLOSE.notEntered);
  expect(performance.now() - fromMs).toBeLessThan(5_000);
  client.leave();
});
