import type { ProofResult } from "../../../app/proof/result/ProofResult.ts";
import { newtonsPerUnit } from "../../../app/quantity/forceUnits.ts";
import { proofRefusalWords, type SaidRefusal } from "../../../app/words/proofRefusalWords.ts";
import { drawTable } from "../pdf/drawTable.ts";
import { drawDegrees } from "./drawDegrees.ts";
import type { ProofPaper } from "./ProofPaper.ts";

/** The curve for correcting with; `curveTaken` null: there is no gauge it could be taken for. */
export type CurveOutcome = {
  readonly curve: { readonly coefficients: readonly number[] } | null;
  readonly curveRefused: string | null;
  readonly curveRefusedWhy?: SaidRefusal["why"];
  readonly curveTaken: boolean | null;
};

/** The fitted curve with its statistics, the uncertainty as a curve, and the curve checks are corrected with. */
export function drawCurve(paper: ProofPaper, proof: CurveOutcome, result: ProofResult): void {
  const { sheet, write, words, unit, small } = paper;
  const { fit, lackOfFit, uncertaintyCurve } = result;
  sheet.heading(words.curve);
  if (fit !== null) {
    sheet.paragraph(`${words.curveIs(fit.degree, unit)}${fit.constant ? "" : ` ${words.noConstant}`}`);
    // y = sum c x^i in newtons is y/s = sum c s^(i-1) (x/s)^i in a unit of s newtons.
    const scale = newtonsPerUnit[unit];
    const right = { align: "right" } as const;
    drawTable(
      sheet,
      [
        { title: words.term, share: 1 },
        { title: words.coefficient, share: 3, ...right },
        { title: words.coefficientSd, share: 3, ...right },
        { title: "", share: 3 },
      ],
      fit.coefficients.map((c, i) => [
        `x^${i}`,
        write.digits(c * scale ** (i - 1), 10),
        write.digits(fit.coefficientSd[i]! * scale ** (i - 1), 3),
        "",
      ]),
    );
    const residualSd = `${small(fit.residualSdN)} ${unit}`;
    sheet.paragraph(words.fitFigures(residualSd, fit.residualDf, write.digits(fit.rSquared, 10)));
    if (lackOfFit !== null) {
      const { f, aboveDf, belowDf, p } = lackOfFit;
      sheet.paragraph(words.lack(write.digits(f, 4), aboveDf, belowDf, write.number(p, 3)));
    }
    drawDegrees(paper, result);
  }
  const share = write.percent(uncertaintyCurve.proportional, 4);
  sheet.paragraph(words.uCurve(`${small(uncertaintyCurve.constantN)} ${unit}`, share));
  if (proof.curve === null) {
    const { curveRefused: said, curveRefusedWhy: why } = proof;
    if (said !== null) sheet.paragraph(words.refusedCurve(proofRefusalWords({ said, why }, write.speech)));
    return;
  }
  const terms = proof.curve.coefficients.map((c) => write.digits(c, 10)).join("; ");
  const use = proof.curveTaken === null ? "" : ` ${proof.curveTaken ? words.taken : words.notTaken}`;
  sheet.paragraph(`${words.inverse(terms)}${use}`);
}
