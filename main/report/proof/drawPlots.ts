import { netReadings } from "../../../app/proof/data/netReadings.ts";
import type { ProofReading } from "../../../app/proof/data/ProofReading.ts";
import type { ProofFit, ProofResult } from "../../../app/proof/result/ProofResult.ts";
import { fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { drawChart } from "../pdf/drawChart.ts";
import { markShapes } from "../pdf/drawMark.ts";
import type { ProofPaper } from "./ProofPaper.ts";

const HEIGHT = 185;

/** Errors with their uncertainty, and what is allowed where something is. */
export function drawErrors({ sheet, words, unit }: ProofPaper, { steps }: ProofResult): void {
  const shown = (forceN: number) => fromNewtons(forceN, unit);
  const allowed = steps.filter((step) => step.permissibleN !== null);
  const edge = (side: 1 | -1) => ({
    x: allowed.map((step) => shown(step.referenceN)),
    y: allowed.map((step) => side * shown(step.permissibleN!)), // filtered just above
    look: "thin" as const,
    ...(side === 1 ? { name: words.allowedName } : {}),
  });
  sheet.heading(words.errors, HEIGHT + 10);
  drawChart(
    sheet,
    {
      lines: [
        ...(allowed.length > 1 ? [edge(1), edge(-1)] : []),
        {
          x: steps.map((step) => shown(step.referenceN)),
          y: steps.map((step) => shown(step.errorN)),
          within: steps.map((step) => shown(step.uncertainty.expandedN)),
          look: "dots",
        },
      ],
      levels: [{ y: 0, name: "" }],
      xTitle: words.ref(unit),
      yTitle: words.errorIn(unit),
      alt: words.errorsAlt(steps.length),
    },
    HEIGHT,
  );
}

/** What the curve leaves of every rising reading, each run with a mark of its own. */
export function drawResiduals(
  { sheet, words, unit }: ProofPaper,
  readings: readonly ProofReading[],
  fit: ProofFit,
): void {
  const shown = (forceN: number) => fromNewtons(forceN, unit);
  const runs = netReadings(readings)
    .map(({ run, loads }) => ({ run, loads: loads.filter(({ reading }) => reading.direction === "up") }))
    .filter(({ loads }) => loads.length > 0);
  const count = runs.reduce((sum, { loads }) => sum + loads.length, 0);
  if (count === 0) return;
  sheet.heading(words.residuals, HEIGHT + 10);
  drawChart(
    sheet,
    {
      lines: runs.map(({ run, loads }, i) => ({
        x: loads.map(({ reading }) => shown(reading.reference)),
        y: loads.map(({ reading, net }) => shown(net - valueAt(fit, reading.reference))),
        look: markShapes[i % markShapes.length]!,
        name: words.runName(run),
      })),
      levels: [{ y: 0, name: "" }],
      xTitle: words.ref(unit),
      yTitle: words.residualIn(unit),
      alt: words.residualsAlt(count),
    },
    HEIGHT,
  );
}

/** Horner's rule: for a picture the last digits do not matter. */
const valueAt = ({ coefficients }: ProofFit, x: number) => coefficients.reduceRight((sum, c) => sum * x + c, 0);
