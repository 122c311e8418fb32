import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import changePoints from "../../published/change-point-tests.json" with { type: "json" };
import cusum from "../../published/nist-cusum.json" with { type: "json" };
import ewma from "../../published/nist-ewma.json" with { type: "json" };
import trends from "../../published/trend-tests.json" with { type: "json" };
import { rippled } from "../../support/spindleHistory.ts";

async function trend(csv: string, ...args: readonly string[]) {
  let [out, err] = ["", ""];
  const code = await runCli(["trend", "-", ...args], {
    stdin: Readable.from([new TextEncoder().encode(csv)]),
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
    env: {},
    signal: new AbortController().signal,
  });
  return { code, out, err, json: () => JSON.parse(out) };
}

const json = async (csv: string, ...args: readonly string[]) => (await trend(csv, "--json", ...args)).json();
const column = (values: readonly number[], name = "value") => [name, ...values, ""].join("\n");
const table = (x: readonly (number | string)[], values: readonly number[], head = "x,value") =>
  [head, ...values.map((v, i) => `${x[i]},${v}`), ""].join("\n");
const dates = (n: number, everyDays = 90) =>
  Array.from({ length: n }, (_, i) =>
    new Date(Date.UTC(2031, 0, 10) + i * everyDays * 86_400_000).toISOString().slice(0, 10),
  );
const falling = rippled(12, 0.08, (i) => 18 - 0.06 * i).map((v) => Number(v.toFixed(3)));

describe("holdfast trend --json", () => {
  // trend-tests.json: river, sediment, precipitation, sodium by uneven times (EPA 530/R-09-007, example 17-7).
  it.each(trends.cases.filter((c) => "slope" in c.expected.recomputed))("meets $name from the file on", async (c) => {
    const { values, times } = c.inputs;
    const got = await json(times === undefined ? column(values) : table(times, values));
    const want = c.expected.recomputed;
    expect(got.n).toBe(values.length);
    expect(got.mannKendall).toMatchObject({
      s: want.S,
      varS: expect.closeTo(want.VarS!, 8),
      z: expect.closeTo(want.z!, 9),
    });
    expect(got.mannKendall.pNormal / want.p_two_sided!).toBeCloseTo(1, 9);
    expect(got.mannKendall.tauB).toBeCloseTo(want.tau_b!, 9);
    expect(got.theilSen).toMatchObject({ slope: expect.closeTo(want.slope!, 9), confidence: 0.95 });
    expect(got.theilSen.low).toBeCloseTo(want.lower_interpolated!, 9);
    expect(got.theilSen.highRounded).toBeCloseTo(want.upper_rounded_rank!, 9);
  });

  it("counts p out for ten values and takes the normal distribution above", async () => {
    const sodium = trends.cases.find((c) => c.name.startsWith("sodium"))!;
    const got = await json(table(sodium.inputs.times!, sodium.inputs.values));
    expect(got.mannKendall).toMatchObject({ method: "exact", p: expect.closeTo(0.0286, 4) });
    expect(got.theilSen.intercept).toBeCloseTo(sodium.expected.recomputed.intercept!, 9);
  });

  // change-point-tests.json: places as published.
  it.each(changePoints.cases)("puts the change of $name where it was published", async (c) => {
    const got = await json(column(c.inputs.values));
    const position = c.expected.published.position!;
    expect(got.changePoints).toMatchObject([{ index: position, x: position }]);
    expect(got.pettitt.index).toBe(position);
    const { size, low, high } = got.changePoints[0];
    expect(low < size && size < high).toBe(true);
  });

  it("meets the e-Handbook's EWMA (nist-ewma.json) with the options it names", async () => {
    const { values, start, sd, lambda } = ewma.inputs;
    const args = ["--lambda", `${lambda}`, "--target", `${start}`, "--sigma", `${sd}`];
    const steady = (await json(column(values), ...args, "--chart-limits", "steady")).ewma;
    expect(steady).toMatchObject({ lambda, center: start, sigma: sd });
    for (const [i, want] of ewma.expected.recomputed.ewma.entries()) expect(steady.values[i]).toBeCloseTo(want, 9);
    expect(steady.upper[0]).toBeCloseTo(ewma.expected.recomputed.ucl_asymptotic, 9);
    const startup = (await json(column(values), ...args)).ewma;
    expect(startup.upper[0] - start).toBeCloseTo(ewma.expected.recomputed.exact_half_width_by_point[0]!, 7);
  });

  it("meets the e-Handbook's CUSUM (nist-cusum.json), sums and limits in units of sigma", async () => {
    const { group_means: values, target, sd_of_means: sigma, h } = cusum.inputs;
    const got = (await json(column(values), "--target", `${target}`, "--sigma", `${sigma}`, "--h", `${h / sigma}`))
      .cusum;
    expect(got).toMatchObject({ k: 0.5, target, sigma, signals: cusum.expected.published.signals });
    for (const [i, want] of cusum.expected.recomputed.upper_sum.entries())
      expect(got.high[i] * sigma).toBeCloseTo(want, 8);
  });

  it("takes target from the mean and sigma from the mean moving range, k 0.5, h 5, lambda 0.2", async () => {
    const got = await json(column([10, 12, 11, 13, 12]));
    expect(got.cusum).toMatchObject({
      k: 0.5,
      h: 5,
      target: expect.closeTo(11.6, 12),
      sigma: expect.closeTo(1.5 / 1.128, 12),
    });
    expect(got.ewma).toMatchObject({ lambda: 0.2, center: expect.closeTo(11.6, 12) });
    expect(got.ewma.values[0]).toBeCloseTo(0.2 * 10 + 0.8 * 11.6, 12);
  });

  it("counts days since the first row, sorts by date, and forecasts in the column's unit", async () => {
    const rows = dates(12).map((d, i) => `${d},${falling[i]}`);
    const got = await json(
      ["date,force_kN", ...rows.reverse(), ""].join("\n"),
      "--limit",
      "16.5 kN",
      "--limit",
      "1650 daN",
    );
    expect(got).toMatchObject({ unit: "kN", x: { kind: "date", first: "2031-01-10T00:00:00.000Z", lastX: 990 } });
    expect(got.theilSen.slope * 90).toBeCloseTo(-0.06, 2);
    const [one, other] = got.forecast;
    expect(one).toMatchObject({ limit: 16.5, state: "crosses", confidence: 0.9, given: "16.5 kN" });
    expect(other.limit).toBeCloseTo(16.5, 12);
    expect(one.low < one.at && one.at < one.high).toBe(true);
    expect(one.at).toBeCloseTo((16.5 - got.theilSen.intercept) / got.theilSen.slope, 6);
    expect(Date.parse(one.atDate)).toBe(Date.UTC(2031, 0, 10) + Math.trunc(one.at * 86_400_000));
  });

  it("starts a new segment at a row whose events cell is not empty, and forecasts from it", async () => {
    const values = [...falling, ...rippled(8, 0.05, (i) => 19 - 0.03 * i)];
    const rows = dates(20).map((d, i) => `${d},${values[i]!.toFixed(3)},${i === 12 ? "new springs" : ""}`);
    const csv = ["date,force_kN,service", ...rows, ""].join("\n");
    const got = await json(csv, "--events", "service", "--limit", "18.3 kN");
    expect(got.segments).toEqual([
      { first: 1, last: 12, startedBy: "first" },
      { first: 13, last: 20, startedBy: "service" },
    ]);
    expect(got.n).toBe(20);
    expect(got.mannKendall.s).toBe((await json(csv)).mannKendall.s);
    expect(got.forecast[0].state).toBe("crosses");
    expect(got.forecastRows).toBe(8);
  });

  it("gives the same slope by milliseconds since 1970 as by days, to 1e-9", async () => {
    const ms = dates(12).map((d) => Date.parse(d));
    const byMs = (await json(table(ms, falling, "ms,force_kN"), "--x", "ms")).theilSen;
    const byDate = (await json(table(dates(12), falling, "date,force_kN"))).theilSen;
    expect(Math.abs((byMs.slope * 86_400_000) / byDate.slope - 1)).toBeLessThan(1e-9);
  });

  it("takes the columns it is told, else the first date and the first number", async () => {
    const csv = "name,reading_daN,when,other_kN\na,1790,2031-01-10,1\nb,1780,2031-02-10,2\nc,1770,2031-03-10,3\n";
    expect(await json(csv)).toMatchObject({ valueColumn: "reading_daN", unit: "daN", x: { column: "when" } });
    expect(await json(csv, "--value", "other_kN", "--x", "reading_daN")).toMatchObject({
      valueColumn: "other_kN",
      x: { column: "reading_daN", kind: "number", firstX: 1770 },
    });
  });

  it.each([
    ["one value", [17.9], "cannotTell"],
    ["two values", [17.9, 17.8], "cannotTell"],
    ["all equal", [17.9, 17.9, 17.9, 17.9, 17.9], "notWithinTenYears"],
  ])("answers %s", async (_, values, state) => {
    const got = await json(table(dates(values.length), values, "date,force_kN"), "--limit", "15.3 kN");
    expect(got).toMatchObject({ n: values.length, changePoints: [], forecast: [{ state }] });
    expect(got.mannKendall).toMatchObject({ s: values.length === 2 ? -1 : 0, p: 1 });
  });

  it("answers one date, a gap of years, and a unit mixed in", async () => {
    const values = [17.9, 17.8, 17.7, 17.9, 17.8];
    const codes = async (csv: string) => (await json(csv)).notes.map((n: { code: string }) => n.code);
    expect(await codes(table(dates(5, 0), values, "date,force_kN"))).toContain("oneX");
    expect(await codes(table(dates(5, 800), values, "date,force_kN"))).toContain("longGap");
    expect(await codes(table(dates(5), [17.9, 17.8, 1770, 17.9, 17.8], "date,force_kN"))).toContain("unitMixed");
  });

  it("takes 200,000 rows", async () => {
    const values = rippled(200_000, 80, (i) => 18_000 - 0.005 * i);
    const got = await json(column(values, "force_N"), "--limit", "15 kN");
    expect(got.n).toBe(200_000);
    expect(got.theilSen.slope).toBeCloseTo(-0.005, 5);
    expect(got.forecast[0]).toMatchObject({ limit: 15_000, state: "crosses" });
  });
});

describe("holdfast trend for people", () => {
  it("says what moves, how surely, and when the limit is reached", async () => {
    const got = await trend(table(dates(12), falling, "date,force_kN"), "--limit", "16.5 kN", "--limit", "19 kN");
    expect(got.code).toBe(0);
    expect(got.out).toMatch(/^12 values of force_kN in kN, by date$/m);
    expect(got.out).toMatch(/^Slope -0\.000\d+ kN a day \(95 % .* to .*\)$/m);
    expect(got.out).toMatch(/^Mann-Kendall: S = -\d+.*: falling$/m);
    expect(got.out).toMatch(/^Limit 16\.5 kN: reached 203\d-\d\d-\d\d, 90 % 203\d.* to 20\d\d/m);
    expect(got.out).toMatch(/^Limit 19 kN: already there$/m);
    expect(got.out).not.toMatch(/NaN|undefined|null/);
  });

  it.each([
    ["one value", [17.9], "One value makes no trend."],
    ["four values", [18, 17.9, 17.8, 17.7], "so few values can never prove a trend at 5 %"],
    ["equal values", [17.9, 17.9, 17.9, 17.9, 17.9], "All values are equal"],
  ])("says so of %s", async (_, values, words) => {
    const { out } = await trend(table(dates(values.length), values, "date,force_kN"), "--limit", "15 kN");
    expect(out).toContain(words);
    expect(out).not.toMatch(/NaN|undefined|null/);
  });
});

describe("holdfast trend refuses", () => {
  const good = table(dates(3), [17.9, 17.8, 17.7], "date,force_kN");

  it.each([
    [
      "a unit in a cell",
      "date,force_kN\n2031-01-10,17.9\n2031-02-10,1790 daN\n",
      [],
      /row 3, column force_kN: "1790 daN" carries a unit/,
    ],
    [
      "a cell that is no number",
      "date,force_kN\n2031-01-10,17.9\n2031-02-10,abc\n",
      [],
      /row 3, column force_kN: "abc" is not a number/,
    ],
    ["an empty value", "date,force_kN\n2031-01-10,17.9\n2031-02-10,\n", [], /row 3.*is empty/],
    ["a date that is none", "date,force_kN\n2031-01-10,17.9\n2031-02-31,17\n", [], /row 3, column date: "2031-02-31"/],
    ["a torque", "date,force_Nm\n2031-01-10,17.9\n", [], /torque/],
    ["a mass", "date,force_kg\n2031-01-10,17.9\n", [], /force_kgf/],
    ["a table without rows", "date,force_kN\n", [], /no rows/],
    ["a table without numbers", "date,name\n2031-01-10,abc\n", [], /no column of numbers/],
    ["an unknown column", good, ["--value", "foo"], /has no column "foo"; the columns are date, force_kN/],
    ["a limit in a torque", good, ["--limit", "30 Nm"], /--limit 30 Nm: .*torque/],
    ["a limit that is no force", good, ["--limit", "soon"], /--limit soon/],
    ["lambda 0", good, ["--lambda", "0"], /--lambda 0: must be a number above 0/],
    ["sigma 0", good, ["--sigma", "0"], /--sigma 0: must be above 0/],
    ["unknown chart limits", good, ["--chart-limits", "wide"], /none of startup, steady/],
    ["an unknown option", good, ["--foo"], /foo/],
  ] as const)("%s, with exit 2 and one line", async (_, csv, args, words) => {
    const got = await trend(csv, ...args);
    expect(got.code).toBe(2);
    expect(got.out).toBe("");
    expect(got.err).toMatch(words);
    expect(got.err.trim()).not.toContain("\n");
  });
});
