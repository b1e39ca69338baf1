import { describe, expect, test } from 'vitest';
import { type Calibration, calibrate } from '#tests/fixtures/pairs/calibrate.ts';
import { renderedPair } from '#tests/fixtures/pairs/pairs.ts';
import { FROZEN } from '#tests/fixtures/pairs/parameters.ts';

const HIT_RATE = 0.95;
const FALSE_ALARMS_PER_PICTURE = 0.02;

const rates = ({ hits, pairsWithFaults, picturesWithFalseAlarm, pairsWithout }: Calibration) => ({
  hits: hits / pairsWithFaults,
  falseAlarms: picturesWithFalseAlarm / pairsWithout,
});

describe('rendered pairs, parameters frozen before any threshold was tuned', () => {
  test.each(['A', 'B'] as const)(
    'at grade %s a corrected camera leaves 95 %% hits and 2 %% false alarms per picture',
    (grade) => {
      const { hits, falseAlarms } = rates(
        calibrate(grade, 'camera', FROZEN.pairsWithFaults, FROZEN.pairsWithout),
      );
      expect(hits).toBeGreaterThanOrEqual(HIT_RATE);
      expect(falseAlarms).toBeLessThanOrEqual(FALSE_ALARMS_PER_PICTURE);
    },
  );

  test('at grade C no colour reading speaks', () => {
    expect(calibrate('C', 'grade', 66, 66).picturesWithColour).toBe(0);
  });

  test('the same seed renders the same pair', () => {
    expect(renderedPair(7, 'V4', 'B')).toEqual(renderedPair(7, 'V4', 'B'));
  });
});
