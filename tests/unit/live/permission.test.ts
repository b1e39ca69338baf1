import { describe, expect, test } from 'vitest';
import type { BoardRole } from '#server/core/contract/roles.ts';
import type { RoomKind } from '#server/core/live/document.ts';
import { ROOT_KEYS } from '#server/core/live/layout.ts';
import { mayChangeMark, mayNod, mayWrite, mayWriteRoom, type Writer } from '#server/core/live/permission.ts';

const ROLES: BoardRole[] = ['host', 'owner', 'teacher', 'painter', 'peer', 'viewer', 'guardian'];
const LOOKS_ON: BoardRole[] = ['viewer', 'guardian'];
/** Everybody, once as the painter of the picture and once not. */
const WRITERS = ROLES.flatMap((role) =>
  [true, false].map((paints): Writer => ({ personId: 'me', role, paints })),
);

/** Written out by hand from the room table of the design; "painter" = whoever painted that picture. */
const MAY: Record<string, (BoardRole | 'its painter')[]> = {
  'setup/planes': ['host', 'owner', 'teacher'],
  'setup/outlines': ['host', 'owner', 'teacher'],
  'setup/air': ['host', 'owner', 'teacher'],
  'setup/conditions': ['host', 'owner', 'teacher'],
  'setup/unreliable': ['host', 'owner', 'teacher'],
  'setup/plan': ['host', 'owner', 'teacher'],
  'setup/answers': ['host', 'owner', 'teacher'],
  'setup/hidden': ['host', 'owner', 'teacher'],
  'setup/wall': ['host', 'owner', 'teacher'],
  'painting/outlines': ['host', 'teacher', 'its painter'],
  'painting/photo': ['host', 'teacher', 'its painter'],
  'painting/intention': ['host', 'teacher', 'its painter'],
  'painting/focus': ['host', 'teacher', 'its painter'],
  'painting/meant': ['host', 'teacher', 'its painter'],
  'painting/answers': ['host', 'teacher', 'its painter'],
  'painting/hidden': ['host', 'teacher', 'its painter'],
  'painting/frame': ['host', 'teacher', 'its painter'],
  'painting/allows': ['its painter'],
  'painting/cards': ['host', 'teacher'],
  'painting/said': ['its painter'],
  'painting/result': [],
  'marks/marks': ['host', 'owner', 'teacher', 'painter', 'peer'],
  'marks/nods': ['host', 'owner', 'teacher', 'painter', 'peer'],
  'class/class': ['host', 'teacher'],
  'class/kept': [],
  'silent/notes': ['host', 'owner', 'teacher', 'painter', 'peer'],
};

const CELLS = Object.entries(ROOT_KEYS).flatMap(([kind, keys]) => {
  return keys.flatMap((key) => WRITERS.map((writer) => ({ kind: kind as RoomKind, key, ...writer, writer })));
});

describe('who may write what', () => {
  test('the table names every root key there is', () => {
    const keys = Object.entries(ROOT_KEYS).flatMap(([kind, roots]) => roots.map((root) => `${kind}/${root}`));
    expect(Object.keys(MAY).sort()).toEqual(keys.sort());
  });

  test.each(CELLS)('$kind/$key by $role (paints it: $paints)', ({ kind, key, role, paints, writer }) => {
    const allowed = MAY[`${kind}/${key}`] ?? [];
    const asPainter = paints && !LOOKS_ON.includes(role) && allowed.includes('its painter');
    expect(mayWrite(writer, kind, key)).toBe(allowed.includes(role) || asPainter);
  });

  test.each(WRITERS)(
    '$role (paints it: $paints) writes to a room exactly when some root key is theirs',
    (writer) => {
      for (const [kind, keys] of Object.entries(ROOT_KEYS) as [RoomKind, readonly string[]][]) {
        expect(mayWriteRoom(writer, kind)).toBe(keys.some((key) => mayWrite(writer, kind, key)));
      }
    },
  );

  test.each(WRITERS)(
    '$role changes their own marks unless they only look on, and others’ only as teacher or host',
    (writer) => {
      expect(mayChangeMark(writer, 'me')).toBe(!LOOKS_ON.includes(writer.role));
      expect(mayChangeMark(writer, 'somebody else')).toBe(
        writer.role === 'teacher' || writer.role === 'host',
      );
    },
  );

  test.each(WRITERS)(
    '$role nods in their own name unless they only look on, and in nobody else’s',
    (writer) => {
      expect(mayNod(writer, 'me')).toBe(!LOOKS_ON.includes(writer.role));
      expect(mayNod(writer, 'somebody else')).toBe(false);
    },
  );
});
