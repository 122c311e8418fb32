import { describe, expect, it } from "vitest";
import { WrongTries } from "../../../main/people/WrongTries.ts";

describe("wrong tries", () => {
  it("are free twice, then cost half a minute, doubling up to a quarter of an hour", () => {
    let nowMs = 0;
    const tries = new WrongTries(() => nowMs);
    const waits: number[] = [];
    for (let i = 0; i < 9; i += 1) {
      tries.tried("a");
      waits.push(tries.waitMs("a") / 1000);
      nowMs += tries.waitMs("a");
    }
    expect(waits).toEqual([0, 0, 30, 60, 120, 240, 480, 900, 900]);
    expect(tries.waitMs("a")).toBe(0);
    expect(tries.waitMs("b")).toBe(0);
  });

  it("are forgotten after a right one", () => {
    const tries = new WrongTries(() => 0);
    for (let i = 0; i < 5; i += 1) tries.tried("a");
    tries.forget("a");
    tries.tried("a");
    expect(tries.waitMs("a")).toBe(0);
  });
});
