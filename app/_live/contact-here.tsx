'use client';
/** Tells this browser on every page who is signed in, so that it keeps nothing of anybody else. See `contact`. */
import { useEffect } from 'react';
import { cameAs } from './contact.ts';

/** @param personId Null = nobody. */
export function ContactHere({ personId }: { personId: string | null }) {
  useEffect(() => cameAs(personId), [personId]);
  return null;
}
