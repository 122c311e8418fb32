import type { MemberFacts } from "./ZipMember.ts";

/** A member with its place in the archive. */
export type PlacedMember = MemberFacts & { readonly at: number };

const MAX_32 = 0xffff_ffff;
const MAX_16 = 0xffff;
/** Deflated; names in UTF-8. */
const DEFLATED = 8;
const UTF8_NAMES = 0x0800;
const VERSION = 45; // the one with 64-bit sizes

/**
 * The records of a zip archive, 64-bit where 32 do not suffice.
 * @see PKWARE APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12, 4.3.14 to 4.3.16, 4.5.3
 */
export function localHeader(member: MemberFacts, dosTime: number): Buffer {
  const name = Buffer.from(member.name, "utf8");
  const big = member.size > MAX_32 || member.packedSize > MAX_32;
  const extra = big ? wide([member.size, member.packedSize]) : Buffer.alloc(0);
  const head = Buffer.alloc(30);
  head.writeUInt32LE(0x04034b50, 0);
  common(head, 4, member, dosTime, big);
  head.writeUInt16LE(name.length, 26);
  head.writeUInt16LE(extra.length, 28);
  return Buffer.concat([head, name, extra]);
}

export function directoryEntry(member: PlacedMember, dosTime: number): Buffer {
  const name = Buffer.from(member.name, "utf8");
  const big = member.size > MAX_32 || member.packedSize > MAX_32;
  const far = member.at >= MAX_32;
  const wideFields = [...(big ? [member.size, member.packedSize] : []), ...(far ? [member.at] : [])];
  const extra = wideFields.length > 0 ? wide(wideFields) : Buffer.alloc(0);
  const entry = Buffer.alloc(46);
  entry.writeUInt32LE(0x02014b50, 0);
  entry.writeUInt16LE(VERSION, 4);
  common(entry, 6, member, dosTime, big);
  entry.writeUInt16LE(name.length, 28);
  entry.writeUInt16LE(extra.length, 30);
  entry.writeUInt32LE(far ? MAX_32 : member.at, 42);
  return Buffer.concat([entry, name, extra]);
}

/** What stands behind the directory; the wide form always, the narrow one says so where it does not suffice. */
export function directoryEnd(count: number, size: number, at: number): Buffer {
  const end64 = Buffer.alloc(56);
  end64.writeUInt32LE(0x06064b50, 0);
  writeWide(end64, 44, 4);
  end64.writeUInt16LE(VERSION, 12);
  end64.writeUInt16LE(VERSION, 14);
  for (const [i, value] of [count, count, size, at].entries()) writeWide(end64, value, 24 + 8 * i);
  const locator = Buffer.alloc(20);
  locator.writeUInt32LE(0x07064b50, 0);
  writeWide(locator, at + size, 8);
  locator.writeUInt32LE(1, 16);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(Math.min(count, MAX_16), 8);
  end.writeUInt16LE(Math.min(count, MAX_16), 10);
  end.writeUInt32LE(Math.min(size, MAX_32), 12);
  end.writeUInt32LE(Math.min(at, MAX_32), 16);
  return Buffer.concat(at + size >= MAX_32 || count >= MAX_16 ? [end64, locator, end] : [end]);
}

/** Date and time as the format has them: local, to two seconds. */
export function dosTimeOf(ms: number): number {
  const d = new Date(ms);
  const date = ((Math.max(d.getFullYear(), 1980) - 1980) << 9) | ((d.getMonth() + 1) << 5) | d.getDate();
  const time = (d.getHours() << 11) | (d.getMinutes() << 5) | (d.getSeconds() >> 1);
  return date * 0x10000 + time;
}

function common(to: Buffer, from: number, member: MemberFacts, dosTime: number, big: boolean): void {
  to.writeUInt16LE(big ? VERSION : 20, from);
  to.writeUInt16LE(UTF8_NAMES, from + 2);
  to.writeUInt16LE(DEFLATED, from + 4);
  to.writeUInt32LE(dosTime, from + 6);
  to.writeUInt32LE(member.crc, from + 10);
  to.writeUInt32LE(big ? MAX_32 : member.packedSize, from + 14);
  to.writeUInt32LE(big ? MAX_32 : member.size, from + 18);
}

function wide(values: readonly number[]): Buffer {
  const extra = Buffer.alloc(4 + 8 * values.length);
  extra.writeUInt16LE(0x0001, 0);
  extra.writeUInt16LE(8 * values.length, 2);
  for (const [i, value] of values.entries()) writeWide(extra, value, 4 + 8 * i);
  return extra;
}

const writeWide = (to: Buffer, value: number, at: number) => to.writeBigUInt64LE(BigInt(value), at);
