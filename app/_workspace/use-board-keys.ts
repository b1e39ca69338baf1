'use client';
/** The board's keys: letters for tools and looking. Undo and redo are the easel's. IO: listens on the window, remembers a choice. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { type Looking, useLooking } from '#app/_look/look-state.tsx';
import { useValuesSwitch, useWaysSwitch } from '#app/_look/use-panel-switches.ts';
import { type HandKind, type MarkDesk, nextKind, useMarkDesk } from '#app/_marks/mark-desk.tsx';
import { usePost } from '#app/_post/posting.tsx';
import { useProposeDesk } from '#app/_propose/propose-desk.tsx';
import { lettersOn as lettersWereOn, rememberLetters } from '#app/_ui/letters.ts';
import type { ValueNumber } from '#server/core/look/value-numbers.ts';
import { type LetterAction, letterAction } from './key-map.ts';
import { nextSurround, withBlur, withGrey } from './looking.ts';
import { OUTLININGS, type Outlining, type Tool, type Tools } from './tools.ts';
import { useAllTools } from './tools-here.tsx';

export interface BoardKeys {
  /** The list of keys is open. */
  listOpen: boolean;
  setListOpen(open: boolean): void;
  /** Letters can be switched off, for those who speak their keys or slip on them (WCAG 2.1.4). */
  lettersOn: boolean;
  setLettersOn(on: boolean): void;
}

/** Sliders and ticks take no letters. */
const WRITTEN_IN =
  'input:not([type="range"], [type="checkbox"], [type="radio"]), textarea, select, [contenteditable]';

/** Where letters are text, or where a sheet lies over the board. */
function keysAreTaken(event: KeyboardEvent): boolean {
  const { target } = event;
  if (event.defaultPrevented || event.isComposing || document.querySelector('dialog[open]')) return true;
  return target instanceof HTMLElement && target.closest(WRITTEN_IN) !== null;
}

interface Held {
  tools: Tools;
  looking: Looking;
  marking: MarkDesk;
  showValues(shown: boolean): void;
  turnWays(): void;
  findPlanes(): void;
  choosePictures(): void;
}

function nextOutlining(outlining: Outlining): Outlining {
  return OUTLININGS[(OUTLININGS.indexOf(outlining) + 1) % OUTLININGS.length] ?? 'line';
}

/** Tools of the hand. */
function handActions({ tools, findPlanes, choosePictures }: Held) {
  const hold = (tool: Tool) => () => tools.setTool(tool);
  return {
    look: hold('look'),
    outline() {
      if (tools.tool === 'outline') tools.setOutlining(nextOutlining(tools.outlining));
      else tools.setTool('outline');
    },
    find: findPlanes,
    post: choosePictures,
    photo: hold('photo'),
    patch: hold('patch'),
    guess: hold('guess'),
  };
}

/** The kinds of marks. The letter of the marking hand goes on to the next kind once it is in hand. */
function markActions({ tools, marking }: Held) {
  const as = (kind: HandKind) => () => {
    if (tools.tool !== 'mark') tools.setTool('mark');
    marking.setKind(kind);
  };
  return {
    mark() {
      if (tools.tool === 'mark') marking.setKind(nextKind(marking.kind));
      else tools.setTool('mark');
    },
    draw: as('stroke'),
    arrow: as('arrow'),
    loop: as('outline'),
    text: as('text'),
    sample: as('patch'),
    sketch: as('sketch'),
    sketches: () => marking.setSketchesShown(!marking.sketchesShown),
  };
}

/** Ways of looking. */
function eyeActions({ tools, looking, showValues, turnWays }: Held) {
  const inValues = (number: ValueNumber) => () => {
    looking.setValueNumber(number);
    if (!looking.valuesShown) showValues(true);
  };
  return {
    squint: () => tools.setSquint(withBlur(tools.squint)),
    grey: () => tools.setSquint(withGrey(tools.squint)),
    values: () => showValues(!looking.valuesShown),
    two: inValues(2),
    three: inValues(3),
    four: inValues(4),
    five: inValues(5),
    nine: () => looking.setNineShown(!looking.nineShown),
    mirror: () => looking.setMirrored(!looking.mirrored),
    half: () => looking.setHalf(!looking.half),
    ways: turnWays,
    lines: () => tools.setLinesShown(!tools.linesShown),
    marks: () => tools.setMarksShown(!tools.marksShown),
    surround: () => tools.setSurround(nextSurround(tools.surround)),
    arrange: () => tools.setArrange(tools.arrange === 'beside' ? 'over' : 'beside'),
    side: () => tools.setSide(tools.side === 'reference' ? 'painting' : 'reference'),
    table: () => tools.setTableShown(!tools.tableShown),
  };
}

/** What each letter does now. */
function actions(held: Held, openList: () => void): Record<LetterAction, () => void> {
  return { ...handActions(held), ...markActions(held), ...eyeActions(held), help: openList };
}

export function useBoardKeys(): BoardKeys {
  const tools = useAllTools();
  const looking = useLooking();
  const marking = useMarkDesk();
  const showValues = useValuesSwitch();
  const turnWays = useWaysSwitch();
  const { ask: findPlanes } = useProposeDesk();
  const { choose: choosePictures } = usePost();
  const [listOpen, setListOpen] = useState(false);
  const [lettersOn, keepLettersOn] = useState(true);
  useEffect(() => keepLettersOn(lettersWereOn()), []);
  const setLettersOn = useCallback((on: boolean) => {
    keepLettersOn(on);
    rememberLetters(on);
  }, []);

  const now = useRef({
    tools,
    looking,
    marking,
    showValues,
    turnWays,
    findPlanes,
    choosePictures,
    lettersOn,
  });
  useEffect(() => {
    now.current = { tools, looking, marking, showValues, turnWays, findPlanes, choosePictures, lettersOn };
  });
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (keysAreTaken(event)) return;
      const { lettersOn: letters, ...held } = now.current;
      const action = event.ctrlKey || event.metaKey || event.altKey ? null : letterAction(event.key);
      if (!action || !(letters || action === 'help')) return;
      event.preventDefault();
      actions(held, () => setListOpen(true))[action]();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
  return { listOpen, setListOpen, lettersOn, setLettersOn };
}
