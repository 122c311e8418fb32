import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";

async function holdfast(args: readonly string[], stdin: string | Uint8Array) {
  let out = "";
  let err = "";
  const code = await runCli(args, {
    stdin: Readable.from([Buffer.from(stdin)]),
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    env: {},
    signal: new AbortController().signal,
  });
  return { code, out, err };
}

const sound = { valueN: 17_920, standardUncertaintyN: 90, limits: { minimumN: 15_000 }, rule: "simple" };
const judged = async (input: unknown) => {
  const { code, out, err } = await holdfast(["judge", "--json"], JSON.stringify(input));
  expect([code, err]).toEqual([0, ""]);
  return JSON.parse(out);
};

describe("holdfast judge", () => {
  it("answers every key, null for what does not exist", async () => {
    expect(await judged(sound)).toEqual({
      verdict: "good",
      conformity: "conforming",
      zone: null,
      probabilityConforming: 1,
      dropFromBaseline: null,
      dropFromPrevious: null,
      reasons: ["The force of 17920 N meets the builder's limit of 15000 N."],
      neededStandardUncertaintyN: null,
    });
  });

  it("takes every key of the input", async () => {
    const answer = await judged({
      valueN: 16_000,
      standardUncertaintyN: 100,
      limits: { minimumN: 15_000, warningN: 15_500, nominalN: 18_000, maximumN: 22_000 },
      rule: "ilacG8",
      coverageFactor: 2,
      guardFactor: 1,
      threshold: 0.95,
      baselineN: 18_000,
      baselineStandardUncertaintyN: 100,
      baselineCorrelation: 0.5,
      previousN: 20_000,
      previousStandardUncertaintyN: 100,
      previousCorrelation: 0,
      cautionDrop: 0.1,
      actDrop: 0.2,
    });
    expect(answer).toMatchObject({ verdict: "act", conformity: "conforming", zone: "pass", dropFromPrevious: 0.2 });
    expect(answer.dropFromBaseline).toBeCloseTo(1 / 9, 14);
  });

  it("takes null for absent, and a null value for no valid force", async () => {
    const nothing = { minimumN: 15_000, warningN: null, nominalN: null, maximumN: null };
    expect(await judged({ ...sound, limits: nothing, baselineN: null, threshold: null })).toMatchObject({
      verdict: "good",
    });
    expect(await judged({ ...sound, valueN: null })).toMatchObject({
      verdict: "cannotTell",
      probabilityConforming: null,
    });
    expect(await judged({ valueN: 1, standardUncertaintyN: 1, rule: "simple" })).toMatchObject({
      verdict: "cannotTell",
      conformity: "undecided",
    });
  });

  it("widens the interval of a coverage given by few degrees of freedom", async () => {
    const close = { ...sound, valueN: 15_200, rule: "guarded" };
    expect(await judged(close)).toMatchObject({ verdict: "good" });
    expect(await judged({ ...close, degreesOfFreedom: 3 })).toMatchObject({ verdict: "stop" });
  });

  it("says what uncertainty would settle an open answer", async () => {
    const open = { ...sound, valueN: 15_100, rule: "iso14253" };
    const { verdict, neededStandardUncertaintyN } = await judged(open);
    expect(verdict).toBe("cannotTell");
    expect(neededStandardUncertaintyN).toBeCloseTo(100 / 1.645, 6);
    const { out } = await holdfast(["judge"], JSON.stringify(open));
    expect(out).toMatch(/^cannot tell\n.*settled with a standard uncertainty of 60.8 N or less/s);
  });

  it("reads a file and standard input by name, and prints for people without --json", async () => {
    const { code, out } = await holdfast(["judge", "-"], JSON.stringify({ ...sound, valueN: 14_000 }));
    expect(code).toBe(0);
    expect(out).toMatch(/^stop\n {2}The force of 14000 N lies below .*\nDo not use the spindle .*\n$/);
  });

  it("takes a byte-order mark", async () => {
    const { code } = await holdfast(["judge", "--json"], `\uFEFF${JSON.stringify(sound)}`);
    expect(code).toBe(0);
  });

  it.each<[string, string | Uint8Array, RegExp]>([
    ["no JSON", "value 18 kN", /not JSON/],
    ["an empty input", "", /not JSON/],
    ["16-bit text", Buffer.from(JSON.stringify(sound), "utf16le"), /not JSON/],
    ["NaN", '{"valueN": NaN}', /not JSON/],
    ["a list", "[]", /the input/],
    ["no value", JSON.stringify({ ...sound, valueN: undefined }), /valueN/],
    ["a value in words", JSON.stringify({ ...sound, valueN: "18 kN" }), /valueN/],
    ["an unfinite value", '{"valueN":1e999,"standardUncertaintyN":1,"limits":{},"rule":"simple"}', /valueN/],
    [
      "no uncertainty",
      JSON.stringify({ ...sound, standardUncertaintyN: undefined }),
      /standardUncertaintyN is missing/,
    ],
    ["uncertainty 0", JSON.stringify({ ...sound, standardUncertaintyN: 0 }), /standardUncertaintyN must be above 0/],
    [
      "a negative uncertainty",
      JSON.stringify({ ...sound, standardUncertaintyN: -1 }),
      /standardUncertaintyN must be above 0/,
    ],
    ["no rule", JSON.stringify({ ...sound, rule: undefined }), /rule/],
    ["an unknown rule", JSON.stringify({ ...sound, rule: "lenient" }), /rule/],
    ["a misspelt key", JSON.stringify({ ...sound, baseline: 3 }), /baseline, which does not belong/],
    ["a misspelt limit", JSON.stringify({ ...sound, limits: { minimum: 3 } }), /limits has minimum/],
    ["a limit in words", JSON.stringify({ ...sound, limits: { minimumN: "15 Nm" } }), /limits.minimumN/],
    [
      "minimum over maximum",
      JSON.stringify({ ...sound, limits: { minimumN: 3, maximumN: 2 } }),
      /minimumN 3 lies over limits.maximumN 2/,
    ],
    ["a threshold in percent", JSON.stringify({ ...sound, threshold: 95 }), /threshold/],
    ["a drop in percent", JSON.stringify({ ...sound, cautionDrop: 10 }), /cautionDrop/],
    ["a baseline of 0", JSON.stringify({ ...sound, baselineN: 0 }), /baselineN must be above 0/],
  ])("refuses %s with one line and exit code 2", async (_, stdin, says) => {
    const { code, out, err } = await holdfast(["judge", "--json"], stdin);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/^holdfast judge: [^\n]*\n$/);
    expect(err).toMatch(says);
  });

  it("refuses a file that is not there, a second file and an unknown option", async () => {
    for (const args of [
      ["judge", "no-such-file.json"],
      ["judge", "a.json", "b.json"],
      ["judge", "--loud"],
    ]) {
      expect((await holdfast(args, "")).code).toBe(2);
    }
  });
});
