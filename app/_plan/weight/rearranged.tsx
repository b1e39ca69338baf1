'use client';
/**
 * The picture as it was rearranged, for whatever is measured again at once: weight and shapes.
 *
 * In the flow: rearrange -> [rearranged] -> use-weight. Of this screen alone. No IO.
 */
import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import type { EncodedRaster } from '#server/core/image/raster.ts';

interface Rearranged {
  /** A small copy of the whole picture, about 640 px; null = as it was taken. */
  raster: EncodedRaster | null;
  setRaster(raster: EncodedRaster | null): void;
}

const Context = createContext<Rearranged | null>(null);

/** @throws Error outside a `RearrangedProvider`: a bug. */
export function useRearranged(): Rearranged {
  const rearranged = useContext(Context);
  if (!rearranged) throw new Error('The rearranged picture is used outside RearrangedProvider.');
  return rearranged;
}

export function RearrangedProvider({ children }: { children: ReactNode }) {
  const [raster, setRaster] = useState<EncodedRaster | null>(null);
  const rearranged = useMemo(() => ({ raster, setRaster }), [raster]);
  return <Context value={rearranged}>{children}</Context>;
}
