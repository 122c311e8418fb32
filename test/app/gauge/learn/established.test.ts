import { describe, expect, it } from "vitest";
import { established, shared } from "../../../../app/gauge/learn/established.ts";

describe("established", () => {
  it("keeps what comes often or in a row, and drops what stands alone", () => {
    const column = [
      ...Array(40).fill("a"),
      "x",
      ...Array(30).fill("a"),
      "b",
      "b",
      "b",
      ...Array(20).fill("a"),
      "y",
      "a",
      "y",
      "a",
      "a",
      "a",
      "y",
    ];
    expect([...established(column).keys()]).toEqual(["a", "b"]);
  });

  it("keeps everything of a very short column", () => {
    expect([...established(["a", "b", "c"]).keys()].sort()).toEqual(["a", "b", "c"]);
  });
});

describe("shared", () => {
  it("answers what nearly all have, and nothing where opinions part", () => {
    expect(shared([1, 1, 1, 1, 2], 0.8)).toBe(1);
    expect(shared([1, 1, 2, 2], 0.8)).toBeUndefined();
    expect(shared([])).toBeUndefined();
  });
});
