import { describe, expect, it, vi } from "vitest";
import { StripBuffer } from "../../../renderer/state/StripBuffer.ts";

const shown = (strip: StripBuffer) =>
  Array.from({ length: strip.count }, (_, i) => [strip.t[strip.at(i)], strip.forceN[strip.at(i)]]);
const batch = (t: number[], forceN: number[]) => ({ t, forceN, timed: true });

describe("StripBuffer", () => {
  it("keeps every reading of an ordinary gauge in order", () => {
    const strip = new StripBuffer(100);
    strip.push(batch([0, 0.01], [1, 2]));
    strip.push(batch([0.02], [3]));
    expect(shown(strip)).toEqual([
      [0, 1],
      [0.01, 2],
      [0.02, 3],
    ]);
  });

  it("loses no peak of a fast gauge and holds four readings a stretch at most", () => {
    const strip = new StripBuffer(1_000);
    const t = Array.from({ length: 10_000 }, (_, i) => i / 10_000);
    const forceN = t.map((_, i) => (i === 4_321 ? 999 : i === 7_777 ? -999 : i % 7));
    for (let i = 0; i < t.length; i += 37) strip.push(batch(t.slice(i, i + 37), forceN.slice(i, i + 37)));
    const values = shown(strip).map(([, force]) => force);
    expect([Math.max(...(values as number[])), Math.min(...(values as number[]))]).toEqual([999, -999]);
    expect(strip.count).toBeLessThanOrEqual(126 * 4);
    expect(strip.lastT).toBe(t.at(-1));
  });

  it("gives the same however a stream is cut into batches", () => {
    const t = Array.from({ length: 500 }, (_, i) => i / 1_000);
    const forceN = t.map((v) => Math.sin(v * 40));
    const whole = new StripBuffer(2_000);
    whole.push(batch(t, forceN));
    const pieces = new StripBuffer(2_000);
    for (let i = 0; i < t.length; i += 3) pieces.push(batch(t.slice(i, i + 3), forceN.slice(i, i + 3)));
    expect(shown(pieces)).toEqual(shown(whole));
  });

  it("lets the oldest go when it is full", () => {
    const strip = new StripBuffer(4);
    strip.push(batch([0, 1, 2, 3, 4, 5], [0, 1, 2, 3, 4, 5]));
    expect(shown(strip).map(([t]) => t)).toEqual([2, 3, 4, 5]);
  });

  it("starts anew when the times go back, as another stream's do", () => {
    const strip = new StripBuffer(10);
    strip.push(batch([10, 11], [1, 1]));
    strip.push(batch([0], [2]));
    expect(shown(strip)).toEqual([[0, 2]]);
  });

  it("tells whoever listens once a batch, until the undo", () => {
    const strip = new StripBuffer(10);
    const heard = vi.fn();
    const undo = strip.subscribe(heard);
    strip.push(batch([0, 1], [1, 1]));
    undo();
    strip.push(batch([2], [1]));
    expect(heard).toHaveBeenCalledTimes(1);
  });
});

describe("cycles of the strip", () => {
  it("are forgotten with the stream they closed in", () => {
    const strip = new StripBuffer(10);
    strip.push(batch([10, 11], [1, 1]));
    strip.cycles.add("one");
    strip.push(batch([12], [1]));
    expect(strip.cycles.has("one")).toBe(true);
    strip.push(batch([0], [1]));
    expect(strip.cycles.has("one")).toBe(false);
  });
});
