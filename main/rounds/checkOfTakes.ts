import { AppError } from "../../app/contract/result.ts";
import type { Check } from "../../app/ledger/check.ts";
import type { Works } from "../../app/ledger/register.ts";
import { mean } from "../../app/numerics/mean.ts";
import { sampleStdDev } from "../../app/numerics/sampleStdDev.ts";
import { type ForceUnit, fromNewtons } from "../../app/quantity/forceUnits.ts";
import type { DumpRecord } from "../../app/round/dump/DumpReading.ts";
import { checkOf } from "../bench/checkOf.ts";
import type { FormFacts } from "../bench/FormFacts.ts";
import { form } from "../bench/form.ts";
import type { Db } from "../store/db.ts";
import { type FilingTag, filingFacts } from "./filingFacts.ts";

export type TakesToFile = {
  readonly checkId: string;
  readonly tag: FilingTag;
  readonly records: readonly DumpRecord[];
  readonly factor: number;
  /** Written on the sheet and typed in, not read out of a memory. */
  readonly typedIn: boolean;
  readonly measuredAtMs: number;
  readonly roundId: string | undefined;
  readonly reasons: Readonly<Record<string, string>>;
  readonly programVersion: string;
  readonly clockDoubtful: boolean;
};

/**
 * A check from docked readings, through the same judging as a measured series. There is no stream behind them: their mean
 * is taken as one value with its unit, and what they scatter by stands in the budget for the clampings' own.
 * @throws AppError  a warning that blocks, or one that wants a reason and has none
 */
export function checkOfTakes(db: Db, works: Works, takes: TakesToFile): Check {
  const { records, factor } = takes;
  const values = records.map((r) => r.valueN! * factor); // what carries no force has been refused
  const meanN = mean(values);
  const sN = values.length > 1 ? sampleStdDev(values) : undefined;
  const { state: tagged, facts } = filingFacts(db, works, takes.tag, takes.measuredAtMs, takes.checkId);
  const unit = records[0]!.unit ?? "N";
  const text = `${fromNewtons(meanN, unit).toFixed(decimalsOf(records[0]!.figure))} ${unit}`;
  const state = {
    ...tagged,
    roundId: takes.roundId,
    typed: { valueN: meanN, text, unit, ...(takes.typedIn ? {} : { docked: dockedFrom(records) }) },
    overrides: takes.reasons,
    note: factor === 1 ? "" : factorNote(factor, unit),
  };
  const scattered = withScatter(facts, sN, values.length);
  const formed = form(state, scattered);
  refuseUnless(formed.cannotFile, formed.warnings, facts);
  const figures = {
    ...formed.figures,
    n: values.length,
    sN,
    rangeN: values.length > 1 ? Math.max(...values) - Math.min(...values) : undefined,
  };
  const check = checkOf(state, { ...formed, figures }, scattered, {
    measuredAtMs: takes.measuredAtMs,
    offsetMinutes: -new Date(takes.measuredAtMs).getTimezoneOffset(),
    source: takes.typedIn ? "typed" : "docked",
    unit,
    rateHz: undefined,
    patternId: undefined,
    pattern: undefined,
    waveformHashes: new Map(),
    programVersion: takes.programVersion,
    clockDoubtful: takes.clockDoubtful,
  });
  return {
    ...check,
    rawLine: records
      .map((r) => r.raw)
      .join(" | ")
      .slice(0, 500),
  };
}

const dockedFrom = (records: readonly DumpRecord[]) => ({
  takes: records.length,
  held: records.every((r) => r.kind === "held"),
});

/** The mean of several clampings scatters by less than one: it goes into the budget as what was known of it. */
function withScatter(facts: FormFacts, sN: number | undefined, n: number): FormFacts {
  if (sN === undefined || !(sN > 0)) return facts;
  return { ...facts, earlierScatter: { sN: sN / Math.sqrt(n), degreesOfFreedom: n - 1 } };
}

const decimalsOf = (figure: string) => /\d[.,](\d{1,6})(?!\d*[.,])/.exec(figure)?.[1]?.length ?? 0;

const factorNote = (factor: number, unit: ForceUnit) =>
  `Stored under ${unit}; multiplied by ${Number(factor.toPrecision(8))} after a question about the unit.`;

function refuseUnless(
  cannotFile: ReturnType<typeof form>["cannotFile"],
  warnings: ReturnType<typeof form>["warnings"],
  { spindle }: FormFacts,
): void {
  const name = spindle?.name ?? "a spindle";
  if (cannotFile === "blocked") {
    const code = warnings.find((w) => w.weight === "block")?.code ?? "";
    throw new AppError(
      "refused",
      `${name} must not be filed like this: see its warning (${code}). Nothing was filed.`,
      {
        key: "dockingBlocked",
      },
    );
  }
  if (cannotFile === "reasonWanted")
    throw new AppError("refused", `A warning about ${name} wants a reason before anything is filed.`, {
      key: "reasonWanted",
    });
  if (cannotFile !== undefined)
    throw new AppError("refused", `${name} cannot be filed. Nothing was filed.`, { key: `cannotFile.${cannotFile}` });
}
