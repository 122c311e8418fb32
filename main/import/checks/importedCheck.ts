import type { Check } from "../../../app/ledger/check.ts";
import type { Spindle, Works } from "../../../app/ledger/register.ts";
import { checkOf } from "../../bench/checkOf.ts";
import { freshDraft } from "../../bench/DraftState.ts";
import type { FormFacts } from "../../bench/FormFacts.ts";
import { form } from "../../bench/form.ts";
import type { ReadRow } from "./Reading.ts";

export type Circumstances = {
  readonly checkId: string;
  readonly works: Works;
  readonly spindle: Spindle;
  readonly past: Pick<FormFacts, "baseline" | "previous">;
  readonly programVersion: string;
  readonly source: NonNullable<Check["imported"]>;
};

/**
 * The check a row of an old spreadsheet stands for, through the same judging as a value typed in today. Nobody knows any
 * more what was corrected then: the value stands as it was written, and neither today's curve of the gauge nor today's
 * scale of the adapter is laid over it. What an unproved gauge is taken to be off by stands in its budget.
 */
export function importedCheck(
  row: ReadRow,
  { checkId, works, spindle, past, programVersion, source }: Circumstances,
): Check {
  const { adapterId, gaugeId, operatorId, counter, note, valueN, takesN, text, unit } = row;
  const tag = { spindleId: spindle.spindleId, adapterId, gaugeId, operatorId };
  const state = { ...freshDraft(checkId, tag), tag, counter, note, typed: { valueN, text, unit, takesN } };
  const facts: FormFacts = {
    works,
    spindle,
    adapter: undefined,
    gauge: undefined,
    gaugeFoundOff: false,
    ...past,
    earlierScatter: undefined,
    resolutionN: undefined,
    today: row.date,
  };
  const check = checkOf(state, form(state, facts), facts, {
    measuredAtMs: row.atMs,
    offsetMinutes: row.offsetMinutes,
    source: "imported",
    unit,
    rateHz: undefined,
    patternId: undefined,
    pattern: undefined,
    waveformHashes: new Map(),
    programVersion,
    clockDoubtful: false,
  });
  return { ...check, rawLine: row.raw, imported: { ...source, ...(takesN.length > 1 ? { takesN: [...takesN] } : {}) } };
}
