import { describe, expect, it } from "vitest";
import { levelsOf } from "../../../../app/proof/data/levelsOf.ts";
import { netReadings } from "../../../../app/proof/data/netReadings.ts";
import type { ProofReading } from "../../../../app/proof/data/ProofReading.ts";
import { type ProofRemark, remarkSentence } from "../../../../app/proof/data/ProofRemark.ts";
import { seriesOf } from "../../../../app/proof/data/seriesOf.ts";
import { zeroAndCreep } from "../../../../app/proof/data/zeroAndCreep.ts";

const row = (reference: number, more: Partial<ProofReading> = {}): ProofReading => ({
  reference,
  indication: reference,
  direction: "up",
  run: undefined,
  step: undefined,
  positionDeg: undefined,
  ...more,
});
const zero = (direction: ProofReading["direction"], indication: number, run?: string) =>
  row(0, { direction, indication, run });

describe("levelsOf", () => {
  it("joins loads within 1 % of the greatest, and does not chain evenly spread ones", () => {
    expect(levelsOf([10, 10.05, 20, 19.9, 30, 30.2].map((v) => row(v)))).toEqual([0, 0, 1, 1, 2, 2]);
    const dense = levelsOf(Array.from({ length: 201 }, (_, i) => row(i)));
    expect(new Set(dense).size).toBe(67); // 200 wide, steps of 2 are one level: three loads each
  });

  it("joins loads of one step label within 5 %", () => {
    expect(levelsOf([row(10, { step: "1" }), row(11, { step: "1" }), row(30, { step: "2" })])).toEqual([0, 0, 1]);
  });

  it("is not misled by labels that count rows up and down", () => {
    const rows = [row(10, { step: "1" }), row(20, { step: "2" }), row(20, { step: "3" }), row(10, { step: "4" })];
    expect(levelsOf(rows)).toEqual([0, 1, 1, 0]);
    expect(levelsOf([row(10, { step: "1" }), row(30, { step: "1" })])).toEqual([0, 1]);
  });

  it("has no level for no reading", () => {
    expect(levelsOf([])).toEqual([]);
  });
});

describe("netReadings", () => {
  const labels = (rows: readonly ProofReading[]) =>
    netReadings(rows).map((r) => r.loads.map((l) => l.reading.reference));

  it("keeps runs by their label, in any order of rows", () => {
    const rows = [row(10, { run: "a" }), row(10, { run: "b" }), row(20, { run: "a" }), row(20, { run: "b" })];
    expect(labels(rows)).toEqual([
      [10, 20],
      [10, 20],
    ]);
  });

  it.each([
    [
      "a load that starts again",
      [row(10), row(20), row(10), row(20)],
      [
        [10, 20],
        [10, 20],
      ],
    ],
    ["a turn of the gauge", [row(10, { positionDeg: 0 }), row(20, { positionDeg: 90 })], [[10], [20]]],
    ["a new zero", [row(10), zero("zeroAfter", 0), zero("zeroBefore", 0), row(20)], [[10], [20]]],
    ["a rise after falling loads", [row(10), row(20), row(10, { direction: "down" }), row(15)], [[10, 20, 10], [15]]],
  ])("cuts unlabelled readings at %s", (_, rows, want) => {
    expect(labels(rows)).toEqual(want);
  });

  it("keeps one label at two positions apart", () => {
    expect(labels([row(10, { run: "1", positionDeg: 0 }), row(10, { run: "1", positionDeg: 120 })])).toEqual([
      [10],
      [10],
    ]);
  });

  it("takes off each run's zero, else the last one, else none", () => {
    const rows = [
      zero("zeroBefore", 0.5, "1"),
      row(10, { run: "1" }),
      row(10, { run: "2" }),
      zero("zeroBefore", 0.2, "3"),
      row(10, { run: "3" }),
    ];
    expect(netReadings(rows).map((r) => r.loads[0]!.net)).toEqual([9.5, 9.5, 9.8]);
    expect(netReadings([row(10)])[0]).toMatchObject({ zero: undefined, loads: [{ net: 10 }] });
  });
});

describe("seriesOf", () => {
  it("sorts a run by direction and load", () => {
    const rows = [
      row(10),
      row(20),
      row(30),
      row(20, { direction: "down", indication: 20.1 }),
      row(10, { direction: "down", indication: 10.1 }),
    ];
    const { series } = seriesOf(netReadings(rows));
    expect(series[0]!.up.map((p) => p.net)).toEqual([10, 20, 30]);
    expect(series[0]!.down.map((p) => [p.level, p.net])).toEqual([
      [0, 10.1],
      [1, 20.1],
    ]);
  });

  it("remarks falls, doubles and a zero that is missing", () => {
    const rows = ["1", "1", "1", "1"].map((run, i) => row([10, 30, 20, 20][i]!, { run }));
    expect(seriesOf(netReadings(rows)).remarks).toEqual<ProofRemark[]>([
      { code: "loadOutOfOrder", about: "run 1, 20 after 30" },
      { code: "loadTwice", about: "run 1, 20" },
      { code: "zeroMissing" },
    ]);
  });

  it("gives every remark a sentence with its figure", () => {
    expect(remarkSentence({ code: "needsReadings", about: "12 of 30" })).toContain(": 12 of 30");
    expect(remarkSentence({ code: "zeroMissing" })).not.toContain("#");
  });
});

describe("zeroAndCreep", () => {
  const ends = (rows: readonly ProofReading[]) => zeroAndCreep(seriesOf(netReadings(rows)).series);

  it("takes the greatest change of zero, with its sign, of the greatest first deflection", () => {
    const rows = [
      zero("zeroBefore", 0, "1"),
      row(20, { run: "1" }),
      zero("zeroAfter", 0.01, "1"),
      zero("zeroBefore", 0, "2"),
      row(20, { run: "2" }),
      zero("zeroAfter", -0.02, "2"),
    ];
    expect(ends(rows).f0).toBeCloseTo(-0.1, 12);
  });

  it("takes the first zero and the last where no series has both", () => {
    expect(
      ends([zero("zeroBefore", 0, "1"), row(20, { run: "1" }), row(20, { run: "2" }), zero("zeroAfter", 0.02, "2")]).f0,
    ).toBeCloseTo(0.1, 12);
  });

  it("knows neither without their readings, or without a load", () => {
    expect(ends([row(20)])).toEqual({ f0: undefined, c: undefined });
    expect(ends([zero("zeroBefore", 0), zero("zeroAfter", 1)])).toEqual({ f0: undefined, c: undefined });
    expect(ends([])).toEqual({ f0: undefined, c: undefined });
  });

  it("takes the creep without its sign", () => {
    expect(
      ends([
        row(20),
        row(20, { direction: "creep30", indication: 20.01 }),
        row(20, { direction: "creep300", indication: 20 }),
      ]).c,
    ).toBeCloseTo(0.05, 9);
  });
});
