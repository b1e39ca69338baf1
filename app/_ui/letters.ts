/**
 * Whether letters do something on this device's pages, for those who speak their keys or slip on them (WCAG 2.1.4). It is
 * chosen in the list of keys of a board and holds for the plan and the states as well. IO: remembers a choice.
 */
const LETTERS_KEY = 'veilstep-letters';

/** true until it is switched off; a browser that keeps nothing has letters on. */
export function lettersOn(): boolean {
  try {
    return localStorage.getItem(LETTERS_KEY) !== 'off';
  } catch {
    return true;
  }
}

/** In a browser that keeps nothing the choice lasts as long as the page. */
export function rememberLetters(on: boolean): void {
  try {
    localStorage.setItem(LETTERS_KEY, on ? 'on' : 'off');
  } catch {
    // As above.
  }
}
