import type { z } from "zod";
import type { check } from "../../app/ledger/check.ts";

type CheckBody = z.input<typeof check>;

/** A small generator of repeatable invented figures (mulberry32). */
export function invented(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** A UUIDv7 made of a number: the same one each time. */
export function idOf(n: number): string {
  const hex = n.toString(16).padStart(12, "0");
  return `01900000-0000-7000-8000-${hex}`;
}

/** A whole check as a measured series files it, with figures of full length; `over` replaces members. */
export function aCheck(over: Partial<CheckBody> & { seed?: number; cycleCount?: number } = {}): CheckBody {
  const { seed = 1, cycleCount = 3, ...rest } = over;
  const next = invented(seed);
  const between = (a: number, b: number) => a + next() * (b - a);
  const valueN = rest.valueN === undefined ? between(20_000, 25_000) : rest.valueN;
  const checkId = rest.checkId ?? idOf(seed * 1000);
  const compared = {
    checkId,
    valueN: between(20_000, 25_000),
    standardUncertaintyN: between(10, 100),
    correlation: 0.5,
  };
  return {
    checkId,
    spindleId: idOf(1),
    adapterId: idOf(2),
    gaugeId: idOf(3),
    operatorId: idOf(4),
    measuredAt: "2024-03-04T08:00:00.000Z",
    offsetMinutes: 60,
    source: "measured",
    reason: "routine",
    spindleWarm: true,
    temperatureC: 21.5,
    counter: 123_456,
    note: null,
    unit: "kN",
    rawLine: null,
    rateHz: 100,
    patternId: idOf(5),
    pattern: {
      name: "status, number, unit",
      fields: [
        { kind: "status", words: { ST: "stable", US: "unstable", OL: "overload" } },
        { kind: "number", width: 8, mark: "." },
        { kind: "unit" },
      ],
    },
    cycles: Array.from({ length: cycleCount }, (_, i) => aCycle(seed * 1000 + 1 + i, i, between)),
    series: {
      n: cycleCount,
      basis: "settled",
      meanN: valueN,
      sN: between(10, 90),
      rangeN: between(20, 200),
      outliers: [],
    },
    corrections: {
      curve: {
        version: 1,
        proofId: idOf(6),
        coefficients: [between(-2, 2), between(0.99, 1.01), between(-1e-7, 1e-7)],
        fromN: 0,
        toN: 50_000,
        uncertainty: [
          { atN: 5_000, relative: 0.002 },
          { atN: 50_000, relative: 0.0008 },
        ],
      },
      adapterScale: 1.002,
      adapterVersion: 2,
    },
    valueN,
    budget: aBudget(between),
    limits: { minimumN: 18_000, warningN: 20_000, nominalN: 24_000, maximumN: 32_000 },
    rule: { rule: "guarded", coverageFactor: 2 },
    cautionDrop: 0.1,
    actDrop: 0.2,
    baseline: compared,
    previous: compared,
    verdict: "good",
    conformity: "conforming",
    zone: null,
    probabilityConforming: between(0.9, 1),
    dropFromBaseline: between(0, 0.1),
    dropFromPrevious: between(0, 0.1),
    reasons: [{ code: "withinLimits", valueN: between(20_000, 25_000), expandedN: between(100, 200), limitN: 18_000 }],
    weakenedBy: [],
    warnings: [],
    gapsS: [],
    programVersion: "0.1.0",
    clockDoubtful: false,
    roundId: null,
    workOrder: null,
    ...rest,
  };
}

function aCycle(idNumber: number, i: number, between: (a: number, b: number) => number): CheckBody["cycles"][number] {
  return {
    cycleId: idOf(idNumber),
    startIndex: 1000 * i,
    endIndex: 1000 * i + 400,
    startS: 10 * i + between(0, 1),
    endS: 10 * i + 5 + between(0, 1),
    peakN: between(24_000, 30_000),
    peakIndex: 1000 * i + 20,
    settledN: between(20_000, 25_000),
    settledUncertaintyN: between(1, 10),
    settledWindow: { fromIndex: 1000 * i + 120, toIndex: 1000 * i + 320, n: 200, effectiveN: between(20, 190) },
    overshoot: between(0.01, 0.2),
    riseTimeS: between(0.01, 0.1),
    noiseN: between(1, 20),
    slopeNPerS: between(-3, 3),
    creep: between(-0.001, 0.001),
    zeroBeforeN: between(-10, 10),
    zeroAfterN: between(-10, 10),
    zeroN: between(-10, 10),
    flags: [],
    dropped: null,
    waveformHash: null,
  };
}

function aBudget(between: (a: number, b: number) => number): CheckBody["budget"] {
  const sources = ["repeatability", "holdNoise", "resolution", "zero", "gaugeProof", "adapter", "temperature"] as const;
  return {
    contributions: sources.map((source, i) => ({
      source,
      type: i === 0 ? ("A" as const) : ("B" as const),
      distribution: i === 0 ? ("t" as const) : ("rectangular" as const),
      standardN: between(1, 50),
      degreesOfFreedom: i === 0 ? 2 : null,
      assumed: i > 4,
    })),
    standardN: between(10, 100),
    degreesOfFreedom: between(10, 100),
    coverageFactor: 2,
    coverage: 0.95,
    expandedN: between(50, 200),
    dominant: "gaugeProof",
  };
}
