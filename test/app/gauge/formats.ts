import { newtonsPerUnit } from "../../../app/quantity/forceUnits.ts";
import { framedFormats } from "./framedFormats.ts";
import { plainFormats } from "./plainFormats.ts";
import type { Format, Shown } from "./writing.ts";

export type { Format, Shown } from "./writing.ts";

/** Invented line formats, from trade knowledge. */
export const formats: readonly Format[] = [...plainFormats, ...framedFormats];

/** Figures of a quiet gauge and some clampings: deterministic, with noise of a step or two and small negative zeros. */
export function shownReadings(format: Format, count: number, seed = 1): Shown[] {
  const random = lcg(seed);
  const perUnit = newtonsPerUnit[format.unit];
  const show = (forceN: number) => (forceN / perUnit).toFixed(format.decimals).replace(/^-(0\.?0*)$/, "$1");
  let top = 0;
  return Array.from({ length: count }, (_, i) => {
    const tS = i / 50;
    const phase = tS % 4;
    const load = phase < 1.2 ? 0 : phase < 3.2 ? 17_600 * Math.min(1, (phase - 1.2) / 0.08) : 0;
    const forceN = load + (random() - 0.55) * 40 + (load > 17_000 ? 300 * Math.exp(-(phase - 1.28) * 30) : 0);
    const over = format.overs === true && phase > 1.3 && phase < 1.45;
    if (i % 200 === 0) top = forceN; // cleared at rest, once
    top = Math.max(top, forceN);
    return { fig: show(forceN), top: show(top), i, ms: i * 20, moving: phase > 1.18 && phase < 1.4, over };
  });
}

/** The stream of a format, whole. */
export function streamOf(format: Format, readings: readonly Shown[]): string {
  return readings
    .map((s) => (format.echo === undefined ? "" : format.echo + format.end) + format.line(s) + format.end)
    .join("");
}

export const bytesOfText = (text: string): Uint8Array => Uint8Array.from(text, (c) => c.charCodeAt(0));

/** A small linear congruential generator (from memory, the constants of Numerical Recipes): repeatable, good enough for noise. */
export function lcg(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
