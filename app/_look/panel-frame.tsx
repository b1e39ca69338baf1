'use client';
/** The frame of a looking panel: title, its controls, and the way back to the ladder. Escape goes back as well. */
import { type KeyboardEvent, type ReactNode, useId } from 'react';
import { Button } from '#app/_ui/button.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { lookWords } from '#words/look.ts';
import { useLooking } from './look-state.tsx';
import styles from './panel.module.css';

interface PanelFrameProps {
  title: string;
  controls?: ReactNode;
  children: ReactNode;
}

export function PanelFrame({ title, controls, children }: PanelFrameProps) {
  const titleId = useId();
  const { tool, setTool } = useTools();
  const { setPanel } = useLooking();
  const close = () => {
    if (tool === 'patch' || tool === 'guess') setTool('look');
    setPanel(null);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || event.defaultPrevented) return;
    close();
    document.getElementById('ways-of-looking')?.focus();
  };
  return (
    <section className={styles.panel} aria-labelledby={titleId} onKeyDown={onKeyDown}>
      <div className={styles.head}>
        <h2 id={titleId} className={styles.title}>
          {title}
        </h2>
        {controls}
        <span className={styles.close}>
          <Button weight="word" onClick={close}>
            {lookWords.toLadder}
          </Button>
        </span>
      </div>
      {children}
    </section>
  );
}
