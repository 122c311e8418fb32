import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import type { SessionSettings } from "../../../main/link/SessionTypes.ts";
import { encodeRecord, SPOOL_MAGIC } from "../../../main/link/spoolCodec.ts";
import { clamping, level } from "../../app/cycle/feed.ts";
import { usualPattern } from "../../support/gaugeLines.ts";
import { holdfast } from "./learnHoldfast.ts";

const folder = mkdtempSync(join(tmpdir(), "holdfast-cycles-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const file = (name: string, content: string | Uint8Array) => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

const kilonewtons = (forces: readonly number[]) =>
  forces.map((f) => `${(f / 1000).toFixed(3).padStart(8)} kN\r\n`).join("");
const three = [...clamping(14_320), ...clamping(14_260), ...clamping(14_290)];
const json = async (args: readonly string[], stdin?: string | Uint8Array) => {
  const { code, out, err } = await holdfast(["cycles", ...args, "--json"], stdin);
  expect([code, err]).toEqual([0, ""]);
  return JSON.parse(out);
};

describe("holdfast cycles", () => {
  it("turns a stream into cycles and a series, as the design names them", async () => {
    const found = await json([file("three.txt", kilonewtons(three)), "--rate", "100"]);
    expect(found).toMatchObject({ unit: "kN", unitChanges: [], rateHz: 100, samples: three.length, linesRejected: 0 });
    expect(found.pattern.fields.length).toBeGreaterThan(0);
    expect(found.cycles).toHaveLength(3);
    for (const [i, wanted] of [14_320, 14_260, 14_290].entries()) {
      const cycle = found.cycles[i];
      expect(Math.abs(cycle.settledN - wanted)).toBeLessThan(3);
      expect(cycle.settledUncertaintyN).toBeGreaterThan(0);
      expect(cycle.flags).toEqual([]);
      for (const name of ["startS", "endS", "peakN", "overshootPct", "noiseN", "creepPct", "zeroBeforeN", "zeroAfterN"])
        expect([name, typeof cycle[name]]).toEqual([name, "number"]);
      expect(cycle.overshootPct).toBeCloseTo((100 * (cycle.peakN - cycle.settledN)) / cycle.settledN, 9);
    }
    expect(found.series).toMatchObject({ n: 3, outliers: [] });
    expect(Math.abs(found.series.meanN - 14_290)).toBeLessThan(2);
    expect(Math.abs(found.series.rangeN - 60)).toBeLessThan(5);
  });

  it("reads standard input, and leaves times null when no rate is known", async () => {
    const found = await json(["-"], kilonewtons(clamping(14_320)));
    expect(found.rateHz).toBeNull();
    expect([found.cycles[0].startS, found.cycles[0].endS, found.cycles[0].creepPct]).toEqual([null, null, null]);
    expect(Math.abs(found.cycles[0].settledN - 14_320)).toBeLessThan(3);
  });

  it("takes the rate from the gauge's stamps before any other", async () => {
    const stamped = clamping(14_320)
      .map((f, i) => `${String(10 * i).padStart(7, "0")} ${f.toFixed(0).padStart(6)} N\r\n`)
      .join("");
    const found = await json(["-", "--rate", "50"], stamped);
    expect(found.rateHz).toBeCloseTo(100, 1);
    expect(found.cycles[0].startS).toBeCloseTo(2, 1);
  });

  it("follows a change of unit and names it", async () => {
    const pounds = clamping(14_000)
      .map((f) => `${(f / 4448.2216152605).toFixed(3).padStart(8)} kip\r\n`)
      .join("");
    const found = await json(["-", "--rate", "100"], kilonewtons(clamping(14_320)) + pounds);
    expect(found.unit).toBe("kN");
    expect(found.unitChanges).toEqual([{ atIndex: clamping(14_320).length, unit: "kip" }]);
    expect(found.cycles.map((c: { settledN: number }) => Math.round(c.settledN / 10) * 10)).toEqual([14_320, 14_000]);
  });

  it("says in words what it found", async () => {
    const { code, out } = await holdfast(["cycles", "-", "--rate", "100"], kilonewtons(three));
    expect(code).toBe(0);
    expect(out).toContain("14.320 kN");
    expect(out).toMatch(/Mean of 3 settled forces: 14\.29\d kN/);
    expect(out).toContain("trade knowledge");
    expect((await holdfast(["cycles", "-", "--rate", "100"], kilonewtons(level(0, 500)))).out).toContain(
      "No clamping found",
    );
  });

  it("reads by a pattern file, such as learn --json writes", async () => {
    const pattern = file(
      "pattern.json",
      JSON.stringify({ pattern: { version: 1, terminator: "LF", unit: "N", fields: [{ field: "force" }] } }),
    );
    const found = await json(
      ["-", "--pattern", pattern, "--rate", "100"],
      clamping(9_000)
        .map((f) => `${f.toFixed(0)}\n`)
        .join(""),
    );
    expect(Math.abs(found.cycles[0].settledN - 9_000)).toBeLessThan(3);
  });

  it("reads a spool with the pattern, rate and gaps that stand in it", async () => {
    const text = Buffer.from(
      clamping(14_320)
        .map((f) => `${(f / 1000).toFixed(2).padStart(9)} kN\r\n`)
        .join(""),
    );
    const settings: SessionSettings = {
      sessionId: "0198c0de-0000-7000-8000-000000000001",
      source: { kind: "simulated" },
      pattern: usualPattern,
      rateHz: 100,
    };
    const spool = Buffer.concat([
      SPOOL_MAGIC,
      encodeRecord({ kind: "header", settings, part: 0, atMs: 0, wallMs: 0 }),
      encodeRecord({ kind: "bytes", atMs: 1, bytes: text }),
      encodeRecord({ kind: "gap", atMs: 2, why: "vanished", lastedMs: 5 }),
      encodeRecord({ kind: "bytes", atMs: 3, bytes: text }),
    ]);
    const found = await json([file("recording.spool", spool)]);
    expect(found.rateHz).toBe(100);
    expect(found.cycles).toHaveLength(2);
  });
});

describe("wrong use or bad input ends with 2 and one line that says what to do", () => {
  const bare = clamping(9_000)
    .map((f) => `${f.toFixed(0)}\n`)
    .join("");
  it.each<[string, readonly string[], string, RegExp]>([
    ["an unknown unit", ["-", "--rate", "100"], bare, /--unit/],
    ["torque", ["-"], "  12.3 Nm\r\n".repeat(200), /torque/],
    ["no lines", ["-"], "", /no pattern/],
    ["a file that is not there", [join(folder, "missing.txt")], "", /cannot be read/],
    ["a capacity without unit", ["-", "--capacity", "30"], bare, /--capacity/],
    ["a capacity that is a torque", ["-", "--capacity", "30 Nm"], bare, /torque/],
    ["no rate", ["-", "--rate", "fast"], bare, /--rate/],
    ["a unit that is a torque", ["-", "--unit", "Nm"], bare, /torque/],
    ["two files", ["a", "b"], "", /one FILE/],
    ["an unknown option", ["--nonsense"], "", /nonsense/],
    ["a pattern file that holds none", ["-", "--pattern", file("none.json", "{}")], bare, /no line pattern/],
    [
      "a pattern without a unit",
      [
        "-",
        "--pattern",
        file("unitless.json", JSON.stringify({ version: 1, terminator: "LF", fields: [{ field: "force" }] })),
      ],
      bare,
      /--unit/,
    ],
  ])("%s", async (_, args, stdin, wanted) => {
    const { code, out, err } = await holdfast(["cycles", ...args], stdin);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(wanted);
    expect(err.trimEnd().split("\n")).toHaveLength(1);
  });

  it("but numbers with --unit are read", async () => {
    const found = await json(["-", "--rate", "100", "--unit", "N"], bare);
    expect(found.unit).toBe("N");
    expect(Math.abs(found.cycles[0].settledN - 9_000)).toBeLessThan(3);
  });
});
