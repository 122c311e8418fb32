import { describe, expect, it } from "vitest";
import { usualGauge } from "../../../simulator/gauge/GaugeOptions.ts";
import { runGaugeCommand } from "../../../simulator/gauge/gaugeCommands.ts";
import { SimulatedGauge } from "../../../simulator/gauge/SimulatedGauge.ts";
import { Random } from "../../../simulator/physics/Random.ts";
import { ReferenceInstrument, usualReference } from "../../../simulator/rig/ReferenceInstrument.ts";
import { RigLoad } from "../../../simulator/rig/RigLoad.ts";

describe("RigLoad", () => {
  it("ramps from where it stands, stands there but for two ten-thousandths, and goes back to nothing", () => {
    const rig = new RigLoad();
    rig.set(10, 5_000, 2);
    expect([rig.forceN(9), rig.forceN(10), rig.forceN(11), rig.forceN(12)]).toEqual([0, 0, 2_500, 5_000]);
    expect(rig.forceN(40)).toBeCloseTo(5_000 * (1 - 2e-4), 6);
    rig.set(11, 9_000, 1); // before it had arrived
    expect([rig.forceN(11), rig.forceN(11.5)]).toEqual([2_500, 5_750]);
    rig.set(20, 0, 0.5);
    expect(rig.forceN(30)).toBeCloseTo(0, 12);
  });
});

describe("the second instrument", () => {
  const options = { ...usualReference, rateHz: 20, jitterS: 0.1, capacityN: 30_000, noiseN: 0, zeroN: 0 };
  const lines = (bytes: Uint8Array) =>
    Buffer.from(bytes)
      .toString("latin1")
      .split("\r\n")
      .filter((l) => l !== "");

  it("sends each line once, in order, at its own rate, none early and none later than its jitter", () => {
    const second = new ReferenceInstrument(options, (tS) => 1_000 * tS, new Random(3));
    const seen: { readonly forceN: number; readonly atS: number }[] = [];
    for (let k = 0; k <= 1_000; k += 1)
      for (const line of lines(second.until(k / 100)))
        seen.push({ forceN: Number(line.trim().split(/\s+/)[0]), atS: k / 100 });
    // It stands under 1000 N for each second passed, so that a line tells when it was read.
    expect(seen.slice(0, 190).map((s) => s.forceN)).toEqual(Array.from({ length: 190 }, (_, i) => 50 * i));
    for (const { forceN, atS } of seen) {
      expect(atS - forceN / 1_000).toBeGreaterThanOrEqual(-1e-9);
      expect(atS - forceN / 1_000).toBeLessThanOrEqual(0.1 + 0.05 + 0.011); // jitter, held behind the line before, and the tick
    }
  });

  it("feels what the gauge feels: load and unload by command", () => {
    const gauge = new SimulatedGauge({ ...usualGauge, noiseN: 0, gain: 1.02 });
    const second = new ReferenceInstrument(options, (tS) => gauge.load.forceN(tS), new Random(1));
    expect(runGaugeCommand(gauge, "load 12000")).toContain("12000");
    gauge.advance(1_000);
    const referenceN = Number(lines(second.until(gauge.tS)).at(-1)!.trim().split(/\s+/)[0]);
    expect(referenceN).toBeCloseTo(12_000 * (1 - 2e-4), 0);
    expect(gauge.shownN / referenceN).toBeCloseTo(1.02, 4);
    runGaugeCommand(gauge, "unload");
    gauge.advance(200);
    expect(Number(lines(second.until(gauge.tS)).at(-1)!.trim().split(/\s+/)[0])).toBeCloseTo(0, 6);
  });

  it("refuses what cannot be, by name", () => {
    const make = (over: object) => () => new ReferenceInstrument({ ...options, ...over }, () => 0, new Random(1));
    expect(make({ rateHz: 0 })).toThrow(/reference-rate/);
    expect(make({ jitterS: 9 })).toThrow(/reference-jitter/);
    expect(make({ unit: "Nm" })).toThrow(/reference-unit/);
  });
});
