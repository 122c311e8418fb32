import { describe, expect, it } from "vitest";
import { cautionSentence } from "../../../app/verdict/cautionSentence.ts";

describe("cautionSentence", () => {
  it("keeps a stopped spindle out of use and defers to the manual", () => {
    expect(cautionSentence("stop")).toMatch(/Do not use the spindle.*entitled.*manual and local rules/);
  });

  it("does not let an open answer pass for a good one", () => {
    expect(cautionSentence("cannotTell")).toMatch(/Not shown to be good/);
  });

  it("says nothing where nothing can be hurt by it", () => {
    expect([cautionSentence("good"), cautionSentence("watch"), cautionSentence("act")]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});
