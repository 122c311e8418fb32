import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  decodeWaveform,
  encodeWaveform,
  encodeWaveformNow,
  sampleCountOf,
  type Waveform,
} from "../../../main/store/waveform.ts";
import { idOf, invented } from "../../support/aCheck.ts";

const cycleId = idOf(1);

function same(a: ArrayLike<number>, b: ArrayLike<number>): boolean {
  return a.length === b.length && Array.from(a).every((value, i) => Object.is(value, b[i]));
}

function comesBack(waveform: Waveform): number {
  const row = encodeWaveformNow(cycleId, waveform);
  const back = decodeWaveform(row.bytes);
  expect(same(back.forceN, waveform.forceN)).toBe(true);
  expect(back.fromIndex).toBe(waveform.fromIndex);
  if (waveform.time instanceof Float64Array) expect(same(back.time as Float64Array, waveform.time)).toBe(true);
  else expect(back.time).toEqual(waveform.time);
  expect(row.sampleCount).toBe(waveform.forceN.length);
  expect(sampleCountOf(row.bytes)).toBe(waveform.forceN.length);
  return row.bytes.length;
}

/** A hold at 100 Hz for six seconds in steps of 10 N, with noise: what a hand gauge sends. */
function aHold(): Float64Array {
  const next = invented(7);
  return Float64Array.from(
    { length: 600 },
    (_, i) => 10 * Math.round((24_000 * (1 - Math.exp(-i / 12)) + 60 * (next() - 0.5)) / 10),
  );
}

describe("a waveform", () => {
  it("comes back to the bit, whatever the numbers are", () => {
    const number = fc.oneof(
      fc.double(),
      fc.integer(),
      fc.constant(Number.NaN),
      fc.constant(-0),
      fc.constant(Number.POSITIVE_INFINITY),
    );
    const numbers = fc.array(number, { maxLength: 80 }).map((list) => Float64Array.from(list));
    fc.assert(
      fc.property(numbers, fc.nat(1e9), fc.constantFrom("none", "even", "stamped"), (forceN, fromIndex, how) => {
        const stamped = Float64Array.from(forceN, (_, i) => i / 50);
        const time = how === "none" ? undefined : how === "even" ? { startS: 0.1, stepS: 1 / 3 } : stamped;
        comesBack({ fromIndex, forceN, time });
      }),
      { numRuns: 400 },
    );
  });

  it.each([
    ["newtons", (v: number) => v],
    ["kilonewtons with two decimals", (v: number) => (Math.round(v / 10) / 100) * 1000],
    ["pounds-force made newtons", (v: number) => (Math.round(v / 4.448) / 1) * 4.4482216152605],
    ["kilograms-force with one decimal made newtons", (v: number) => (Math.round(v / 0.980665) / 10) * 9.80665],
  ])("of %s takes less than two bytes a reading", (_, unit) => {
    const forceN = aHold().map(unit);
    expect(comesBack({ fromIndex: 0, forceN, time: { startS: 0, stepS: 0.01 } })).toBeLessThan(2 * forceN.length);
  });

  it("keeps the gaps that rejected lines leave", () => {
    const forceN = aHold();
    for (const i of [0, 5, 6, 7, 300, 599]) forceN[i] = Number.NaN;
    expect(comesBack({ fromIndex: 3, forceN, time: undefined })).toBeLessThan(2 * forceN.length);
  });

  it("keeps single-precision readings", () => {
    comesBack({ fromIndex: 0, forceN: Float32Array.from(aHold(), (v) => v - Math.PI), time: undefined });
  });

  it("is the same compressed at once or beside", async () => {
    const waveform = { fromIndex: 0, forceN: aHold(), time: { startS: 0, stepS: 0.01 } };
    expect(await encodeWaveform(cycleId, waveform)).toEqual(encodeWaveformNow(cycleId, waveform));
  });

  it("is refused when its times do not fit its readings", () => {
    expect(() =>
      encodeWaveformNow(cycleId, { fromIndex: 0, forceN: new Float64Array(3), time: new Float64Array(2) }),
    ).toThrow(RangeError);
  });

  it("that is damaged is refused, and does no harm", () => {
    const { bytes } = encodeWaveformNow(cycleId, { fromIndex: 0, forceN: aHold(), time: undefined });
    expect(() => decodeWaveform(bytes.subarray(0, bytes.length - 8))).toThrow();
    expect(() => decodeWaveform(Buffer.from("no waveform at all"))).toThrow(RangeError);
    expect(sampleCountOf(new Uint8Array(3))).toBeUndefined();
    const next = invented(3);
    for (let i = 0; i < 300; i += 1) {
      const flipped = Uint8Array.from(bytes);
      flipped[Math.floor(next() * bytes.length)]! ^= 1 << Math.floor(next() * 8);
      try {
        decodeWaveform(flipped);
      } catch (cause) {
        expect(cause).toBeInstanceOf(Error);
      }
    }
  });
});
