import { randomFillSync } from "node:crypto";

/** Random bytes are fetched for many ids at a time: the fetching is dear, the bytes are not. */
const pool = Buffer.alloc(10 * 256);
let at = pool.length;

/** A UUIDv7 (RFC 9562, 5.7): milliseconds first, so ids made later sort later; 74 random bits. */
export function uuidV7(nowMs: number): string {
  if (at === pool.length) {
    randomFillSync(pool);
    at = 0;
  }
  const random = pool.subarray(at, at + 10);
  at += 10;
  random[0] = 0x70 | (random[0]! & 0x0f);
  random[2] = 0x80 | (random[2]! & 0x3f);
  const time = Math.floor(nowMs).toString(16).padStart(12, "0");
  const rest = random.toString("hex");
  return `${time.slice(0, 8)}-${time.slice(8, 12)}-${rest.slice(0, 4)}-${rest.slice(4, 8)}-${rest.slice(8, 20)}`;
}
