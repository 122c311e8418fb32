import { describe, expect, it } from "vitest";
import { WedgeReader } from "../../../../renderer/ui/keys/WedgeReader.ts";

const scan = (reader: WedgeReader, text: string, startMs: number, stepMs: number) => {
  let at = startMs;
  for (const character of text) {
    reader.key(character, at);
    at += stepMs;
  }
  return reader.enter(at);
};

describe("WedgeReader", () => {
  it("takes a quick run ended by Enter for a label, blanks included", () => {
    const reader = new WedgeReader();
    expect(scan(reader, "Mill 3", 1_000, 10)).toBe("Mill 3");
  });

  it("takes slow typing for single keys and no label", () => {
    expect(scan(new WedgeReader(), "Mill 3", 1_000, 200)).toBeUndefined();
  });

  it("takes a key that stands alone for that key", () => {
    const reader = new WedgeReader();
    reader.key("z", 0);
    expect(reader.pause()).toBe("z");
    expect(reader.pause()).toBeUndefined();
  });

  it("gives no key for a run without Enter", () => {
    const reader = new WedgeReader();
    reader.key("d", 0);
    reader.key("r", 10);
    expect(reader.pause()).toBeUndefined();
  });

  it("knows whether a blank belongs to a label", () => {
    const reader = new WedgeReader();
    expect(reader.inRun(0)).toBe(false);
    reader.key("M", 10);
    expect([reader.inRun(20), reader.inRun(500)]).toEqual([true, false]);
  });
});
