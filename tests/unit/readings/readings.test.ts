import { describe, expect, test } from 'vitest';
import { CONDITIONS, Condition } from '#server/core/contract/setup.ts';
import { readingsOf } from '#server/core/readings/readings.ts';
import { RULES } from '#server/core/readings/rules.ts';
import { wordCount } from '#server/core/readings/words.ts';
import { type AScene, aScene, doubtful, inputOf, of } from './a-scene.ts';
import { CASES } from './cases.ts';

function readings(change: (scene: AScene) => void) {
  const result = readingsOf(inputOf(aScene(change)));
  return result.readings.map((reading, at) => ({ ...reading, form: result.forms[at] }));
}

const speaking = (change: (scene: AScene) => void, id: string) =>
  readings(change).filter((one) => one.id === id && one.muted === null && one.form === 'finding');

describe('every reading', () => {
  test('is one of the agreed list and declares what it rests on', () => {
    expect(RULES.map(({ id }) => id)).toEqual([
      ...Array.from({ length: 13 }, (_, at) => `V${at + 1}`),
      ...Array.from({ length: 8 }, (_, at) => `C${at + 1}`),
      ...Array.from({ length: 3 }, (_, at) => `D${at + 1}`),
      ...Array.from({ length: 10 }, (_, at) => `G${at + 1}`),
    ]);
    for (const rule of RULES) {
      for (const text of [rule.inputs, rule.threshold, rule.noise, rule.why, rule.source]) {
        expect(text.length).toBeGreaterThan(3);
      }
      expect(rule.why.match(/[.](?=\s|$)/g)).toHaveLength(1);
    }
  });

  test('has a case here', () => {
    expect(CASES.map(({ id }) => id)).toEqual(RULES.map(({ id }) => id));
  });

  test('is silent when the painting is as the reference', () => {
    expect(readings(() => {})).toEqual([]);
  });
});

describe.each(CASES)('$id', ({ id, fires, muted, silent }) => {
  test('speaks when its fault is there, in at most 30 words', () => {
    const found = speaking(fires, id);
    expect(found.length).toBeGreaterThan(0);
    for (const { sentence, severity } of found) {
      expect(wordCount(sentence)).toBeLessThanOrEqual(30);
      expect(severity).toBeGreaterThan(0);
      expect(severity).toBeLessThanOrEqual(3);
    }
  });

  test('is muted, with the reason kept', () => {
    const change = (scene: AScene) => {
      fires(scene);
      muted(scene);
    };
    const found = readings(change).filter((one) => one.id === id);
    expect(found.length).toBeGreaterThan(0);
    for (const one of found) expect(one.muted).toMatch(/\.$/);
  });

  test('says nothing below its noise', () => {
    expect(readings(silent).filter((one) => one.id === id && one.form === 'finding')).toEqual([]);
  });
});

/** What these conditions excuse depends on which plane it is and which way it goes: told by tests of their own. */
const EXCUSES_ONE_WAY = ['V1', 'V3', 'C4'];

describe.each(CASES.filter(({ id }) => !EXCUSES_ONE_WAY.includes(id)))('$id', ({ id, fires }) => {
  const conditions = Object.entries(RULES.find((rule) => rule.id === id)?.mutedBy ?? {});

  test.each(conditions.length > 0 ? conditions : [['none', '']])(
    'is muted by %s, with that reason, where it names it',
    (condition, reason) => {
      const change = (scene: AScene) => {
        fires(scene);
        if (reason) scene.setup.conditions = [Condition.parse(condition)];
      };
      const found = readings(change).filter((one) => one.id === id);
      expect(found.length).toBeGreaterThan(0);
      for (const one of found) expect(one.muted).toBe(reason || null);
    },
  );
});

describe('conditions', () => {
  test('a condition that a reading does not name leaves it speaking', () => {
    for (const { id, fires } of CASES) {
      const rule = RULES.find((one) => one.id === id);
      const other = CONDITIONS.find((condition) => !rule?.mutedBy[condition]);
      if (!other) throw new Error(`${id} is muted by every condition.`);
      const change = (scene: AScene) => {
        fires(scene);
        scene.setup.conditions = [other];
      };
      expect(speaking(change, id).length, `${id} with ${other}`).toBeGreaterThan(0);
    }
  });

  test('a low sun does not excuse a distance that cools where the photo warms', () => {
    const cools = (scene: AScene) => {
      scene.setup.conditions = ['low-sun'];
      Object.assign(of(scene, 'far ridge').reference, { a: 20, b: 36 });
      Object.assign(of(scene, 'near field').reference, { a: 4, b: 4 });
      Object.assign(of(scene, 'near field').painting, { a: 14, b: 26 });
    };
    expect(speaking(cools, 'C4')).toHaveLength(1);
  });

  test('meant outranks every other reason', () => {
    const change = (scene: AScene) => {
      of(scene, 'far ridge').painting.dark = 26;
      scene.setup.conditions = ['valley-mist'];
      scene.setup.meant = ['V4'];
    };
    const [found] = readings(change).filter(({ id }) => id === 'V4');
    expect(found?.muted).toBe('The painter marked this as meant.');
  });

  test('meant on one plane mutes it there and nowhere else', () => {
    const change = (scene: AScene) => {
      of(scene, 'far ridge').painting.dark = 26;
      of(scene, 'hill').painting.dark = 12;
      scene.setup.meant = ['V4/far ridge'];
    };
    const found = readings(change).filter(({ id }) => id === 'V4');
    const mutedOf = (plane: string) => found.find(({ planes }) => planes.includes(plane))?.muted;
    expect(mutedOf('far ridge')).toBe('The painter marked this as meant.');
    expect(mutedOf('hill')).toBeNull();
  });

  test('a stray edge that the photo has too is asked about, not found', () => {
    const stray = (edge: number) => (scene: AScene) => {
      scene.facts.painting.edges = [
        { near: 'far ridge', inside: null, outside: 40 },
        { near: 'hill', inside: 18, outside: 16 },
      ];
      of(scene, 'far ridge').reference.edge = edge;
    };
    expect(speaking(stray(9), 'D2').map(({ planes }) => planes)).toEqual([['far ridge']]);
    const [asked] = readings(stray(30)).filter(({ id }) => id === 'D2');
    expect(asked?.form).toBe('question');
    expect(wordCount(asked?.sentence ?? '')).toBeLessThanOrEqual(30);
    const without = (scene: AScene) => {
      stray(9)(scene);
      scene.setup.focus = null;
    };
    expect(readings(without).filter(({ id }) => id === 'D2')).toEqual([]);
  });

  test('an unreliable plane of the reference mutes what rests on it and leaves the rest', () => {
    const change = (scene: AScene) => {
      of(scene, 'far ridge').painting.dark = 26;
      of(scene, 'hill').painting.detail = 0.6;
      scene.unreliable = ['far ridge'];
    };
    const found = readings(change).filter(({ id }) => id === 'V4');
    expect(found.length).toBeGreaterThan(0);
    for (const { muted } of found) expect(muted).toContain('far ridge');
  });
});

describe('grades', () => {
  const everything = (scene: AScene) => {
    for (const { id, fires } of CASES) if (id.startsWith('C') || id === 'V4') fires(scene);
  };

  test.each(['C', null] as const)('at grade %s no colour reading and no amount is given', (grade) => {
    const result = readingsOf(
      inputOf(
        aScene((scene) => {
          everything(scene);
          scene.grade = grade;
        }),
      ),
    );
    expect(result.readings.filter(({ id }) => id.startsWith('C'))).toEqual([]);
    expect(result.cards.flatMap(({ actions }) => actions.map(({ amount }) => amount))).not.toContainEqual(
      expect.any(String),
    );
    for (const { sentence } of result.readings) expect(sentence).not.toMatch(/\bstep/);
    expect(result.observations.map(({ id }) => id)).toContain('withheld');
  });

  test('amounts come in quarter steps at A and half steps at B', () => {
    const amountAt = (grade: 'A' | 'B') =>
      readingsOf(
        inputOf(
          aScene((scene) => {
            scene.grade = grade;
            of(scene, 'far ridge').painting.dark = 38;
            of(scene, 'far ridge').reference.dark = 61;
          }),
        ),
      )
        .cards.find(({ plane }) => plane === 'far ridge')
        ?.actions.find(({ part }) => part === 'darks')?.amount;
    expect(amountAt('A')).toBe('two steps and a quarter');
    expect(amountAt('B')).toBe('two steps and a half');
  });
});

describe('questions and checks', () => {
  test('a trait that the photo shows too becomes a question', () => {
    const change = (scene: AScene) => {
      for (const side of ['reference', 'painting'] as const) of(scene, 'far ridge')[side].light = 80;
    };
    const [found] = readings(change).filter(({ id }) => id === 'V6');
    expect(found?.form).toBe('question');
    expect(found?.sentence).toMatch(/\?$/);
  });

  test('without a reference only like planes are compared, and the word is check', () => {
    const heavy = (scene: AScene) => {
      scene.target = 'none';
      of(scene, 'far ridge').painting.dark = 8;
      of(scene, 'near field').kind = 'wood';
    };
    const found = readings(heavy);
    expect(found.map(({ id }) => id)).toContain('V4');
    for (const { sentence, form } of found) {
      expect(form).toBe('check');
      expect(sentence).toMatch(/^Check:/);
    }
    const unlike = (scene: AScene) => {
      heavy(scene);
      of(scene, 'near field').kind = 'land';
      of(scene, 'hill').kind = 'built';
    };
    expect(readings(unlike)).toEqual([]);
  });

  test('a plan as the target is called the plan', () => {
    const result = readingsOf(
      inputOf(
        aScene((scene) => {
          scene.target = 'plan';
          of(scene, 'near field').painting.mid = 70;
          scene.setup.plan = scene.planes.map(({ name, reference }) => ({
            name,
            dark: reference.dark,
            mid: reference.mid,
            light: reference.light,
            chroma: 10,
            strong: reference.strong,
            warmCool: 0,
            airDistance: reference.airDistance,
          }));
        }),
      ),
    );
    const swapped = result.readings.find(({ id }) => id === 'V1');
    expect(swapped?.sentence).toContain('In the plan');
  });
});

describe('noise', () => {
  test('wide doubt intervals silence what narrow ones let through', () => {
    const heavy = (half: number) => (scene: AScene) => {
      of(scene, 'far ridge').painting.dark = 34;
      doubtful(scene, half);
    };
    expect(speaking(heavy(1), 'V4')).toHaveLength(1);
    expect(speaking(heavy(40), 'V4')).toHaveLength(0);
  });
});

describe('a small painting', () => {
  const said = (fillsPhoto: boolean) =>
    readings((scene) => {
      Object.assign(scene.facts.capture, { shortSidePx: 1065, fillsPhoto });
    }).find(({ id }) => id === 'G6')?.sentence;

  test('is asked for from nearer where there is wall around it', () => {
    expect(said(false)).toMatch(/shorter side .* 1065 pixels .* Step closer/);
  });

  test('is asked for in a larger photo where it fills this one already', () => {
    expect(said(true)).toMatch(/shorter side has only 1065 pixels\. Take or save a larger photo/);
  });
});
