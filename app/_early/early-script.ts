/**
 * The few lines that run before the page's own script has come: they keep the last press, the last form sent, the fields
 * filled in and the letters that are keys, which on a slow device would be lost, or send a form as its page's address.
 *
 * In the flow: layout -> inline script -> `window` under this name -> [early-presses], which does what was kept. Pure text.
 */

/** What was done before the page was alive. */
export interface Early {
  /** Whether the page's own script answers by now. */
  alive: boolean;
  /** The button pressed last; a form sent after it takes its place, and the other way round. */
  press: HTMLElement | null;
  sent: { form: HTMLFormElement; by: HTMLElement | null } | null;
  /** Fields written or chosen in. */
  filled: EventTarget[];
  /** Letters and digits pressed while nothing was in hand, in their order. */
  keys: string[];
}

declare global {
  interface Window {
    veilstepEarly?: Early;
  }
}

/**
 * In the words of old browsers too; it is sent as it stands. Presses, forms and keys are kept from everybody else, so that
 * the page, should it come alive under the very press, does not do it a second time.
 */
export const EARLY_SCRIPT = `(function () {
  var early = (window.veilstepEarly = { alive: false, press: null, sent: null, filled: [], keys: [] });
  document.addEventListener('click', function (event) {
    var button = event.target.closest && event.target.closest('button');
    if (early.alive || !button || button.disabled || (button.form && button.type === 'submit')) return;
    event.stopImmediatePropagation();
    early.press = button;
    early.sent = null;
  }, true);
  document.addEventListener('submit', function (event) {
    if (early.alive) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    early.sent = { form: event.target, by: event.submitter };
    early.press = null;
  }, true);
  document.addEventListener('input', function (event) {
    if (!early.alive && early.filled.indexOf(event.target) < 0) early.filled.push(event.target);
  }, true);
  document.addEventListener('keydown', function (event) {
    if (early.alive || event.target !== document.body || !/^\\S$/.test(event.key)) return;
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    event.stopImmediatePropagation();
    early.keys.push(event.key);
  }, true);
})();`;
