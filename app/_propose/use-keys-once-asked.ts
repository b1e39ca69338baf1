'use client';
/** Whether the planes were asked for by button or key since this part was last shown. In the flow: propose-desk -> chooser. */
import { useEffect, useState } from 'react';
import { useProposeDesk } from './propose-desk.tsx';

/** The last asking that moved the keys, of the whole page: what was asked for once does not take them twice. */
let answered = 0;

/** @returns true once for each asking, until another comes. */
export function useKeysOnceAsked(): boolean {
  const { asked } = useProposeDesk();
  const [takes, setTakes] = useState(false);
  useEffect(() => {
    if (asked === answered) return;
    answered = asked;
    setTakes(true);
  }, [asked]);
  return takes;
}
