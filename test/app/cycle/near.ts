import { expect } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";

export const near = (found: number | undefined, wanted: number, within: number) =>
  expect(Math.abs((found ?? Number.NaN) - wanted)).toBeLessThanOrEqual(within);

/** No figure that leaves the room is NaN or infinite. */
export function expectFinite(cycle: Cycle): void {
  JSON.stringify(cycle, (_, value) => {
    if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
    return value;
  });
}
