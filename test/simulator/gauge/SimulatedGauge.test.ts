import { describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { GaugeStream } from "../../../app/cycle/GaugeStream.ts";
import { learnPattern } from "../../../app/gauge/learnPattern.ts";
import { type LinePattern, linePatternSchema } from "../../../app/gauge/linePattern.ts";
import { fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { type GaugeOptions, usualGauge } from "../../../simulator/gauge/GaugeOptions.ts";
import { gaugeCommands, runGaugeCommand } from "../../../simulator/gauge/gaugeCommands.ts";
import { decimalsFor, lineFormatNames } from "../../../simulator/gauge/lineFormats.ts";
import { SimulatedGauge } from "../../../simulator/gauge/SimulatedGauge.ts";
import { Random } from "../../../simulator/physics/Random.ts";
import { clampings, usualPattern } from "../../support/gaugeLines.ts";

const gaugeWith = (options: Partial<GaugeOptions> = {}) => new SimulatedGauge({ ...usualGauge, ...options });
const text = (gauge: SimulatedGauge, n: number) => Buffer.from(gauge.advance(n)).toString("latin1");
const figures = (lines: string) => [...lines.matchAll(/(-?[\d.]+) kN/g)].map((m) => Number(m[1]) * 1_000);
const mean = (v: readonly number[]) => v.reduce((s, x) => s + x, 0) / v.length;

/** The usual lines with any count of decimals: what a switch of unit brings. */
const anyUnit: LinePattern = linePatternSchema.parse({
  ...usualPattern,
  fields: [{ field: "force", decimalMark: ".", width: 9 }, ...usualPattern.fields.slice(1)],
});

function cyclesIn(bytes: Uint8Array, pattern = usualPattern): Cycle[] {
  const cycles: Cycle[] = [];
  const stream = new GaugeStream({ pattern, rateHz: 100, capacityN: 30_000 }, { cycle: (c) => cycles.push(c) });
  stream.push(bytes);
  stream.end();
  return cycles;
}

/** Runs commands at their seconds and gives the bytes of the whole. */
function play(gauge: SimulatedGauge, seconds: number, at: Readonly<Record<number, string>>): Buffer {
  const parts: Uint8Array[] = [];
  for (let s = 0; s < seconds; s += 1) {
    if (at[s] !== undefined) runGaugeCommand(gauge, at[s]!);
    parts.push(gauge.advance(gauge.options.rateHz));
  }
  return Buffer.concat(parts);
}

describe("SimulatedGauge", () => {
  it("sends the same bytes for the same seed and commands, however they are asked for", () => {
    const at = { 2: "clamp", 4: "spike", 6: "release", 8: "corrupt 0.02" };
    const whole = play(gaugeWith({ seed: 9 }), 12, at);
    expect(play(gaugeWith({ seed: 9 }), 12, at).equals(whole)).toBe(true);
    expect(play(gaugeWith({ seed: 10 }), 12, at).equals(whole)).toBe(false);
    const piecemeal = gaugeWith({ seed: 9 });
    const random = new Random(1);
    const parts: Uint8Array[] = [];
    const { rateHz } = piecemeal.options;
    for (let s = 0; s < 12; s += 1) {
      const line = at[s as keyof typeof at];
      if (line !== undefined) runGaugeCommand(piecemeal, line);
      for (let n = 0; n < rateHz; ) {
        const step = Math.min(rateHz - n, 1 + random.below(30));
        parts.push(piecemeal.advance(step));
        n += step;
      }
    }
    expect(Buffer.concat(parts).equals(whole)).toBe(true);
  });

  it.each(lineFormatNames.filter((name) => name !== "heldMaximum"))(
    "sends lines of the kind %s that are learned and read to its truth",
    (format) => {
      const { bytes, gauge } = clampings(3, { format, seed: 3 });
      const learned = learnPattern(bytes, { unit: "kN", rateHz: 100 });
      if (learned.kind !== "learned") throw new Error(`not learned: ${JSON.stringify(learned)}`);
      const cycles: Cycle[] = [];
      const stream = new GaugeStream(
        { pattern: learned.pattern, rateHz: 100, capacityN: 30_000 },
        { cycle: (c) => cycles.push(c) },
      );
      stream.push(bytes);
      stream.end();
      expect(cycles).toHaveLength(3);
      for (const [i, { settledN }] of cycles.entries()) {
        expect(Math.abs(settledN! - gauge.truth[i]!.settledN)).toBeLessThan(10); // a step of its last digit
      }
      expect(learned.rejected).toBe(0);
    },
  );

  it("that holds its maximum shows the peak until it has been at rest", () => {
    const gauge = gaugeWith({ format: "heldMaximum" });
    gauge.advance(200);
    gauge.clamp(18_000);
    gauge.advance(300);
    gauge.release();
    const [held] = figures(text(gauge, 50)).slice(-1);
    expect(Math.abs(held! - gauge.truth[0]!.peakN)).toBeLessThan(60);
    const [cleared] = figures(text(gauge, 200)).slice(-1);
    expect(Math.abs(cleared!)).toBeLessThan(60);
  });

  it("shows its zero, its drift and its gain", () => {
    const gauge = gaugeWith({ zeroN: -200, driftNPerHour: 3_600, gain: 0.95, rateHz: 10 });
    expect(mean(figures(text(gauge, 20)))).toBeCloseTo(-199, -1);
    gauge.advance(80); // ten seconds: one newton a second
    gauge.clamp(10_000);
    gauge.advance(20);
    expect(Math.abs(mean(figures(text(gauge, 10))) - (9_500 - 200 + 12.5))).toBeLessThan(15);
  });

  it("shows some three thousand steps over its capacity in every unit", () => {
    for (const unit of ["N", "daN", "kN", "lbf", "kip", "kgf"] as const) {
      const steps = fromNewtons(30_000, unit) * 10 ** decimalsFor(30_000, unit);
      expect(steps).toBeGreaterThanOrEqual(3_000);
      expect(steps).toBeLessThanOrEqual(30_000);
    }
    expect(decimalsFor(30_000, "kN")).toBe(2);
    expect(decimalsFor(30_000, "N")).toBe(0);
  });

  it.each([{ rateHz: 0 }, { capacityN: -1 }, { forceN: 40_000 }, { format: "nope" }, { unit: "Nm" }])(
    "refuses %j",
    (wrong) => {
      expect(() => gaugeWith(wrong as Partial<GaugeOptions>)).toThrow(RangeError);
    },
  );
});

describe("faults on command", () => {
  const settled = (at: Readonly<Record<number, string>>, seconds = 30) =>
    cyclesIn(play(gaugeWith({ seed: 2 }), seconds, at));

  it("a broken spring, a tired pack and new springs change the next clamping", () => {
    const cycles = settled({
      2: "clamp",
      6: "release",
      8: "breakSpring 4",
      9: "clamp",
      13: "release",
      15: "newSprings",
      16: "clamp",
      20: "release",
    });
    expect(cycles).toHaveLength(3);
    const [before, broken, after] = cycles.map((c) => c.settledN!);
    expect(1 - broken! / before!).toBeCloseTo((4 * 2.5) / 120, 1);
    expect(after! / before!).toBeCloseTo(1, 1);
  });

  it("a dry gripper holds less, and greasing brings it back", () => {
    const cycles = settled({
      2: "clamp",
      6: "release",
      8: "dry",
      9: "clamp",
      13: "release",
      15: "grease",
      16: "clamp",
      20: "release",
    });
    const [before, dry, after] = cycles.map((c) => c.settledN!);
    expect(dry! / before!).toBeLessThan(0.85);
    expect(after! / before!).toBeGreaterThan(0.98);
  });

  it("a spike, a slip, residual force and an overload carry their flags", () => {
    expect(settled({ 2: "clamp", 5: "spike", 7: "release" })[0]!.flags).toContain("spike");
    expect(settled({ 2: "clamp", 5: "slip 4", 9: "release" })[0]!.flags).toContain("unstable");
    expect(settled({ 1: "residual 5", 2: "clamp", 6: "release" })[0]!.flags).toContain("notReleased");
    expect(settled({ 2: "overload 2" })[0]!.flags).toContain("overload");
  });

  it("a knock is no clamping", () => {
    expect(settled({ 2: "knock", 5: "clamp", 9: "release", 12: "knock" })).toHaveLength(1);
  });

  it("a switch of unit in mid-stream leaves the force where it is", () => {
    const at = { 2: "clamp", 4: "unit lbf", 8: "release", 11: "unit N", 12: "clamp", 16: "release" };
    const cycles = cyclesIn(play(gaugeWith({ seed: 2 }), 20, at), anyUnit);
    expect(cycles).toHaveLength(2);
    for (const { settledN } of cycles) expect(Math.abs(settledN! / 18_000 - 1)).toBeLessThan(0.02);
  });

  it("silence sends nothing while time goes on", () => {
    const gauge = gaugeWith();
    runGaugeCommand(gauge, "silent 2");
    expect(text(gauge, 200)).toBe("");
    expect(gauge.tS).toBe(2);
    expect(text(gauge, 1)).toMatch(/kN\r\n$/);
  });

  it("corruption hits the share of the bytes it was told", () => {
    const gauge = gaugeWith({ seed: 4 });
    runGaugeCommand(gauge, "corrupt 0.01");
    gauge.advance(20_000);
    const bytes = 20_000 * 14;
    expect(Math.abs(gauge.corruption.hits / bytes - 0.01)).toBeLessThan(5 * Math.sqrt(0.01 / bytes));
    runGaugeCommand(gauge, "corrupt 0");
    expect(text(gauge, 100)).toMatch(/^( *-?\d+\.\d\d kN\r\n){100}$/);
  });

  it.each(Object.keys(gaugeCommands))("%s answers in words", (name) => {
    const argument = name === "unit" ? " lbf" : "";
    expect(runGaugeCommand(gaugeWith(), name + argument)).toMatch(/\S/);
  });

  it.each(["dance", "", "clamp much", "clamp -1", "unit Nm", "corrupt 2", "__proto__"])("refuses %j", (line) => {
    expect(() => runGaugeCommand(gaugeWith(), line)).toThrow(RangeError);
  });
});
