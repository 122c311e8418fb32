import { describe, expect, it } from "vitest";
import { taken, takenWhole } from "../../../app/numerics/taken.ts";

describe("taken", () => {
  it("takes values at positions, some twice, some never", () => {
    expect([...taken([5, 6, 7], [2, 0, 2])]).toEqual([7, 5, 7]);
    expect([...takenWhole(Uint32Array.of(5, 6, 7), [2, 0, 2])]).toEqual([7, 5, 7]);
    expect(taken([1], []).length).toBe(0);
  });
});
