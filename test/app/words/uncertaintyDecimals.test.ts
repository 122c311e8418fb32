import { describe, expect, it } from "vitest";
import { uncertaintyDecimals } from "../../../app/words/uncertaintyDecimals.ts";

describe("uncertaintyDecimals", () => {
  it.each([
    [0.087, 2],
    [0.17, 2],
    [0.38, 2],
    [0.6, 1],
    [12, 0],
    [0.00001, 4],
  ])("gives %f its decimals, %i", (expanded, decimals) => {
    expect(uncertaintyDecimals(expanded)).toBe(decimals);
  });
});
