import { describe, expect, it } from "vitest";
import { type LearnResult, learnPattern } from "../../../app/gauge/learnPattern.ts";
import { linePatternSchema } from "../../../app/gauge/linePattern.ts";
import { bytesOfText, type Format, formats, type Shown, shownReadings, streamOf } from "./formats.ts";

type Learned = Extract<LearnResult, { kind: "learned" }>;

function learned(text: string | Uint8Array, hints = {}): Learned {
  const result = learnPattern(typeof text === "string" ? bytesOfText(text) : text, hints);
  if (result.kind !== "learned") throw new Error(`${result.kind}: ${result.reason}`);
  return result;
}

const asked = (result: Learned) => result.undecided.map((open) => open.field).sort();

/** What a format's line means, told by the format and not by the program. */
function truthOf(format: Format, s: Shown): { value?: number; state: string } {
  if (s.over) return { state: "overload" };
  const text = format.held === true ? s.top : s.fig;
  const value = format.name === "exponent" ? Number(Number(text).toExponential(4)) : Number(text);
  return { value: value === 0 ? 0 : value, state: format.held === true ? "held" : "live" };
}

describe("learnPattern on a corpus of invented formats", () => {
  it("has at least forty of them", () => {
    expect(new Set(formats.map((format) => format.name)).size).toBeGreaterThanOrEqual(40);
  });

  it.each(formats.map((format) => [format.name, format] as const))("learns: %s", (_, format) => {
    const readings = shownReadings(format, 400);
    const result = learned(streamOf(format, readings));
    expect(result.rejected).toBe(0);
    const decoded = result.decoded.filter((line) => line.state !== undefined);
    expect(decoded.map(({ value, state }) => (value === undefined ? { state } : { value, state }))).toEqual(
      readings.map((s) => truthOf(format, s)),
    );
    const unitKnown = !format.asks?.includes("unit");
    for (const line of decoded)
      if (line.state !== "overload") expect(line.unit).toBe(unitKnown ? format.unit : undefined);
    // A rate that neither stamps nor the user tell has to be asked for, but where only maxima come.
    const rate = format.stamped === true || format.held === true ? [] : ["rate"];
    expect(asked(result)).toEqual([...(format.asks ?? []), ...rate].sort());
    expect(result.pattern.rateHz).toBe(format.rateHz);
    expect(JSON.stringify(result.pattern).includes('"checksum"')).toBe(format.checked === true);
    expect(result.confidence).toBeGreaterThan(0.9);
    expect(linePatternSchema.parse(JSON.parse(JSON.stringify(result.pattern)))).toEqual(result.pattern);
  });

  it("asks no more once unit and rate are told", () => {
    for (const format of formats) {
      const result = learned(streamOf(format, shownReadings(format, 300)), { unit: format.unit, rateHz: 50 });
      expect([format.name, asked(result)]).toEqual([format.name, []]);
    }
  });
});
