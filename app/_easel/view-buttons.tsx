'use client';
/** Zoom, undo and redo as buttons, for hands without keys and wheels. In the flow: hand -> view-store, history. */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { words } from '#words/easel.ts';
import styles from './easel.module.css';
import { useEasel } from './easel-state.tsx';
import { KEY_ZOOM } from './view-store.ts';
import { WHOLE, ZOOM_MOST } from './view-transform.ts';

export function ViewButtons() {
  const { views } = useEasel();
  const { undo, redo, canUndo, canRedo } = useBoardLive();
  const zoom = (factor: number) => {
    const view = views.get();
    views.set({ ...view, zoom: Math.min(ZOOM_MOST, Math.max(1, view.zoom * factor)) });
  };
  return (
    <fieldset className={styles.buttons} aria-label={words.easel.view}>
      <button type="button" onClick={undo} disabled={!canUndo} aria-keyshortcuts="Control+Z">
        {words.easel.undo}
      </button>
      <button type="button" onClick={redo} disabled={!canRedo} aria-keyshortcuts="Control+Shift+Z">
        {words.easel.redo}
      </button>
      <button type="button" onClick={() => zoom(1 / KEY_ZOOM)} aria-label={words.easel.zoomOut}>
        −
      </button>
      <button type="button" onClick={() => views.set(WHOLE)} aria-keyshortcuts="0">
        {words.easel.whole}
      </button>
      <button type="button" onClick={() => zoom(KEY_ZOOM)} aria-label={words.easel.zoomIn}>
        +
      </button>
    </fieldset>
  );
}
