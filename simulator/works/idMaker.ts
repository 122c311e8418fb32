import type { Random } from "../physics/Random.ts";

/** Repeatable UUIDs of version 7, each a millisecond after the one before. @see RFC 9562, 5.7 */
export function idMaker(startMs: number, random: Random): () => string {
  let ms = Math.floor(startMs);
  return () => {
    ms += 1;
    const time = ms.toString(16).padStart(12, "0");
    const hex = (digits: number) => Array.from({ length: digits }, () => random.below(16).toString(16)).join("");
    const variant = "89ab"[random.below(4)];
    return `${time.slice(0, 8)}-${time.slice(8)}-7${hex(3)}-${variant}${hex(3)}-${hex(12)}`;
  };
}
