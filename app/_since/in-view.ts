/**
 * Tells that something has stood in view for a moment, on a page that is itself in sight.
 *
 * In the flow: use-in-view -> [in-view]. IO: watches one element and whether the page is in sight.
 */

/** Long enough to have been read over, not only scrolled past. */
export const READ_MS = 1200;
/** How much of it has to stand there. */
const THRESHOLD = 0.4;

/** @returns Ends the watching. */
export function whenInView(target: Element, tell: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let inView = false;
  const wait = () => {
    clearTimeout(timer);
    if (inView && document.visibilityState === 'visible') timer = setTimeout(tell, READ_MS);
  };
  const observer = new IntersectionObserver(
    (entries) => {
      // A busy page is told of several moments at once, the newest last.
      inView = entries.at(-1)?.isIntersecting ?? false;
      wait();
    },
    { threshold: THRESHOLD },
  );
  observer.observe(target);
  // Nothing moves when a page comes back into sight, so the observer has nothing to say of it.
  document.addEventListener('visibilitychange', wait);
  return () => {
    clearTimeout(timer);
    observer.disconnect();
    document.removeEventListener('visibilitychange', wait);
  };
}
