'use client';
/** Tells that something has stood in view for a moment. In the flow: remark -> [use-in-view] -> in-view. */
import { type RefObject, useEffect } from 'react';
import { whenInView } from './in-view.ts';

export function useInView(element: RefObject<Element | null>, tell: () => void): void {
  useEffect(() => (element.current ? whenInView(element.current, tell) : undefined), [element, tell]);
}
