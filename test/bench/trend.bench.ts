import type { BenchRow } from "./BenchRow.ts";
import { alarmShare, type CommonModeTrial, commonModeTrial } from "./trend/alarms.ts";
import { fleetMilliseconds } from "./trend/fleet.ts";
import { fleetFileMilliseconds } from "./trend/fleetFile.ts";
import { type ForecastTrial, forecastTrial } from "./trend/forecasts.ts";
import { attainableSize, type Rejections, rejections, slopeByMilliseconds } from "./trend/rejections.ts";
import { courseOfChecks, leastSeconds, plainTestAndSlope, testAndSlope } from "./trend/slopes.ts";

const SEED = 20_260_201;

type Tables = {
  readonly independent: readonly Rejections[];
  readonly remembering: readonly Rejections[];
  readonly forecasts: readonly ForecastTrial[];
  readonly weak: readonly ForecastTrial[];
  readonly common: readonly CommonModeTrial[];
};

function tables(): Tables {
  const grid = (falls: readonly number[]) =>
    [8, 12, 20, 40].flatMap((n) =>
      falls.flatMap((fall) => [0.3, 1, 2].map((ahead) => forecastTrial(n, fall, ahead, 2000, SEED + n))),
    );
  const works = { checks: 12, spindles: 6 };
  return {
    independent: [4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 25, 30, 60].map((n) =>
      rejections(n, 0, 20_000, SEED + n),
    ),
    remembering: [10, 15, 20, 30, 50, 100].map((n) => rejections(n, 0.3, 5000, SEED + n)),
    forecasts: grid([5, 8, 20]),
    weak: grid([1, 2, 3]),
    common: [
      commonModeTrial("gauge off, six spindles", { ...works, off: "gauge-0" }, 2000, SEED),
      commonModeTrial(
        "gauge off, six of twelve spindles",
        { ...works, spindles: 12, gauges: 2, off: "gauge-0" },
        2000,
        SEED,
      ),
      commonModeTrial("gauge off, two rounds ago", { ...works, off: "gauge-0", since: 10 }, 2000, SEED),
      commonModeTrial("gauge off, few checks before", { ...works, checks: 5, off: "gauge-0" }, 2000, SEED),
      commonModeTrial(
        "adapter off, six of twelve",
        { ...works, spindles: 12, adapters: 2, off: "adapter-0" },
        2000,
        SEED,
      ),
      commonModeTrial("nothing off", { ...works, spindles: 12, gauges: 2, adapters: 2 }, 2000, SEED),
      commonModeTrial(
        "nothing off, broken springs on one in ten",
        { ...works, spindles: 12, gauges: 2, adapters: 2, broken: 0.1 },
        2000,
        SEED,
      ),
    ],
  };
}

/** The numbers the trend is held to: speed of tests and slopes, and the statistics against known truths. */
export async function trendBench(): Promise<BenchRow[]> {
  return rowsOf(tables());
}

function rowsOf(found: Tables): BenchRow[] {
  return [...speedRows(), fleetRow(), fleetFileRow(), ...testRows(found), ...forecastRows(found), ...alarmRows(found)];
}

const atMost = (name: string, measured: number, limit: number, unit: string, note?: string): BenchRow => ({
  ...{ name, measured, limit, unit, met: measured <= limit },
  ...(note === undefined ? {} : { note }),
});
const atLeast = (name: string, measured: number, limit: number, unit: string, note?: string): BenchRow => ({
  ...atMost(name, measured, limit, unit, note),
  met: measured >= limit,
});
const percent = (share: number) => 100 * share;

function speedRows(): BenchRow[] {
  const [small, large, few] = [courseOfChecks(10_000, SEED), courseOfChecks(100_000, SEED), courseOfChecks(4000, SEED)];
  const [ofSmall, ofLarge] = leastSeconds(
    8,
    () => testAndSlope(small),
    () => testAndSlope(large),
  );
  const [ours, plain] = leastSeconds(
    3,
    () => testAndSlope(few),
    () => plainTestAndSlope(few),
  );
  const exact = plainTestAndSlope(few);
  const got = testAndSlope(few);
  return [
    atMost("Mann-Kendall and Theil-Sen with interval, 100,000 points", ofLarge!, 1, "s"),
    atMost("the same, time over that of 10,000 points", ofLarge! / ofSmall!, 12, "times"),
    atLeast("the same against every pair in a plain loop, 4,000 points", plain! / ours!, 1, "times faster"),
    atMost(
      "difference from the plain loop, S and slope",
      Math.abs(got.test.s - exact.s) + Math.abs(got.line.slope / exact.slope - 1),
      1e-12,
      "",
    ),
    atMost("slope by milliseconds since 1970 against days", slopeByMilliseconds(SEED), 1e-9, ""),
  ];
}

function testRows({ independent, remembering }: Tables): BenchRow[] {
  const errors = independent
    .filter((r) => r.n <= 10)
    .map((r) => {
      const size = attainableSize(r.n);
      return size === 0
        ? r.plain === 0
          ? 0
          : Number.POSITIVE_INFINITY
        : Math.abs(r.plain - size) / Math.sqrt((size * (1 - size)) / r.runs);
    });
  const above = independent.filter((r) => r.n > 10).map((r) => r.plain);
  const corrected = independent.filter((r) => r.n > 10).map((r) => percent(r.corrected));
  const long = remembering.filter((r) => r.n >= 30);
  const short = remembering.filter((r) => r.n < 30);
  const list = (rows: readonly Rejections[], of: (r: Rejections) => number) =>
    rows.map((r) => `n = ${r.n}: ${percent(of(r)).toFixed(1)} %`).join(", ");
  return [
    atMost(
      "Mann-Kendall's size at 5 % against the exact attainable one up to n = 10",
      Math.max(...errors),
      3,
      "simulation errors",
      "n = 4 can never reject",
    ),
    atLeast(
      "its size above n = 10, least",
      percent(Math.min(...above)),
      4,
      "%",
      `after the correction for memory ${Math.min(...corrected).toFixed(2)} to ${Math.max(...corrected).toFixed(2)} %`,
    ),
    atMost("its size above n = 10, greatest", percent(Math.max(...above)), 5.2, "%"),
    atMost(
      "rejections with autocorrelation 0.3 from n = 30, corrected",
      percent(Math.max(...long.map((r) => r.corrected))),
      10,
      "%",
      `uncorrected ${list(long, (r) => r.plain)}; below 30 ${list(short, (r) => r.corrected)}; cannot tell ${list(short, (r) => r.untold)}`,
    ),
  ];
}

function forecastRows({ forecasts, weak }: Tables): BenchRow[] {
  const covered = forecasts.map((f) => percent(f.covered));
  const untold = [1, 2, 3].map((fall) => {
    const of = weak.filter((f) => f.fall === fall);
    return `${percent(of.reduce((sum, f) => sum + f.untold, 0) / of.length).toFixed(0)} % at a fall of ${fall}`;
  });
  return [
    atLeast(
      "forecast at 90 %, least coverage",
      Math.min(...covered),
      87,
      "%",
      "n from 8, fall from five scatters, limit 0.3 to 2 spans ahead",
    ),
    atMost("forecast at 90 %, greatest coverage", Math.max(...covered), 93, "%"),
    atMost(
      "intervals without an end, greatest share",
      percent(Math.max(...forecasts.map((f) => f.unbounded))),
      5,
      "%",
      `with falls of fewer scatters, cannot tell: ${untold.join(", ")}`,
    ),
    atMost("median width over Fieller's, greatest", Math.max(...forecasts.map((f) => f.width)), 1.3, "times"),
  ];
}

function alarmRows({ common }: Tables): BenchRow[] {
  const off = common.filter((c) => c.name.startsWith("gauge off") && !c.name.includes("few"));
  const few = common.find((c) => c.name.includes("few checks"))!;
  return [
    atLeast(
      "a 5 % step in 1 % scatter found within three checks",
      percent(alarmShare(5, 3, 20_000, SEED)),
      90,
      "%",
      "limits from eight checks",
    ),
    atMost("unchanged spindles that alarm within 40 checks", percent(alarmShare(0, 40, 20_000, SEED)), 15, "%"),
    atLeast(
      "a gauge off by three scatters is named, least",
      percent(Math.min(...off.map((c) => c.named))),
      95,
      "%",
      `six spindles, eleven checks before; with four before ${percent(few.named).toFixed(0)} %`,
    ),
    atMost(
      "a gauge blamed wrongly, greatest",
      percent(Math.max(...common.map((c) => c.gaugeWrongly))),
      2,
      "%",
      "nothing off, springs broken, adapter off, another gauge off",
    ),
  ];
}

function fleetRow(): BenchRow {
  const { common, ranked, trends } = fleetMilliseconds(SEED);
  const note = `common mode ${common.toFixed(0)}, courses and ranking ${ranked.toFixed(0)}; whole trends with bands and hints ${trends.toFixed(0)}`;
  return atMost(
    "ranking and common mode of 2,000 spindles x 60 checks, from histories in memory",
    common + ranked,
    500,
    "ms",
    note,
  );
}

function fleetFileRow(): BenchRow {
  const { whole, rows } = fleetFileMilliseconds(SEED);
  const note = `of that reading the checks ${rows.toFixed(0)}`;
  return atMost("the same out of the data file, spindles and all", whole, 500, "ms", note);
}

if (import.meta.main) {
  const found = tables();
  const out = (text: string) => process.stdout.write(`${text}\n`);
  out("  n  size %  corrected %  cannot tell %   (no memory, then 0.3)");
  for (const r of [...found.independent, ...found.remembering]) {
    out(
      `${String(r.n).padStart(3)}  ${percent(r.plain).toFixed(2).padStart(6)}  ${percent(r.corrected).toFixed(2).padStart(11)}  ${percent(r.untold).toFixed(2).padStart(13)}`,
    );
  }
  out("\n  n  fall  ahead  covered %  no end %  cannot tell %  width");
  for (const f of [...found.forecasts, ...found.weak]) {
    out(
      `${String(f.n).padStart(3)}  ${String(f.fall).padStart(4)}  ${f.ahead.toFixed(1).padStart(5)}  ${percent(f.covered).toFixed(1).padStart(9)}  ${percent(f.unbounded).toFixed(1).padStart(8)}  ${percent(f.untold).toFixed(1).padStart(13)}  ${f.width.toFixed(2)}`,
    );
  }
  out("\nnamed %  gauge wrongly %  adapter wrongly %");
  for (const c of found.common) {
    out(
      `${percent(c.named).toFixed(1).padStart(7)}  ${percent(c.gaugeWrongly).toFixed(1).padStart(15)}  ${percent(c.adapterWrongly).toFixed(1).padStart(17)}  ${c.name}`,
    );
  }
  out("");
  for (const { name, measured, limit, unit, met, note } of rowsOf(found)) {
    out(
      `${met ? "met    " : "NOT MET"} ${name}: ${Number(measured.toPrecision(4))} ${unit} (${limit})${note === undefined ? "" : `; ${note}`}`,
    );
  }
}
