import type { TrendReport } from "./trendReport.ts";

/** The same for people: what moves, how surely, since when, and when a limit is reached. */
export function trendText(report: TrendReport): string {
  return [
    ...trendLines(report),
    ...changeLines(report),
    ...chartLines(report),
    ...report.forecast.map((f) => forecastLine(f, report)),
  ]
    .map((line) => `${line}\n`)
    .join("");
}

function trendLines(report: TrendReport): string[] {
  const { n, unit, valueColumn, x, mannKendall, autocorrelation, theilSen, notes } = report;
  const perX = x.kind === "date" || x.kind === "days" ? "day" : x.kind === "row" ? "row" : "unit of x";
  const lines = [
    `${n} ${n === 1 ? "value" : "values"} of ${valueColumn} in ${unit}${x.column === null ? "" : `, by ${x.column}`}`,
  ];
  if (n < 2) return [...lines, "One value makes no trend."];
  const { slope, low, high } = theilSen;
  lines.push(...notes.map((note) => note.text));
  if (slope === null) return lines;
  const interval =
    low === null || high === null ? "too few values for an interval" : `95 % ${num(low)} to ${num(high)}`;
  lines.push(`Slope ${num(slope)} ${unit} a ${perX} (${interval})`);
  const p = `p = ${num(mannKendall.p)}, ${mannKendall.method === "exact" ? "exact" : "normal approximation"}`;
  lines.push(
    `Mann-Kendall: S = ${mannKendall.s}, tau-b ${mannKendall.tauB === null ? "none" : num(mannKendall.tauB)}, ${p}: ${trendWords(mannKendall, autocorrelation)}`,
  );
  if (autocorrelation.found) {
    const told =
      autocorrelation.p === null
        ? "under 20 values a trend cannot be told from that"
        : `corrected p = ${num(autocorrelation.p)}`;
    lines.push(`Neighbouring values resemble one another (lag 1: ${num(autocorrelation.lag1)}): ${told}`);
  }
  return lines;
}

function trendWords(test: TrendReport["mannKendall"], memory: TrendReport["autocorrelation"]): string {
  if (test.tauB === null) return "nothing to compare";
  if (test.leastP !== null && test.leastP > 0.05) return "so few values can never prove a trend at 5 %";
  if (memory.p === null) return "cannot tell";
  if (memory.p >= 0.05) return "no trend shown at 5 %";
  return test.s > 0 ? "rising" : "falling";
}

function changeLines({ changePoints, strays, segments, unit }: TrendReport): string[] {
  const lines = segments
    .filter((s) => s.startedBy === "service" && s.first > 1)
    .map((s) => `A new segment starts at row ${s.first} (event)`);
  for (const c of changePoints) {
    const where = c.at === null ? `x = ${num(c.x)}` : c.at.slice(0, 10);
    const interval = c.low === null || c.high === null ? "" : `, 95 % ${num(c.low)} to ${num(c.high)}`;
    const doubt = c.clear ? "" : "; a slope explains the values nearly as well";
    lines.push(`Step of ${num(c.size)} ${unit} after row ${c.index} (${where}${interval})${doubt}`);
  }
  if (strays.length > 0) lines.push(`Off alone, the next one back: ${rows(strays)}`);
  return lines;
}

function chartLines({ individuals, runSignals, ewma, cusum, unit, n }: TrendReport): string[] {
  if (individuals === null || n < 3) return [];
  const { center, lower, upper } = individuals;
  const single = runSignals.map((s) => s.at);
  return [
    `Single values: ${num(center)} ${unit}, limits ${num(lower)} to ${num(upper)}; ${single.length === 0 ? "no signal" : `signals at ${rows(single)}`}`,
    `EWMA (lambda ${num(ewma.lambda)}): ${ewma.signals.length === 0 ? "no signal" : `signals at ${rows(ewma.signals)}`}; unchanged, one false alarm in ${Math.round(ewma.averageRunLength)} values`,
    cusum === null
      ? "CUSUM: nothing scatters, so there is no sigma to count in; give --sigma"
      : `CUSUM (k ${num(cusum.k)}, h ${num(cusum.h)}): ${cusum.signals.length === 0 ? "no signal" : `signals at ${rows(cusum.signals)}`}; unchanged, one false alarm in ${Math.round(cusum.averageRunLength)} values`,
  ];
}

function forecastLine(f: TrendReport["forecast"][number], report: TrendReport): string {
  const limit = `Limit ${num(f.limit)} ${report.unit}`;
  const place = (x: number | null, date: string | null) =>
    date === null ? (x === null ? "no end" : `x = ${num(x)}`) : date.slice(0, 10);
  switch (f.state) {
    case "already":
      return `${limit}: already there`;
    case "notWithinTenYears":
      return report.x.kind === "date" || report.x.kind === "days"
        ? `${limit}: not within ten years`
        : `${limit}: not in sight`;
    case "cannotTell":
      if (report.theilSen.slope === null) return `${limit}: cannot tell without a second x`;
      return report.forecastRows < 4
        ? `${limit}: cannot tell, a forecast needs four values since the last event or step`
        : `${limit}: cannot tell, the slope may be chance`;
    case "crosses": {
      const far = f.beyondThreeSpans
        ? "; more than three times the observed span ahead, the line may not hold that long"
        : "";
      return `${limit}: reached ${place(f.at, f.atDate)}, 90 % ${place(f.low, f.lowDate)} to ${place(f.high, f.highDate)}${far}`;
    }
  }
}

function rows(list: readonly number[]): string {
  const shown = list.slice(0, 10).join(", ");
  return `row${list.length === 1 ? "" : "s"} ${shown}${list.length > 10 ? ` and ${list.length - 10} more` : ""}`;
}

/** Five significant digits, without a tail of zeros. */
const num = (value: number) => Number(value.toPrecision(5)).toString();
