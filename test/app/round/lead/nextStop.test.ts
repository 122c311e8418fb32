import { describe, expect, it } from "vitest";
import { nextStop, type WalkStop } from "../../../../app/round/lead/nextStop.ts";

/** "." open, "d" done, "r" retired, "l" put off, "x" left out; spindles are called by their place. */
const walk = (marks: string): readonly WalkStop[] =>
  Object.freeze(
    [...marks].map((mark, i) =>
      Object.freeze({
        spindleId: String(i),
        done: mark === "d",
        retired: mark === "r",
        passed: mark === "l" ? ("later" as const) : mark === "x" ? ("leftOut" as const) : undefined,
      }),
    ),
  );

describe("nextStop", () => {
  it.each([
    ["begins at the first open stop", "d..", undefined, 1],
    ["goes on in walking order", "d..", "0", 1],
    ["goes on from where a jump has led, and round to the start", "..d.", "2", 3],
    ["takes what lies before a jump when the end is reached", ".ddd", "3", 0],
    ["passes over what is retired or left out", "drx.", "0", 3],
    ["comes back to what was put off when nothing else is open", "dldd", "3", 1],
    ["takes open stops before those put off", "l.d", "2", 1],
    ["turns among several put off, the one just left last", "ll", "0", 1],
    ["comes back to the only one put off at once", "dl", "1", 1],
    ["starts anew after a spindle that is no stop of the round", ".d.", "elsewhere", 0],
  ])("%s", (_, marks, from, next) => {
    expect(nextStop(walk(marks), from)).toBe(next);
  });

  it("ends when all is measured, left out or retired", () => {
    expect(nextStop(walk("dxr"), "0")).toBeUndefined();
    expect(nextStop([], undefined)).toBeUndefined();
  });
});
