'use client';
import { VALUE_NUMBERS } from '#server/core/look/value-numbers.ts';
/** Which ways of looking are shown under each painting. In the flow: [switches] -> rows. */
import { wallWords as words } from '#words/wall.ts';
import { type Looking, offeredRows, withRow } from './rows.ts';
import styles from './switches.module.css';

interface SwitchesProps {
  looking: Looking;
  setLooking(looking: Looking): void;
  veiled: boolean;
}

export function Switches({ looking, setLooking, veiled }: SwitchesProps) {
  const offered = offeredRows(veiled);
  const on = (row: Looking['rows'][number]) => offered.includes(row) && looking.rows.includes(row);
  return (
    <div className={styles.switches}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are switches. */}
      <div className={styles.group} role="group" aria-label={words.rows.label}>
        {offered.map((row) => (
          <button
            key={row}
            type="button"
            className={styles.switch}
            aria-pressed={looking.rows.includes(row)}
            onClick={() => setLooking(withRow(looking, row))}
          >
            {words.rows[row]}
          </button>
        ))}
      </div>
      {on('values') ? (
        <label className={styles.choice}>
          {words.rows.count}
          <select
            value={looking.count}
            onChange={({ target }) => {
              const count = VALUE_NUMBERS.find((each) => String(each) === target.value);
              if (count) setLooking({ ...looking, count });
            }}
          >
            {VALUE_NUMBERS.map((count) => (
              <option key={count} value={count}>
                {words.rows.countOf[count]}
              </option>
            ))}
          </select>
        </label>
      ) : null}
      {on('palette') ? (
        <label className={styles.choice}>
          {words.rows.order}
          <select
            value={looking.order}
            onChange={({ target }) =>
              setLooking({ ...looking, order: target.value === 'depth' ? 'depth' : 'value' })
            }
          >
            <option value="value">{words.rows.byValue}</option>
            <option value="depth">{words.rows.byDepth}</option>
          </select>
        </label>
      ) : null}
    </div>
  );
}
