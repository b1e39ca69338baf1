import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readEnvironment } from '#server/env.ts';

describe('the environment', () => {
  test('unset and empty variables mean the defaults', () => {
    expect(readEnvironment({ PORT: '', VEILSTEP_ORIGIN: '' })).toEqual({
      port: 3000,
      dataFolder: resolve('data'),
      dataFolderName: 'data',
      hostKey: null,
      origin: null,
      databaseUrl: null,
    });
  });

  test('every wrong value is named at once', () => {
    const wrong = {
      PORT: 'eighty',
      VEILSTEP_HOST_KEY: 'short',
      VEILSTEP_ORIGIN: 'https://board.example.org/path',
      DATABASE_URL: 'mysql://somewhere',
    };
    for (const name of Object.keys(wrong)) {
      expect(() => readEnvironment(wrong)).toThrow(
        expect.objectContaining({ code: 'environment-invalid', message: expect.stringContaining(name) }),
      );
    }
    expect(() => readEnvironment(wrong)).toThrow('4 settings are wrong');
  });

  test.each(['-1', '65536', '3000.5', '0x10', ' 80'])('the port %j is refused', (port) => {
    expect(() => readEnvironment({ PORT: port })).toThrow('from 0 to 65535');
  });

  test('a password in DATABASE_URL never stands in the message', () => {
    expect(() => readEnvironment({ DATABASE_URL: 'mysql://user:hunter2hunter2@db/x' })).toThrow(
      expect.objectContaining({ message: expect.not.stringContaining('hunter2') }),
    );
  });

  test('a trailing slash of the origin does not matter', () => {
    expect(readEnvironment({ VEILSTEP_ORIGIN: 'https://board.example.org/' }).origin).toBe(
      'https://board.example.org',
    );
  });
});
