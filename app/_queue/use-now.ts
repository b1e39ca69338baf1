'use client';
/** The reader's own clock, for days said in words. Null where the page is made on the server, which knows no time zone. */
import { useEffect, useState } from 'react';

/** Looked at again when the page comes back into sight. */
export function useNow(): Date | null {
  const [now, setNow] = useState<Date | null>(null);
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible') setNow(new Date());
    };
    setNow(new Date());
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);
  return now;
}
