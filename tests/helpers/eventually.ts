/** Waits for a fact, never for a time: asks again and again until it is so, and fails when it never is. */

const ASK_AGAIN_MS = 50;

/** @param limitMs How long it may take at most, milliseconds. @throws Error when it did not become so. */
export async function eventually(fact: () => boolean | Promise<boolean>, limitMs: number): Promise<void> {
  const end = performance.now() + limitMs;
  while (!(await fact())) {
    if (performance.now() > end) throw new Error(`It did not become so within ${limitMs} ms: ${fact}`);
    await new Promise((resolve) => setTimeout(resolve, ASK_AGAIN_MS));
  }
}
