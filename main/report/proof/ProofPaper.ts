import type { ProofResult } from "../../../app/proof/result/ProofResult.ts";
import { type ForceUnit, fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { uncertaintyDecimals } from "../../../app/words/uncertaintyDecimals.ts";
import type { PdfSheet } from "../pdf/PdfSheet.ts";
import { unitOf, type Writing } from "../records/Writing.ts";
import { proofReportTexts } from "./proofReportTexts.ts";

/** What every part of a proof's report is drawn with. */
export type ProofPaper = {
  readonly sheet: PdfSheet;
  readonly write: Writing;
  readonly words: (typeof proofReportTexts)["en" | "de"];
  /** Of the gauge: everything is written in it. */
  readonly unit: ForceUnit;
  /** Force figures to the place of the smallest uncertainty's second digit. */
  readonly figure: (forceN: number | null | undefined) => string;
  readonly force: (forceN: number | null | undefined) => string;
  /** A percentage as it stands in results, two digits at least. */
  readonly pct: (percent: number | null | undefined) => string;
  /** An uncertainty: one digit more than the figures have. */
  readonly small: (forceN: number | null | undefined) => string;
  /** A part of an uncertainty, in newtons whatever the unit: columns of a budget are narrow. */
  readonly fine: (forceN: number | null | undefined) => string;
  /** A force that was chosen, not measured: as few digits as it has. */
  readonly chosen: (forceN: number | null | undefined) => string;
  readonly className: (name: string) => string;
};

export function proofPaper(
  sheet: PdfSheet,
  proof: { readonly unit: string; readonly result: Pick<ProofResult, "steps"> | null },
  write: Writing,
): ProofPaper {
  const unit = unitOf(proof.unit);
  const smallest = Math.min(
    ...(proof.result?.steps ?? []).map((step) => step.uncertainty.expandedN).filter((u) => u > 0),
  );
  const decimals = Number.isFinite(smallest) ? uncertaintyDecimals(fromNewtons(smallest, unit)) : 3;
  const inUnit = (forceN: number | null | undefined) =>
    forceN === null || forceN === undefined ? undefined : fromNewtons(forceN, unit);
  const figure: ProofPaper["figure"] = (forceN) => write.number(inUnit(forceN), decimals);
  return {
    sheet,
    write,
    words: proofReportTexts[write.language],
    unit,
    figure,
    force: (forceN) => (forceN === null || forceN === undefined ? "–" : `${figure(forceN)} ${unit}`),
    pct: (percent) => write.number(percent, 3),
    small: (forceN) => write.number(inUnit(forceN), decimals + 1),
    fine: (forceN) => write.number(forceN, Number.isFinite(smallest) ? uncertaintyDecimals(smallest) + 2 : 3),
    chosen: (forceN) => `${write.digits(inUnit(forceN), 9)} ${unit}`,
    className: (name) => (write.language === "de" ? name.replace(".", ",") : name),
  };
}

/** Room for a table of so many steps under its heading: one that fits a page is not cut. */
export const together = (steps: number): number => Math.min(520, 42 + 15.8 * (steps + 1));
