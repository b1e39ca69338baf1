'use client';
/** The tray under the pictures: what the hand does, and what the eye is shown. Words, with their keys beside. */
import type { ReactNode } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useLooking } from '#app/_look/look-state.tsx';
import { useOpenPanel, useValuesSwitch, useWaysSwitch } from '#app/_look/use-panel-switches.ts';
import { lookShownWords as lookWords } from '#words/look-shown.ts';
import { words } from '#words/shell.ts';
import { LETTER_KEYS, type LetterAction } from './key-map.ts';
import { isBlurred, isGrey, withBlur, withGrey } from './looking.ts';
import type { Tool } from './tools.ts';
import { useTools } from './tools-here.tsx';
import styles from './tray.module.css';
import { useWide } from './use-wide.ts';

interface TrayButtonProps {
  letter: LetterAction;
  pressed: boolean;
  looking?: boolean;
  disabled?: boolean;
  onPress(): void;
  children: ReactNode;
}

function TrayButton({
  letter,
  pressed,
  looking = false,
  disabled = false,
  onPress,
  children,
}: TrayButtonProps) {
  const key = LETTER_KEYS[letter];
  return (
    <button
      type="button"
      className={looking ? `${styles.tool} ${styles.switch}` : styles.tool}
      aria-pressed={pressed}
      aria-keyshortcuts={key}
      disabled={disabled}
      onClick={onPress}
    >
      {children}
      <span className={styles.key} aria-hidden="true">
        {key}
      </span>
    </button>
  );
}

/** On a narrow screen the row scrolls; what one looks with must not be at its far end. */
export function Tray() {
  const { referenceId, paintingId } = useTools();
  const wide = useWide();
  const { veiled } = useBoardLive().class;
  return (
    <section className={styles.tray} aria-label={words.board.tray}>
      {referenceId && paintingId ? <Sides /> : null}
      {wide || veiled ? null : <Ways />}
      <Hands />
      <Eyes />
      {wide && !veiled ? <Ways /> : null}
    </section>
  );
}

/** On a narrow screen one picture is shown; this turns to the other. */
function Sides() {
  const { side, setSide } = useTools();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw its own frame; these are two switches.
    <div className={`${styles.group} ${styles.sides}`} role="group" aria-label={words.tray.shown}>
      {(['reference', 'painting'] as const).map((name) => (
        <button
          key={name}
          type="button"
          className={`${styles.tool} ${styles.switch}`}
          aria-pressed={side === name}
          onClick={() => setSide(name)}
        >
          {words.tray[name]}
        </button>
      ))}
    </div>
  );
}

/** Tools that the tray offers; the others are taken in hand where they are needed. */
type TrayTool = Exclude<Tool, 'guess' | 'air' | 'focus' | 'carry'>;

/** Only tools the person may use here; whoever looks on just looks. */
function Hands() {
  const { tool, setTool, paintingId } = useTools();
  const { may, class: inClass } = useBoardLive();
  const paints = paintingId !== null && may.painting(paintingId);
  const offered: Record<TrayTool, boolean> = {
    look: true,
    outline: may.setup || paints,
    mark: may.mark,
    photo: paints,
    patch: !inClass.veiled,
  };
  const tools = (Object.keys(offered) as TrayTool[]).filter((name) => offered[name]); // Object.keys widens.
  if (tools.length < 2) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: as above.
    <div className={styles.group} role="group" aria-label={words.tray.label}>
      {tools.map((name) => (
        <TrayButton key={name} letter={name} pressed={tool === name} onPress={() => setTool(name)}>
          {name === 'patch' ? lookWords.tray.patch : words.tray[name]}
        </TrayButton>
      ))}
    </div>
  );
}

/** The ways of looking that are wanted all the time; the rest is folded behind one word. */
function Eyes() {
  const { squint, setSquint, linesShown, setLinesShown, marksShown, setMarksShown } = useTools();
  const { class: inClass } = useBoardLive();
  const { valuesShown } = useLooking();
  const showValues = useValuesSwitch();
  return (
    // biome-ignore lint/a11y/useSemanticElements: as above.
    <div className={styles.group} role="group" aria-label={words.tray.view}>
      <TrayButton
        looking
        letter="squint"
        pressed={isBlurred(squint)}
        onPress={() => setSquint(withBlur(squint))}
      >
        {words.tray.squint}
      </TrayButton>
      <TrayButton looking letter="grey" pressed={isGrey(squint)} onPress={() => setSquint(withGrey(squint))}>
        {words.tray.grey}
      </TrayButton>
      {inClass.veiled ? null : (
        <TrayButton looking letter="values" pressed={valuesShown} onPress={() => showValues(!valuesShown)}>
          {lookWords.tray.values}
        </TrayButton>
      )}
      <TrayButton looking letter="lines" pressed={linesShown} onPress={() => setLinesShown(!linesShown)}>
        {words.tray.lines}
      </TrayButton>
      <TrayButton looking letter="marks" pressed={marksShown} onPress={() => setMarksShown(!marksShown)}>
        {words.tray.marks}
      </TrayButton>
    </div>
  );
}

/** Opens the rest; in its place stands what of it is on, so that nobody forgets how they look. */
function Ways() {
  const { mirrored, half } = useLooking();
  const turn = useWaysSwitch();
  const open = useOpenPanel() === 'ways';
  const { now } = lookWords;
  const on = mirrored && half ? now.both : mirrored ? now.mirrored : half ? now.half : null;
  return (
    <button
      type="button"
      id="ways-of-looking"
      className={`${styles.tool} ${styles.ways}`}
      aria-expanded={open}
      aria-controls={open ? 'panel-looking' : undefined}
      aria-keyshortcuts={LETTER_KEYS.ways}
      onClick={turn}
    >
      {on ? <span className="unseen">{lookWords.tray.ways}: </span> : null}
      <span className={on ? styles.on : undefined}>{on ?? lookWords.tray.ways}</span>
      <span className={styles.key} aria-hidden="true">
        {LETTER_KEYS.ways}
      </span>
    </button>
  );
}
