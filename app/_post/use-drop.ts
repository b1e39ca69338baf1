'use client';
/** Files dropped anywhere on the page, and pasted ones. IO: listens on the window. */
import { useEffect, useState } from 'react';

function filesIn(transfer: DataTransfer | null): File[] {
  return [...(transfer?.files ?? [])];
}

function carriesFiles(event: DragEvent): boolean {
  return event.dataTransfer?.types.includes('Files') ?? false;
}

/**
 * @param allowed false = what is dropped is ignored (and not opened in place of the page either).
 * @returns true while files are held over the page.
 */
export function useDrop(allowed: boolean, onFiles: (files: File[]) => void): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    // Entering a child fires before leaving its parent, so the page is left when the count is back at nought.
    let depth = 0;
    const enter = (event: DragEvent) => {
      if (!carriesFiles(event)) return;
      depth += 1;
      setOver(allowed);
    };
    const leave = (event: DragEvent) => {
      if (!carriesFiles(event)) return;
      depth = Math.max(0, depth - 1);
      if (depth === 0) setOver(false);
    };
    const hold = (event: DragEvent) => {
      if (carriesFiles(event)) event.preventDefault();
    };
    const drop = (event: DragEvent) => {
      if (!carriesFiles(event)) return;
      event.preventDefault();
      depth = 0;
      setOver(false);
      const files = filesIn(event.dataTransfer);
      if (allowed && files.length > 0) onFiles(files);
    };
    const paste = (event: ClipboardEvent) => {
      const files = filesIn(event.clipboardData);
      if (allowed && files.length > 0) onFiles(files);
    };
    window.addEventListener('dragenter', enter);
    window.addEventListener('dragleave', leave);
    window.addEventListener('dragover', hold);
    window.addEventListener('drop', drop);
    window.addEventListener('paste', paste);
    return () => {
      window.removeEventListener('dragenter', enter);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('dragover', hold);
      window.removeEventListener('drop', drop);
      window.removeEventListener('paste', paste);
    };
  }, [allowed, onFiles]);
  return over;
}
