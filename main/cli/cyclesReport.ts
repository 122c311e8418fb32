import type { Cycle } from "../../app/cycle/Cycle.ts";
import { type SeriesOf, scatterSentence, seriesOf } from "../../app/cycle/seriesOf.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { formatForce } from "../../app/quantity/formatForce.ts";
import type { Detected } from "./detectCycles.ts";

/** The JSON document of `holdfast cycles`. */
export function cyclesJson(found: Detected) {
  const series = seriesOfCycles(found.cycles);
  return {
    pattern: found.pattern,
    unit: found.unit ?? null,
    unitChanges: found.unitChanges,
    rateHz: found.rateHz ?? null,
    samples: found.samples,
    linesRejected: found.linesRejected,
    cycles: found.cycles.map(cycleJson),
    series: {
      n: series.n,
      basis: series.basis,
      meanN: series.meanN ?? null,
      sN: series.sN ?? null,
      rangeN: series.rangeN ?? null,
      meanUncertaintyN: series.meanUncertaintyN ?? null,
      firstDifferencePct: percent(series.firstDifference),
      outliers: series.outliers,
      scatter: series.scatter,
    },
  };
}

function seriesOfCycles(cycles: readonly Cycle[]): SeriesOf {
  return seriesOf(cycles.map((cycle, i) => ({ ...cycle, number: i + 1 })));
}

function cycleJson(cycle: Cycle) {
  return {
    startS: cycle.startS ?? null,
    endS: cycle.endS ?? null,
    peakN: cycle.peakN,
    settledN: cycle.settledN ?? null,
    settledUncertaintyN: cycle.settledUncertaintyN ?? null,
    overshootPct: percent(cycle.overshoot),
    riseTimeS: cycle.riseTimeS ?? null,
    noiseN: cycle.noiseN ?? null,
    slopeNPerS: cycle.slopeNPerS ?? null,
    creepPct: percent(cycle.creep),
    zeroBeforeN: cycle.zeroBeforeN ?? null,
    zeroAfterN: cycle.zeroAfterN ?? null,
    zeroN: cycle.zeroN,
    settledFromS: cycle.settledFromS ?? null,
    settledToS: cycle.settledToS ?? null,
    settledReadings: cycle.settledWindow?.n ?? null,
    startIndex: cycle.startIndex,
    endIndex: cycle.endIndex,
    flags: cycle.flags,
  };
}

const percent = (share: number | undefined) => (share === undefined ? null : 100 * share);

/** The same for people. */
export function cyclesText(found: Detected): string {
  const unit = found.unit ?? "N";
  const rate = found.rateHz === undefined ? "rate unknown" : `${Number(found.rateHz.toPrecision(4))} readings a second`;
  const lines = [`${found.samples} readings, ${rate}, ${found.linesRejected} lines rejected`];
  if (found.cycles.length === 0) return `${[...lines, "No clamping found."].join("\n")}\n`;
  lines.push("", row(["", "start s", "end s", "peak", "settled", "+/- (k = 2)", "flags"]));
  found.cycles.forEach((cycle, i) => {
    lines.push(row(cells(cycle, i + 1, unit)));
  });
  return `${[...lines, "", ...seriesText(seriesOfCycles(found.cycles), unit)].join("\n")}\n`;
}

function cells(cycle: Cycle, number: number, unit: ForceUnit): string[] {
  const u = cycle.settledUncertaintyN;
  return [
    String(number),
    cycle.startS?.toFixed(2) ?? "-",
    cycle.endS?.toFixed(2) ?? "-",
    figure(cycle.peakN, unit),
    cycle.settledN === undefined ? "-" : figure(cycle.settledN, unit),
    u === undefined ? "-" : figure(2 * u, unit),
    cycle.flags.join(", "),
  ];
}

/** To a newton: means and uncertainties are finer than the gauge's own steps. */
const figure = (forceN: number, unit: ForceUnit) => formatForce(forceN, unit, 1);

const widths = [3, 9, 9, 12, 12, 12];

function row(texts: readonly string[]): string {
  return texts
    .map((text, i) => (widths[i] === undefined ? `  ${text}` : text.padStart(widths[i])))
    .join(" ")
    .trimEnd();
}

function seriesText(series: SeriesOf, unit: ForceUnit): string[] {
  if (series.meanN === undefined) return ["No force to average."];
  const of = series.basis === "settled" ? "settled forces" : "held peaks";
  const lines = [`Mean of ${series.n} ${of}: ${figure(series.meanN, unit)}`];
  if (series.sN !== undefined && series.rangeN !== undefined)
    lines.push(`Standard deviation ${figure(series.sN, unit)}, range ${figure(series.rangeN, unit)}`);
  if (series.outliers.length > 0) lines.push(`Stands out: ${series.outliers.join(", ")} (still counted)`);
  lines.push(`${scatterSentence(series.scatter)} (trade knowledge, no source)`);
  return lines;
}
