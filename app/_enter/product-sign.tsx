/** Three bars stepping back along a line: the sign of the product, in greys. */
export function ProductSign() {
  return (
    <svg width="36" height="28" viewBox="0 0 48 38" aria-hidden="true">
      <rect x="0" y="0" width="12" height="11" fill="#e2e2e2" />
      <rect x="18" y="7" width="12" height="19" fill="#ababab" />
      <rect x="36" y="12" width="12" height="26" fill="#303030" />
      <path d="M6 6 24 16.500 42 25" fill="none" stroke="#141414" strokeWidth="2" />
    </svg>
  );
}
