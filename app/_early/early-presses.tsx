'use client';
/**
 * Once the page is alive: tells it what was filled in before, then does what was pressed or sent, then the keys.
 *
 * In the flow: inline script (`early-script`) -> [early-presses] -> the field, the button, the form, the window. IO: the DOM.
 */
import { useEffect } from 'react';

/** Stands in the layout, so that it is alive with the whole page and not before. */
export function EarlyPresses() {
  // With the effects of the whole page, by which it listens to its keys.
  useEffect(() => {
    const early = window.veilstepEarly;
    if (!early || early.alive) return;
    early.alive = true;
    const { press, sent, filled, keys } = early;
    setTimeout(() => {
      for (const field of filled) tellFilled(field);
      // The page takes in what was filled in before it is sent.
      setTimeout(() => {
        if (press?.isConnected) press.click();
        if (sent?.form.isConnected) sent.form.requestSubmit(sent.by);
        pressAll(keys);
      });
    });
  }, []);
  return null;
}

/** One after the other, as a hand would: the page takes in what a key did before the next one. */
function pressAll([key, ...later]: readonly string[]): void {
  if (key === undefined) return;
  document.body.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
  setTimeout(() => pressAll(later));
}

/**
 * React takes what a field holds when it comes alive for what it was told, so that the field is first put back to what
 * the server wrote and then filled once more.
 */
function tellFilled(field: EventTarget): void {
  if (field instanceof HTMLSelectElement) field.dispatchEvent(new Event('change', { bubbles: true }));
  else if (field instanceof HTMLTextAreaElement) writeAgain(field, HTMLTextAreaElement.prototype);
  else if (!(field instanceof HTMLInputElement)) return;
  else if (field.type === 'checkbox' || field.type === 'radio') tickAgain(field);
  else writeAgain(field, HTMLInputElement.prototype);
}

function tickAgain(field: HTMLInputElement): void {
  if (field.checked === field.defaultChecked) return;
  field.checked = field.defaultChecked;
  field.click();
}

function writeAgain(field: HTMLInputElement | HTMLTextAreaElement, kind: object): void {
  const { value, defaultValue } = field;
  if (value === defaultValue) return;
  field.value = defaultValue;
  // Past React's own watch over the field, as a hand on the keys would write.
  Object.getOwnPropertyDescriptor(kind, 'value')?.set?.call(field, value);
  field.dispatchEvent(new Event('input', { bubbles: true }));
}
