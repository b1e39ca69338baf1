/**
 * What one may choose about a picture: its rights line, the sizes it is served in.
 *
 * Apart from the requests, so that a browser that offers the choices need not load the shapes they are parsed with.
 * Pure.
 */

/** Whose picture a reference is. */
export const RIGHTS = ['mine', 'permission', 'free'] as const;
export type Rights = (typeof RIGHTS)[number];

/** Long sides of the copies that are served, pixels. */
export const PICTURE_SIZES = [640, 1280, 2560] as const;
export type PictureSize = (typeof PICTURE_SIZES)[number];
