import { randomFillSync } from "node:crypto";

const random = Buffer.alloc(10);

/** A UUIDv7 (RFC 9562, 5.7): milliseconds first, so ids made later sort later; 74 random bits. */
export function uuidV7(nowMs: number): string {
  randomFillSync(random);
  const time = Math.floor(nowMs).toString(16).padStart(12, "0");
  random[0] = 0x70 | (random[0]! & 0x0f);
  random[2] = 0x80 | (random[2]! & 0x3f);
  const rest = random.toString("hex");
  return `${time.slice(0, 8)}-${time.slice(8, 12)}-${rest.slice(0, 4)}-${rest.slice(4, 8)}-${rest.slice(8, 20)}`;
}
