import { z } from "zod";
import type { ValidationMade } from "../../app/contract/reportViews.ts";
import { validationReport } from "../report/validationReport.ts";
import { notRun, validate } from "../validate/validate.ts";
import { defineJob } from "./Job.ts";

/** Runs the published checks on this installation and writes what came out. */
export const job = defineJob({
  args: z.strictObject({ paper: z.enum(["A4", "Letter"]), language: z.enum(["en", "de"]) }),
  async run({ paper, language }, { progress, goOn }): Promise<ValidationMade> {
    const found = validate({ nowMs: Date.now(), progress, goOn });
    const pdf = await validationReport(found, notRun(), { paper, language });
    const fileName = `holdfast-validation-${found.madeAt.slice(0, 10)}.pdf`;
    return { ...found, report: { fileName, mime: "application/pdf", base64: pdf.toString("base64") } };
  },
});
