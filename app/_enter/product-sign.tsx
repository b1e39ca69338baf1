/** Three planes stepping back from dark to light: the sign of the product, in greys. */
export function ProductSign() {
  return (
    <svg width="34" height="30" viewBox="0 0 34 30" aria-hidden="true">
      <rect x="0" y="0" width="9" height="9" fill="var(--sign-far)" />
      <rect x="12.500" y="5" width="9" height="16" fill="var(--sign-middle)" />
      <rect x="25" y="10" width="9" height="20" fill="var(--sign-near)" />
    </svg>
  );
}
