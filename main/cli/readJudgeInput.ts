import { z } from "zod";
import type { Comparison, JudgeInput } from "../../app/verdict/Judgement.ts";
import { UsageError } from "./Command.ts";

/** Absent and null say the same: there is none. */
const optional = z.number().nullish();

const limitFields = z.strictObject({ minimumN: optional, warningN: optional, nominalN: optional, maximumN: optional });

const fields = z.strictObject({
  /** Null: there was no valid force. */
  valueN: z.number().nullable(),
  standardUncertaintyN: optional,
  degreesOfFreedom: optional,
  limits: limitFields.nullish(),
  rule: z.enum(["simple", "guarded", "iso14253", "ilacG8", "probability"]),
  coverageFactor: optional,
  guardFactor: optional,
  threshold: optional,
  baselineN: optional,
  baselineStandardUncertaintyN: optional,
  baselineCorrelation: optional,
  previousN: optional,
  previousStandardUncertaintyN: optional,
  previousCorrelation: optional,
  cautionDrop: optional,
  actDrop: optional,
});

type Fields = z.infer<typeof fields>;

/**
 * The input of `holdfast judge` from JSON bytes. Unknown keys are refused: a misspelt limit must not be passed over.
 * @throws UsageError  not JSON, a key that does not belong, a field missing or of the wrong kind; names file and field
 */
export function readJudgeInput(bytes: Uint8Array, file: string): JudgeInput {
  const read = fields.safeParse(parse(bytes, file));
  if (!read.success) throw new UsageError(`${file}: ${say(read.error.issues[0]!)}`);
  const given = read.data;
  if (given.valueN !== null && typeof given.standardUncertaintyN !== "number") {
    throw new UsageError(
      `${file}: standardUncertaintyN is missing; give the standard uncertainty (k = 1) in newtons, above 0`,
    );
  }
  return toInput(given);
}

function parse(bytes: Uint8Array, file: string): unknown {
  try {
    return JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes)); // takes off a byte-order mark
  } catch {
    throw new UsageError(
      `${file}: is not JSON in UTF-8; give one object such as {"valueN": 17920, "standardUncertaintyN": 90, "limits": {"minimumN": 15000}, "rule": "simple"}`,
    );
  }
}

function toInput(given: Fields): JudgeInput {
  const { limits } = given;
  return {
    valueN: given.valueN ?? undefined,
    standardUncertaintyN: given.standardUncertaintyN ?? Number.NaN, // never looked at without a value
    degreesOfFreedom: given.degreesOfFreedom ?? undefined,
    limits: {
      minimumN: limits?.minimumN ?? undefined,
      warningN: limits?.warningN ?? undefined,
      nominalN: limits?.nominalN ?? undefined,
      maximumN: limits?.maximumN ?? undefined,
    },
    rule: {
      rule: given.rule,
      coverageFactor: given.coverageFactor ?? undefined,
      guardFactor: given.guardFactor ?? undefined,
      threshold: given.threshold ?? undefined,
    },
    baseline: comparison(given.baselineN, given.baselineStandardUncertaintyN, given.baselineCorrelation),
    previous: comparison(given.previousN, given.previousStandardUncertaintyN, given.previousCorrelation),
    cautionDrop: given.cautionDrop ?? undefined,
    actDrop: given.actDrop ?? undefined,
  };
}

function comparison(
  valueN: number | null | undefined,
  u: number | null | undefined,
  r: number | null | undefined,
): Comparison | undefined {
  if (valueN === null || valueN === undefined) return undefined;
  return { valueN, standardUncertaintyN: u ?? undefined, correlation: r ?? undefined };
}

function say(issue: z.core.$ZodIssue): string {
  const where = issue.path.length === 0 ? "the input" : issue.path.join(".");
  if (issue.code === "unrecognized_keys") {
    const known = Object.keys(issue.path.length === 0 ? fields.shape : limitFields.shape).join(", ");
    return `${where} has ${issue.keys.join(", ")}, which does not belong there; the keys are ${known}`;
  }
  return `${where}: ${issue.message.charAt(0).toLowerCase()}${issue.message.slice(1)}`;
}
