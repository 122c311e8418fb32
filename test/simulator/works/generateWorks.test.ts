import { beforeAll, describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { GaugeStream } from "../../../app/cycle/GaugeStream.ts";
import { linePatternSchema } from "../../../app/gauge/linePattern.ts";
import { id, instant } from "../../../app/ledger/fields.ts";
import { reference } from "../../../app/ledger/proof.ts";
import { adapter, gauge, serviceEvent, spindle, storedPattern, works } from "../../../app/ledger/register.ts";
import type { DemoCheck, DemoRecord as Generated } from "../../../simulator/works/DemoWorks.ts";
import { generateWorks } from "../../../simulator/works/generateWorks.ts";
import { HISTORY_DAYS, stories } from "../../../simulator/works/stories.ts";

const END = "2026-01-31";
const endMs = Date.parse(END);
const records = [...generateWorks(1, endMs)];
type BodyOf<K extends Generated["kind"]> = Extract<Generated, { kind: K }>["body"];
const bodies = <K extends Generated["kind"]>(kind: K) =>
  records.filter((r) => r.kind === kind).map((r) => r.body as BodyOf<K>); // the filter has just shown it

describe("generateWorks", () => {
  it("gives the same works for the same seed and end, and others for another seed", () => {
    expect(JSON.stringify([...generateWorks(1, endMs)])).toBe(JSON.stringify(records));
    expect(JSON.stringify([...generateWorks(2, endMs)])).not.toBe(JSON.stringify(records));
  });

  it("makes bodies the ledger takes", () => {
    const schemas = { works, gauge, adapter, spindle, serviceEvent, linePattern: storedPattern, reference };
    for (const record of records) {
      if (record.kind in schemas) schemas[record.kind as keyof typeof schemas].parse(record.body);
    }
    for (const { operatorId } of bodies("operator")) id.parse(operatorId);
    for (const { measuredAt } of bodies("check")) instant.parse(measuredAt);
  });

  it("refers only to what stands before, and uses no id twice", () => {
    const known = new Set<string>();
    const own = (value: string) => {
      expect(known.has(value)).toBe(false);
      known.add(value);
    };
    for (const { kind, body } of records) {
      if (kind === "check") {
        for (const used of [body.spindleId, body.adapterId, body.gaugeId, body.operatorId])
          expect(known.has(used)).toBe(true);
      } else if (kind === "serviceEvent") {
        own(body.eventId);
        expect(known.has(body.spindleId)).toBe(true);
      } else if (kind === "proof") {
        for (const used of [body.referenceId, body.gaugeId, body.operatorId]) expect(known.has(used)).toBe(true);
      } else own(Object.values(body).find((v) => typeof v === "string" && id.safeParse(v).success) as string);
    }
  });

  it("runs over three years, in order, at working hours of working days, and ends before its end", () => {
    const checks = bodies("check");
    const times = checks.map((c) => Date.parse(c.measuredAt));
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(times[0]).toBeGreaterThan(endMs - (HISTORY_DAYS + 1) * 86_400_000);
    expect(times[0]).toBeLessThan(endMs - (HISTORY_DAYS - 10) * 86_400_000);
    expect(times.at(-1)).toBeLessThan(endMs);
    for (const check of checks.filter((c) => c.reason === "routine")) {
      const local = new Date(Date.parse(check.measuredAt) + check.offsetMinutes * 60_000);
      expect(local.getUTCDay() % 6).not.toBe(0);
      expect(local.getUTCHours()).toBeGreaterThanOrEqual(8);
      expect(local.getUTCHours()).toBeLessThan(16);
    }
  });

  it("knows the works' wall clock as the time zone data do", () => {
    const zone = new Intl.DateTimeFormat("en", { timeZone: "Europe/Berlin", timeZoneName: "longOffset" });
    for (const check of bodies("check")) {
      const offset = zone.formatToParts(new Date(check.measuredAt)).find((p) => p.type === "timeZoneName")!.value;
      expect(offset).toBe(`GMT+0${check.offsetMinutes / 60}:00`);
    }
  });

  it("counts tool changes that never fall", () => {
    const last = new Map<string, number>();
    for (const { spindleId, counter } of bodies("check")) {
      expect(counter).toBeGreaterThanOrEqual(last.get(spindleId) ?? 0);
      last.set(spindleId, counter);
    }
  });
});

describe("the demo works as the program reads them", () => {
  const pattern = linePatternSchema.parse(bodies("linePattern")[0]!.pattern);
  const histories = new Map<string, { values: number[]; scatters: number[]; reasons: string[] }>();

  beforeAll(() => {
    const names = new Map<string, string>();
    const scales = new Map<string, number>();
    for (const { kind, body } of records) {
      if (kind === "spindle") names.set(body.spindleId, body.machine);
      if (kind === "adapter") scales.set(body.adapterId, body.scale);
      if (kind === "check") note(names.get(body.spindleId)!, body, scales.get(body.adapterId)!);
    }
  });

  function cyclesOf({ lines, rateHz, gaugeId }: DemoCheck): Cycle[] {
    const cycles: Cycle[] = [];
    const { capacityN } = bodies("gauge").find((g) => g.gaugeId === gaugeId)!;
    const stream = new GaugeStream({ pattern, rateHz, capacityN }, { cycle: (cycle) => cycles.push(cycle) });
    stream.push(Buffer.from(lines, "latin1"));
    stream.end();
    return cycles;
  }

  function note(machine: string, check: DemoCheck, scale: number): void {
    const { nominalN } = stories.find((s) => s.machine === machine)!;
    const cycles = cyclesOf(check);
    const forces = cycles.map((c) => (c.settledN! * scale) / nominalN);
    const mean = forces.reduce((sum, f) => sum + f, 0) / forces.length;
    const s = Math.sqrt(forces.reduce((sum, f) => sum + (f - mean) ** 2, 0) / (forces.length - 1));
    expect(forces.length).toBeGreaterThanOrEqual(4);
    expect(cycles.flatMap((c) => c.flags)).toEqual([]);
    const history = histories.get(machine) ?? { values: [], scatters: [], reasons: [] };
    history.values.push(mean);
    history.scatters.push(s / mean);
    history.reasons.push(check.reason);
    histories.set(machine, history);
  }

  const values = (machine: string) => histories.get(machine)!.values;
  const last = (machine: string) => values(machine).at(-1)!;

  it("hold at least fourteen measured spindles and one that never was", () => {
    expect(histories.size).toBeGreaterThanOrEqual(14);
    expect(stories.filter((s) => s.neverMeasured)).toHaveLength(1);
  });

  it("hold spindles that stay level", () => {
    for (const machine of ["Mill 1", "Mill 4", "Mill 11"]) {
      for (const v of values(machine)) expect(Math.abs(v - 1)).toBeLessThan(0.02);
    }
  });

  it("hold one whose springs tire slowly", () => {
    const v = values("Mill 2");
    expect(v.every((x, i) => i === 0 || x < v[i - 1]! + 0.02)).toBe(true);
    expect(last("Mill 2")).toBeGreaterThan(0.82);
    expect(last("Mill 2")).toBeLessThan(0.9);
  });

  it("hold one with broken springs: one step at once, level before and after", () => {
    const v = values("Mill 3");
    const steps = v.slice(1).map((x, i) => v[i]! - x);
    expect(steps.filter((d) => d > 0.03)).toHaveLength(1);
    expect(steps.filter((d) => Math.abs(d) > 0.025)).toHaveLength(1);
  });

  it("hold a gripper that runs dry (lower, more scatter) and is well again after greasing", () => {
    const { values: v, scatters, reasons } = histories.get("Mill 5")!;
    const before = reasons.indexOf("beforeService");
    expect(v[before]).toBeLessThan(0.88);
    expect(v[before + 1]).toBeGreaterThan(0.98);
    const worn = Math.max(...scatters.slice(before - 3, before + 1));
    expect(worn).toBeGreaterThan(2 * Math.max(...scatters.slice(0, 5)));
  });

  it("hold one with a value before and after its new springs", () => {
    const { values: v, reasons } = histories.get("Mill 6")!;
    const before = reasons.indexOf("beforeService");
    expect(reasons[before + 1]).toBe("afterService");
    expect(v[before + 1]! - v[before]!).toBeGreaterThan(0.1);
  });

  it("hold one below its minimum, and one so near that nobody can tell", () => {
    expect(last("Mill 7")).toBeLessThan(0.78);
    expect(Math.abs(last("Mill 10") - 0.85)).toBeLessThan(0.015);
  });

  it("hold a gauge gone off: what it measures falls together since one date, what others measure does not", () => {
    for (const machine of stories.filter((s) => s.gauge === "Gauge 2").map((s) => s.machine)) {
      const v = values(machine);
      expect(v.at(-3)! - v.at(-2)!).toBeGreaterThan(0.025);
      expect(Math.abs(v.at(-2)! - v.at(-1)!)).toBeLessThan(0.025);
    }
    for (const machine of ["Mill 1", "Mill 4", "Mill 11"]) {
      expect(Math.abs(values(machine).at(-3)! - values(machine).at(-2)!)).toBeLessThan(0.02);
    }
  });

  it("hold one check off and the next one back", () => {
    const v = values("Mill 12");
    const off = v.findIndex((x) => x < 0.94);
    expect(v.filter((x) => x < 0.97)).toHaveLength(1);
    expect(v[off + 1]).toBeGreaterThan(0.985);
  });
});
