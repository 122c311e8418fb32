import { describe, expect, it } from "vitest";
import { readTaper } from "../../../app/verdict/readTaper.ts";
import { taperFit } from "../../../app/verdict/taperFit.ts";
import { tapers } from "../../../app/verdict/tapers.ts";

describe("tapers", () => {
  it("names each once, by open standards alone", () => {
    expect(new Set(tapers.map((t) => t.designation)).size).toBe(tapers.length);
    expect(new Set(tapers.map((t) => t.standard.split("-")[0]))).toEqual(
      new Set(["ISO 12164", "DIN 69893", "ISO 7388", "ISO 26623"]),
    );
  });

  // from memory: a flange of form B, D or F stands on the next smaller cone
  it("knows the smaller cone under the flange of forms B, D and F", () => {
    const cone = (designation: string) => tapers.find((t) => t.designation === designation)?.coneSize;
    expect([cone("HSK-A63"), cone("HSK-B63"), cone("HSK-F63"), cone("HSK-E50")]).toEqual([63, 50, 50, 50]);
  });
});

describe("readTaper", () => {
  it("finds each taper again by its own designation", () => {
    for (const taper of tapers) expect(readTaper(taper.designation)).toBe(taper);
  });

  it.each([
    ["hsk a 63", "HSK-A63"],
    ["HSK-A63", "HSK-A63"],
    ["HSK A-63", "HSK-A63"],
    ["HSK 63 A", "HSK-A63"],
    ["A63", "HSK-A63"],
    ["ISO 12164-1 A63", "HSK-A63"],
    ["DIN 69893-5 E 40", "HSK-E40"],
    ["ＨＳＫ－Ａ１００", "HSK-A100"],
    ["SK 40", "SK40"],
    ["iso40", "SK40"],
    ["7/24 No. 40", "SK40"],
    ["ISO 7388-1 AD 50", "SK50-AD"],
    ["DIN 69871 A 40", "SK40-A"],
    ["BT-30", "SK30-J"],
    ["MAS-BT 50", "SK50-J"],
    ["CAT 40", "SK40-U"],
    ["PSC 63", "PSC63"],
    ["ISO 26623-1 PSC 40", "PSC40"],
  ])("reads %s as %s", (text, designation) => {
    expect(readTaper(text)?.designation).toBe(designation);
  });

  it.each(["", "HSK", "HSK-A64", "HSK-Z63", "SK41", "PSC 64", "house taper 7", "63", "A", "💥"])(
    "does not read %j",
    (text) => {
      expect(readTaper(text)).toBeUndefined();
    },
  );
});

describe("taperFit", () => {
  it.each([
    ["HSK-A63", "hsk a 63", "fits"],
    ["HSK-A63", "HSK-A50", "doesNotFit"],
    ["HSK-A63", "SK40", "doesNotFit"],
    ["HSK-A63", "HSK-E63", "unsure"],
    ["HSK-A50", "HSK-F63", "unsure"],
    ["HSK-A63", "HSK-F63", "doesNotFit"],
    ["SK40", "BT40", "unsure"],
    ["SK40", "SK50", "doesNotFit"],
    ["PSC63", "PSC 63", "fits"],
    ["house taper 7", "House-Taper 7", "fits"],
    ["house taper 7", "HSK-A63", "unsure"],
    ["", "", "unsure"],
  ] as const)("says of a spindle %j and an adapter %j: %s", (spindle, adapter, fit) => {
    expect(taperFit(spindle, adapter)).toBe(fit);
  });
});
