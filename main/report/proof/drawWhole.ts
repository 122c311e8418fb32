import type { Proof } from "../../../app/ledger/proof.ts";
import type { ProofReading } from "../../../app/proof/data/ProofReading.ts";
import type { ProofResult } from "../../../app/proof/result/ProofResult.ts";
import { drawBudget } from "./drawBudget.ts";
import { type CurveOutcome, drawCurve } from "./drawCurve.ts";
import { drawErrors, drawResiduals } from "./drawPlots.ts";
import { drawClass, drawConformity, drawSteps } from "./drawResults.ts";
import type { ProofPaper } from "./ProofPaper.ts";

/** As much of a proof as its result is drawn from: a filed one has it, and one read from a file. */
export type Outcome = CurveOutcome & {
  readonly choices: Pick<Proof["choices"], "mpe" | "rule">;
};

/** The whole result: steps, errors, class, conformity, curve, residuals, budget. @param readings  in newtons, those that count */
export function drawWhole(
  paper: ProofPaper,
  outcome: Outcome,
  result: ProofResult,
  readings: readonly ProofReading[],
): void {
  drawSteps(paper, result);
  drawErrors(paper, result);
  drawClass(paper, result);
  drawConformity(paper, outcome.choices, result);
  drawCurve(paper, outcome, result);
  if (result.fit !== null) drawResiduals(paper, readings, result.fit);
  drawBudget(paper, result);
}
