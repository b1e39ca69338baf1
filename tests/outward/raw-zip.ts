/**
 * A ZIP written by hand, so that it may be as wrong as a test wants it.
 *
 * Layout after PKWARE APPNOTE 6.3.3, sections 4.3.7, 4.3.12 and 4.3.16. CRC-32 is Node's own.
 */
import { crc32, deflateRawSync } from 'node:zlib';

export interface RawEntry {
  name: string;
  bytes: Uint8Array;
  /** Deflated instead of stored. */
  deflate?: boolean;
  /** Unix mode, for example 0o120777 for a link. */
  mode?: number;
  /** General purpose flags; 1 = encrypted. */
  flags?: number;
  /** What the lists say of its unpacked size; its true size when left out. */
  saidSize?: number;
  /** Place of the local header that the central list names; its own when left out. */
  saidPlace?: number;
}

export function rawZip(entries: readonly RawEntry[]): Buffer {
  const bodies: Buffer[] = [];
  const central: Buffer[] = [];
  let place = 0;
  for (const { name, bytes, deflate = false, mode = 0o100600, flags = 0, saidSize, saidPlace } of entries) {
    const packed = deflate ? deflateRawSync(bytes) : Buffer.from(bytes);
    const nameBytes = Buffer.from(name);
    const common = Buffer.alloc(26);
    common.writeUInt16LE(20, 0);
    common.writeUInt16LE(flags | 0x800, 2);
    common.writeUInt16LE(deflate ? 8 : 0, 4);
    common.writeUInt32LE(crc32(bytes), 10);
    common.writeUInt32LE(packed.length, 14);
    common.writeUInt32LE(saidSize ?? bytes.length, 18);
    common.writeUInt16LE(nameBytes.length, 22);
    const local = Buffer.concat([Buffer.from('PK\x03\x04', 'latin1'), common, nameBytes, packed]);
    const listed = Buffer.alloc(14);
    listed.writeUInt32LE((mode << 16) >>> 0, 6);
    listed.writeUInt32LE(saidPlace ?? place, 10);
    // The list names the version that made it (Unix) before what both headers share.
    central.push(Buffer.concat([Buffer.from('PK\x01\x02\x14\x03', 'latin1'), common, listed, nameBytes]));
    bodies.push(local);
    place += local.length;
  }
  const list = Buffer.concat(central);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 0, 'latin1');
  end.writeUInt16LE(entries.length, 8);
  end.writeUInt16LE(entries.length, 10);
  end.writeUInt32LE(list.length, 12);
  end.writeUInt32LE(place, 16);
  return Buffer.concat([...bodies, list, end]);
}
