/** German. What is written on the keys that have a name and no letter. Pure. */
import type * as en from '../en/key-names.ts';
import type { Worded } from '../worded.ts';

export const keyNames: Worded<typeof en.keyNames> = {
  ctrl: 'Strg',
  shift: 'Umschalt',
  home: 'Pos1',
  end: 'Ende',
  space: 'Leertaste',
  enter: 'Eingabe',
  escape: 'Esc',
  backspace: 'Rücktaste',
  delete: 'Entf',
};
