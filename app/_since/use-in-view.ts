'use client';
/** Tells once that something has stood in view for a moment, on a page that is itself in sight. */
import { type RefObject, useEffect } from 'react';

/** Long enough to have been read over, not only scrolled past. */
const READ_MS = 1200;

export function useInView(element: RefObject<Element | null>, tell: () => void): void {
  useEffect(() => {
    const target = element.current;
    if (!target) return;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const observer = new IntersectionObserver(
      ([entry]) => {
        clearTimeout(timer);
        if (!entry?.isIntersecting) return;
        timer = setTimeout(() => {
          if (document.visibilityState === 'visible') tell();
        }, READ_MS);
      },
      { threshold: 0.4 },
    );
    observer.observe(target);
    return () => {
      clearTimeout(timer);
      observer.disconnect();
    };
  }, [element, tell]);
}
