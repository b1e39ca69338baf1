/**
 * The manifest of an archive: what it is, of which version, and every file in it with size and hash.
 *
 * In the flow: packing -> [manifest] -> unpacking. The format is our own; DEVELOPERS describes it. Pure.
 */
import { z } from 'zod';

/** Name of the manifest inside an archive. */
export const MANIFEST = 'manifest.json';

/** What an archive is of. */
export const ARCHIVE_FORMATS = ['veilstep board', 'veilstep person', 'veilstep backup'] as const;
export type ArchiveFormat = (typeof ARCHIVE_FORMATS)[number];

/** Version of the layout inside an archive; raised when an older Veilstep could not read it. */
export const ARCHIVE_VERSION = 1;

export const Sha256 = z.string().regex(/^[0-9a-f]{64}$/);

/** A path inside an archive: plain names between slashes, nothing that climbs or hides. */
export const ArchivePath = z
  .string()
  .max(200)
  .regex(/^[0-9A-Za-z_][0-9A-Za-z._ -]*(\/[0-9A-Za-z_][0-9A-Za-z._ -]*)*$/);

export const ManifestBase = z.looseObject({
  format: z.enum(ARCHIVE_FORMATS),
  formatVersion: z.int().min(1),
  /** Version of the Veilstep that made it. */
  madeBy: z.string().max(40),
  /** ISO 8601. */
  at: z.string().max(40),
  files: z
    .array(z.strictObject({ path: ArchivePath, sha256: Sha256, sizeBytes: z.int().min(0) }))
    .max(200_000),
});
export type ManifestBase = z.infer<typeof ManifestBase>;
