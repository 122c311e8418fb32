import { describe, expect, it } from "vitest";
import { brokenByte, fitsParity, ParityStripper } from "../../../app/gauge/ParityStripper.ts";

function strip(parity: "even" | "odd" | "mark", bytes: readonly number[]): number[] {
  const clean: number[] = [];
  new ParityStripper(parity).strip(Uint8Array.from(bytes), (piece) => clean.push(...piece));
  return clean;
}

describe("ParityStripper", () => {
  it("takes the parity bit off", () => {
    // "1" is 0x31, three ones: even parity sets the eighth bit, odd leaves it.
    expect(strip("even", [0xb1, 0x33])).toEqual([0x31, 0x33]);
    expect(strip("odd", [0x31, 0xb3])).toEqual([0x31, 0x33]);
    expect(strip("mark", [0xb1])).toEqual([0x31]);
  });

  it("marks a byte that breaks the parity, and lets a line end still end its line", () => {
    expect(strip("even", [0x31, 0x8a])).toEqual([brokenByte, brokenByte, 0x0a]);
  });

  it("fits half of all bytes to either parity", () => {
    const all = Array.from({ length: 256 }, (_, byte) => byte);
    expect(all.filter((byte) => fitsParity(byte, "even")).length).toBe(128);
    expect(all.filter((byte) => fitsParity(byte, "odd") !== fitsParity(byte, "even")).length).toBe(256);
  });

  it("strips chunks larger than its block", () => {
    const chunk = Array.from({ length: 10_000 }, () => 0xb1);
    expect(strip("even", chunk)).toEqual(chunk.map(() => 0x31));
  });
});
