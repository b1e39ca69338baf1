/**
 * Puts text on the clipboard, on plain http too, where browsers offer no clipboard to scripts.
 *
 * IO: the browser's clipboard.
 */

/** @returns false when neither way worked; the person then copies by hand. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyBySelection(text);
  }
}

/** The older way: select a hidden copy and ask the document to copy the selection. Works inside dialogs too. */
function copyBySelection(text: string): boolean {
  const host = document.querySelector('dialog[open]') ?? document.body;
  const holder = document.createElement('textarea');
  holder.value = text;
  holder.setAttribute('readonly', '');
  holder.style.position = 'fixed';
  holder.style.opacity = '0';
  host.append(holder);
  const before = document.activeElement;
  holder.select();
  const copied = document.execCommand('copy');
  holder.remove();
  if (before instanceof HTMLElement) before.focus();
  return copied;
}
