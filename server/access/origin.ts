/**
 * Whether a request that changes something, or opens a socket, comes from our own pages.
 *
 * In the flow: respond and live/upgrade -> [origin]. Pure but for the environment.
 */
import { environment } from '../env.ts';

/** The two headers that decide; null where the request has none. */
export interface OriginHeaders {
  origin: string | null;
  host: string | null;
}

/**
 * With VEILSTEP_ORIGIN set, the Origin must be that one. Unset, its host must equal the request's Host, so a
 * tablet on the same network just works. A request without Origin comes from no page (a script with a
 * cookie of its own) and passes: browsers send one with everything that could do harm.
 */
export function originAllowed(
  { origin, host }: OriginHeaders,
  only: string | null = environment().origin,
): boolean {
  if (origin === null) return true;
  if (only !== null && origin === only) return true;
  if (only !== null || !URL.canParse(origin)) return false;
  return new URL(origin).host === host;
}
