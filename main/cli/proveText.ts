import type { ProveReport } from "./proveReport.ts";

/** The report as people read it in a terminal. */
export function proveText(r: ProveReport): string {
  const unit = (name: string | null) => (name === null ? "" : ` (${name})`);
  const lines = [
    `${r.method}: ${r.n} rows, reference${unit(r.units.reference)}, indication${unit(r.units.indication)}`,
  ];
  if (r.degree !== null) {
    lines.push(
      `curve of degree ${r.degree}, indication on reference, residual standard deviation ${short(r.residualSd)}, R² ${r.rSquared}`,
    );
    lines.push(...r.coefficients.map((c, i) => `  x^${i}  ${c}  standard deviation ${short(r.coefficientSd[i]!)}`));
  }
  if (r.lowerLimitFactor !== null) lines.push(`lower limit factor ${short(r.lowerLimitFactor)}`);
  lines.push(r.class === null ? `no class: ${r.classReason}` : `class ${r.class}`);
  lines.push(...r.classRanges.map((range) => `  class ${range.class} from ${short(range.from)} to ${short(range.to)}`));
  if (r.conformity !== null) lines.push(`conformity: ${conformityWords[r.conformity] ?? r.conformity}`);
  lines.push(...table(r.steps));
  if (r.zero !== null) lines.push(`zero change ${short(r.zero)} % of the greatest indication`);
  if (r.creep !== null) lines.push(`creep ${short(r.creep)} % of the greatest indication`);
  const { constant, proportional } = r.uncertainty.curve;
  lines.push(`expanded uncertainty (95 %) at a reference F: root of ${short(constant)}² + (${short(proportional)} F)²`);
  lines.push(...r.remarks.map((remark) => `note: ${remark.text}`));
  return `${lines.join("\n")}\n`;
}

const conformityWords: Readonly<Record<string, string>> = {
  conforming: "conforming",
  nonConforming: "not conforming",
  undecided: "cannot tell",
};

function table(steps: ProveReport["steps"]): string[] {
  const first = steps[0];
  if (first === undefined) return [];
  const names = Object.keys(first);
  const rows = [names, ...steps.map((step) => names.map((name) => cell(step[name] ?? null)))];
  const widths = names.map((_, i) => Math.max(...rows.map((row) => row[i]!.length)));
  return rows.map((row) => `  ${row.map((text, i) => text.padStart(widths[i]!)).join("  ")}`);
}

const cell = (value: number | string | null) =>
  value === null ? "-" : typeof value === "number" ? short(value) : value;

/** Six figures; tiny residuals of exact data not as a long row of noise. */
const short = (value: number | null) => (value === null ? "-" : String(Number(value.toPrecision(6))));
