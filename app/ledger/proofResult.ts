import { z } from "zod";
import { proofRemarkCodes } from "../proof/data/ProofRemark.ts";
import type { ProofResult } from "../proof/result/ProofResult.ts";
import { proofSources } from "../proof/uncertainty/StepUncertainty.ts";
import { strict } from "./fields.ts";

/** What a proof came to, as filed; names and meaning in `app/proof/result/ProofResult.ts`. */

const figure = z.number().nullable();
const conformity = z.enum(["conforming", "nonConforming", "undecided"]);
const remarks = z.array(strict({ code: z.enum(proofRemarkCodes), about: z.string().max(200).optional() }));

const stepUncertainty = strict({
  standardN: z.number(),
  degreesOfFreedom: figure,
  coverageFactor: z.number(),
  expandedN: z.number(),
  expandedPct: figure,
  guideExpandedPct: figure,
  contributions: z.array(strict({ source: z.enum(proofSources), standardN: z.number(), degreesOfFreedom: figure })),
});

const step = strict({
  referenceN: z.number(),
  n: z.number().int().min(1),
  netN: z.number(),
  fittedN: figure,
  residualN: figure,
  errorN: z.number(),
  q: figure,
  b: figure,
  bPrime: figure,
  fc: figure,
  v: figure,
  class: z.string().max(10).nullable(),
  permissibleN: figure,
  conformity: conformity.nullable(),
  zone: z.enum(["pass", "conditionalPass", "conditionalFail", "fail"]).nullable(),
  probabilityConforming: figure,
  uncertainty: stepUncertainty,
});

export const proofResult = strict({
  n: z.number().int().min(0),
  fit: strict({
    degree: z.number().int(),
    constant: z.boolean(),
    coefficients: z.array(z.number()),
    coefficientSd: z.array(z.number()),
    residualSdN: z.number(),
    residualDf: z.number(),
    rSquared: z.number(),
    residualsN: z.array(z.number()),
  }).nullable(),
  degreeTrials: z.array(z.record(z.string(), figure)),
  lackOfFit: strict({ f: figure, aboveDf: z.number(), belowDf: z.number(), p: z.number() }).nullable(),
  class: z.string().max(10).nullable(),
  missing: remarks,
  classRanges: z.array(strict({ class: z.string().max(10), fromN: z.number(), toN: z.number() })),
  lowerLimitFactorN: figure,
  lowerLimitsN: strict({ AA: z.number(), A: z.number() }).nullable(),
  conformity: conformity.nullable(),
  steps: z.array(step),
  zeroPct: figure,
  creepPct: figure,
  coverage: z.number(),
  uncertaintyCurve: strict({ constantN: z.number(), proportional: z.number() }),
  remarks,
}) satisfies z.ZodType<ProofResult>;
