'use client';
/**
 * Every way of looking in one place, each with its key and what it is good for.
 *
 * In the flow: tray -> [ways panel] -> look state, tools.
 */
import { type ReactNode, useEffect, useState } from 'react';
import { dateTime } from '#app/_words/figures.ts';
import { LETTER_KEYS, type LetterAction } from '#app/_workspace/key-map.ts';
import { isBlurred, isGrey, withBlur, withGrey } from '#app/_workspace/looking.ts';
import { SURROUNDS } from '#app/_workspace/tools.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { lookWords } from '#words/look.ts';
import { words as shellWords } from '#words/shell.ts';
import { Choice } from './choice.tsx';
import { keptScreen, type ScreenFound } from './kept.ts';
import { SQUINT_SHARES, useLooking } from './look-state.tsx';
import { PanelFrame } from './panel-frame.tsx';
import { useValuesSwitch } from './use-panel-switches.ts';
import styles from './ways.module.css';

const { ways: words } = lookWords;

export function WaysPanel() {
  return (
    <PanelFrame title={words.title}>
      <div className={styles.ways}>
        <Less />
        <Anew />
        <Stand />
        <Eye />
      </div>
    </PanelFrame>
  );
}

function Group({ name, children }: { name: string; children: ReactNode }) {
  return (
    <section className={styles.group} aria-label={name}>
      <h3>{name}</h3>
      {children}
    </section>
  );
}

interface WayProps {
  way: readonly [name: string, what: string];
  letter?: LetterAction;
  /** Left out for what opens something and is not on or off. */
  pressed?: boolean;
  onPress(): void;
}

function Way({ way: [name, what], letter, pressed, onPress }: WayProps) {
  const key = letter ? LETTER_KEYS[letter] : undefined;
  return (
    <button
      type="button"
      className={styles.way}
      aria-pressed={pressed}
      aria-keyshortcuts={key}
      onClick={onPress}
    >
      <span className={styles.name}>
        {name}
        {key ? (
          <span className={styles.key} aria-hidden="true">
            {key}
          </span>
        ) : null}
      </span>
      <span className={styles.what}>{what}</span>
    </button>
  );
}

function Less() {
  const { squint, setSquint } = useTools();
  const { closed, setClosed, valuesShown } = useLooking();
  const showValues = useValuesSwitch();
  const blurred = isBlurred(squint);
  return (
    <Group name={words.groups.less}>
      <Way way={words.squint} letter="squint" pressed={blurred} onPress={() => setSquint(withBlur(squint))} />
      <label className={styles.closed}>
        <span>{words.closed}</span>
        <input
          type="range"
          min={0}
          max={SQUINT_SHARES.length - 1}
          step={1}
          value={closed}
          aria-valuetext={words.closedNames[closed]}
          onChange={(event) => {
            setClosed(Number(event.target.value));
            if (!blurred) setSquint(withBlur(squint));
          }}
        />
        <span>{words.closedNames[closed]}</span>
      </label>
      <Way
        way={words.grey}
        letter="grey"
        pressed={isGrey(squint)}
        onPress={() => setSquint(withGrey(squint))}
      />
      <Way
        way={words.values}
        letter="values"
        pressed={valuesShown}
        onPress={() => showValues(!valuesShown)}
      />
    </Group>
  );
}

function Anew() {
  const { nineShown, setNineShown, mirrored, setMirrored, half, setHalf } = useLooking();
  return (
    <Group name={words.groups.anew}>
      <Way way={words.mirror} letter="mirror" pressed={mirrored} onPress={() => setMirrored(!mirrored)} />
      <Way way={words.half} letter="half" pressed={half} onPress={() => setHalf(!half)} />
      <Way way={words.nine} letter="nine" pressed={nineShown} onPress={() => setNineShown(!nineShown)} />
    </Group>
  );
}

function Stand() {
  const { arrange, setArrange, referenceId, paintingId, surround, setSurround } = useTools();
  return (
    <Group name={words.groups.stand}>
      {referenceId && paintingId ? (
        <span className={styles.wideOnly}>
          <Way
            way={words.over}
            letter="arrange"
            pressed={arrange === 'over'}
            onPress={() => setArrange(arrange === 'over' ? 'beside' : 'over')}
          />
        </span>
      ) : null}
      <div className={styles.surround}>
        <p className={styles.name}>
          {words.surround}
          <span className={styles.key} aria-hidden="true">
            {LETTER_KEYS.surround}
          </span>
        </p>
        <Choice
          label={words.surround}
          options={SURROUNDS.map((value) => ({ value, name: shellWords.tray.surround[value] }))}
          chosen={surround}
          onChoose={setSurround}
        />
      </div>
    </Group>
  );
}

function Eye() {
  const { setTool } = useTools();
  const { setCheckOpen, checkOpen } = useLooking();
  const [found, setFound] = useState<ScreenFound | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: read again once the check is closed.
  useEffect(() => setFound(keptScreen()), [checkOpen]);
  const { state } = lookWords.check;
  const said = found
    ? (found.dark && found.light ? state.good : state.lost)(dateTime(found.at))
    : words.check[1];
  return (
    <Group name={words.groups.eye}>
      <Way way={words.guess} letter="guess" onPress={() => setTool('guess')} />
      <Way way={[words.check[0], said]} onPress={() => setCheckOpen(true)} />
    </Group>
  );
}
