'use client';
/** A part of the page that scrolls sideways by itself, by keyboard too. */
import type { ReactNode } from 'react';

export function ScrollRegion({
  label,
  className,
  children,
}: {
  label: string;
  className?: string | undefined;
  children: ReactNode;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: without it a keyboard cannot scroll the region (WCAG 2.1.1).
    <section className={className} aria-label={label} tabIndex={0}>
      {children}
    </section>
  );
}
