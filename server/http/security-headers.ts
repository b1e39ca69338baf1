/**
 * The headers that every answer carries, among them a content security policy with a fresh nonce.
 *
 * Next gives its own scripts the nonce when it finds the policy on the request, so the caller sets it on
 * both. In the flow: web-server -> [headers]. IO: the system's random source.
 * Source: W3C Content Security Policy Level 3; Permissions Policy (W3C working draft).
 */
import { randomBytes } from 'node:crypto';

const HOST_SHAPE = /^[\w.:[\]-]+$/;

/**
 * The policy for one answer.
 *
 * @param host The request's Host header; sockets to it are allowed.
 * @param dev Whether Next's development tools must run, which evaluate code.
 */
export function contentSecurityPolicy(host: string | undefined, dev: boolean): string {
  const nonce = `'nonce-${randomBytes(16).toString('base64')}'`;
  const sockets = host && HOST_SHAPE.test(host) ? ` ws://${host} wss://${host}` : '';
  return [
    "default-src 'self'",
    `script-src 'self' ${nonce}${dev ? " 'unsafe-eval'" : ''}`,
    dev ? "style-src 'self' 'unsafe-inline'" : `style-src 'self' ${nonce}`,
    // Positions of things on a picture are inline style attributes; a style attribute runs no script.
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "font-src 'self'",
    `connect-src 'self'${sockets}`,
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}

/** Everything but the policy; the same for every answer. */
export const STEADY_HEADERS: Readonly<Record<string, string>> = {
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'x-frame-options': 'DENY',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(self), microphone=(), geolocation=(), payment=(), usb=()',
};
