/**
 * What one may choose about a picture: its rights line, what it is painted with, its light, the sizes it is served in.
 *
 * Apart from the requests, so that a browser that offers the choices need not load the shapes they are parsed with.
 * Pure.
 */

/** Whose picture a reference is. */
export const RIGHTS = ['mine', 'permission', 'free'] as const;
export type Rights = (typeof RIGHTS)[number];

/** What a painting is made with, as stored; anything else is stored in the painter's own words. */
export const MEDIA = ['oil', 'acrylic', 'watercolour', 'gouache', 'pastel'] as const;
export type Medium = (typeof MEDIA)[number];

/** Whether the paint was dry when it was photographed. */
export const DRYINGS = ['wet', 'dry'] as const;
export type Drying = (typeof DRYINGS)[number];

/** The light a painting was photographed in. */
export const PHOTO_LIGHTS = ['shade', 'sun', 'lamp', 'flash', 'mixed'] as const;
export type PhotoLight = (typeof PHOTO_LIGHTS)[number];

/** Long sides of the copies that are served, pixels. */
export const PICTURE_SIZES = [640, 1280, 2560] as const;
export type PictureSize = (typeof PICTURE_SIZES)[number];
