/** What is written on the keys that have a name and no letter. Pure. */
export const keyNames = {
  ctrl: 'Ctrl',
  shift: 'Shift',
  home: 'Home',
  end: 'End',
  space: 'Space',
  enter: 'Enter',
  escape: 'Esc',
  backspace: 'Backspace',
  delete: 'Delete',
} as const;
