import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LineDecoder } from "../../../app/gauge/LineDecoder.ts";
import { learnPattern } from "../../../app/gauge/learnPattern.ts";
import { collector } from "./collect.ts";
import { damagedStream } from "./damage.ts";
import { bytesOfText, shownReadings, streamOf } from "./formats.ts";
import { randomFormat } from "./randomFormat.ts";

/** These take seconds on a quiet machine and must not fail on a busy one. */
const longTest = 120_000;

const seeds = fc.integer({ min: 1, max: 1e6 });

describe("encode, learn, decode", () => {
  it("gives the numbers back exactly, for two thousand random formats, in any chunking", { timeout: longTest }, () => {
    fc.assert(
      fc.property(randomFormat, seeds, fc.integer({ min: 1, max: 9 }), (format, seed, size) => {
        const readings = shownReadings(format, 70, seed);
        const bytes = bytesOfText(streamOf(format, readings));
        const result = learnPattern(bytes, { unit: format.unit });
        if (result.kind !== "learned") throw new Error(result.reason);
        expect(result.decoded.map((line) => line.value)).toEqual(readings.map((s) => Number(s.fig) + 0));
        const whole = collector();
        new LineDecoder(result.pattern).push(bytes, whole.sink);
        const pieces = collector();
        const decoder = new LineDecoder(result.pattern);
        for (let at = 0; at < bytes.length; at += size) decoder.push(bytes.subarray(at, at + size), pieces.sink);
        expect(pieces.calls).toEqual(whole.calls);
      }),
      { numRuns: 2000 },
    );
  });

  it("loses no whole line of a stream of which one line in ten is damaged, and reads hardly a cut one", {
    timeout: longTest,
  }, () => {
    let cut = 0;
    let readCut = 0;
    let damaged = 0;
    let wrong = 0;
    let checked = 0;
    let passed = 0;
    fc.assert(
      fc.property(randomFormat, seeds, (format, seed) => {
        const { bytes, lines } = damagedStream(format, 200, 0.1, seed);
        const result = learnPattern(bytes);
        if (result.kind !== "learned") throw new Error(result.reason);
        expect(result.decoded.length).toBe(lines.length);
        lines.forEach((line, i) => {
          const got = result.decoded[i]!;
          if (line.whole) expect(got).toMatchObject({ value: line.value });
          else {
            const misread = got.state !== undefined && got.value !== line.value;
            damaged += 1;
            wrong += misread ? 1 : 0;
            cut += line.cut ? 1 : 0;
            readCut += line.cut && misread ? 1 : 0;
            checked += format.checked === true ? 1 : 0;
            passed += format.checked === true && misread ? 1 : 0;
          }
        });
      }),
      { numRuns: 250 },
    );
    expect(damaged).toBeGreaterThan(3000);
    // The formats without any width, whose number stands last, leave a few cut lines that look whole.
    expect(readCut / cut).toBeLessThan(0.005);
    expect(passed / checked).toBeLessThan(0.005);
    expect(wrong / damaged).toBeLessThan(0.02);
  });
});
