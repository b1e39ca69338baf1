'use client';
/** The board's keys: letters for tools and looking. Undo and redo are the easel's. IO: listens on the window, remembers a choice. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { type LetterAction, letterAction } from './key-map.ts';
import { nextSurround, withBlur, withGrey } from './looking.ts';
import { type Tools, useTools } from './tools.tsx';

export interface BoardKeys {
  /** The list of keys is open. */
  listOpen: boolean;
  setListOpen(open: boolean): void;
  /** Letters can be switched off, for those who speak their keys or slip on them (WCAG 2.1.4). */
  lettersOn: boolean;
  setLettersOn(on: boolean): void;
}

const LETTERS_KEY = 'veilstep-letters';

/** Where letters are text, or where a sheet lies over the board. */
function keysAreTaken(event: KeyboardEvent): boolean {
  const { target } = event;
  if (event.defaultPrevented || event.isComposing || document.querySelector('dialog[open]')) return true;
  return (
    target instanceof HTMLElement && target.closest('input, textarea, select, [contenteditable]') !== null
  );
}

/** What each letter does now. */
function actions(tools: Tools, openList: () => void): Record<LetterAction, () => void> {
  return {
    look: () => tools.setTool('look'),
    outline: () => tools.setTool('outline'),
    mark: () => tools.setTool('mark'),
    draw: () => tools.setTool('draw'),
    photo: () => tools.setTool('photo'),
    squint: () => tools.setSquint(withBlur(tools.squint)),
    grey: () => tools.setSquint(withGrey(tools.squint)),
    surround: () => tools.setSurround(nextSurround(tools.surround)),
    lines: () => tools.setLinesShown(!tools.linesShown),
    marks: () => tools.setMarksShown(!tools.marksShown),
    arrange: () => tools.setArrange(tools.arrange === 'beside' ? 'over' : 'beside'),
    side: () => tools.setSide(tools.side === 'reference' ? 'painting' : 'reference'),
    table: () => tools.setTableShown(!tools.tableShown),
    help: openList,
  };
}

export function useBoardKeys(): BoardKeys {
  const tools = useTools();
  const [listOpen, setListOpen] = useState(false);
  const [lettersOn, keepLettersOn] = useState(true);
  useEffect(() => {
    try {
      keepLettersOn(localStorage.getItem(LETTERS_KEY) !== 'off');
    } catch {
      // A browser that keeps nothing starts with letters on.
    }
  }, []);
  const setLettersOn = useCallback((on: boolean) => {
    keepLettersOn(on);
    try {
      localStorage.setItem(LETTERS_KEY, on ? 'on' : 'off');
    } catch {
      // As above: the choice then lasts as long as the page.
    }
  }, []);

  const now = useRef({ tools, lettersOn });
  useEffect(() => {
    now.current = { tools, lettersOn };
  });
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (keysAreTaken(event)) return;
      const { tools: held, lettersOn: letters } = now.current;
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
