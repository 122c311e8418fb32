import type { Input } from "../../../app/contract/methods.ts";
import type { Spindle } from "../../../app/ledger/register.ts";
import { type ForceUnit, fromNewtons, toNewtons } from "../../../app/quantity/forceUnits.ts";
import type { RuleName } from "../../../app/verdict/Judgement.ts";
import { figureText, parseNumber } from "../../words/parseNumber.ts";

export const limitNames = ["minimum", "warning", "nominal", "maximum"] as const;
export type LimitName = (typeof limitNames)[number];

/** The form as it is being filled in: texts, until they are sent. */
export type SpindleDraft = {
  readonly name: string;
  readonly machine: string;
  readonly area: string;
  readonly taper: string;
  readonly unitSerial: string;
  /** The unit the limits are typed in; empty: as the works. */
  readonly unit: ForceUnit | "";
  readonly limits: Readonly<Record<LimitName, string>>;
  readonly limitsFrom: string;
  readonly rule: RuleName | "";
  readonly intervalDays: string;
  readonly intervalToolChanges: string;
  readonly wedgeRatio: string;
  readonly springPack: string;
  readonly note: string;
  readonly retired: boolean;
};

/** A filed spindle as the form shows it, figures in `unit`. */
export function draftOf(spindle: Spindle | undefined, worksUnit: ForceUnit): SpindleDraft {
  const unit = (spindle?.unitShown ?? "") as ForceUnit | ""; // the form wrote it
  const limit = (forceN: number | undefined) =>
    figureText(forceN && fromNewtons(forceN, unit === "" ? worksUnit : unit));
  const limits = spindle?.limits ?? {};
  return {
    name: spindle?.name ?? "",
    machine: spindle?.machine ?? "",
    area: spindle?.area ?? "",
    taper: spindle?.taper ?? "",
    unitSerial: spindle?.unitSerial ?? "",
    unit,
    limits: {
      minimum: limit(limits.minimumN),
      warning: limit(limits.warningN),
      nominal: limit(limits.nominalN),
      maximum: limit(limits.maximumN),
    },
    limitsFrom: spindle?.limitsFrom ?? "",
    rule: spindle?.rule?.rule ?? "",
    intervalDays: figureText(spindle?.intervalDays),
    intervalToolChanges: figureText(spindle?.intervalToolChanges),
    wedgeRatio: figureText(spindle?.wedgeRatio),
    springPack: spindle?.springPack ?? "",
    note: spindle?.note ?? "",
    retired: spindle?.state === "retired",
  };
}

export type DraftFault = {
  readonly field: keyof SpindleDraft | LimitName;
  readonly what: "needed" | "noNumber" | "aboveZero" | "order" | "whole";
};

/** What stands against sending the form; empty when nothing does. */
export function faultsOf(draft: SpindleDraft): readonly DraftFault[] {
  const faults: DraftFault[] = [];
  if (draft.name.trim() === "") faults.push({ field: "name", what: "needed" });
  let last = 0;
  for (const field of limitNames) {
    const value = parseNumber(draft.limits[field]);
    if (value === undefined) continue;
    if (value === "unreadable") faults.push({ field, what: "noNumber" });
    else if (!(value > 0)) faults.push({ field, what: "aboveZero" });
    else if (value < last) faults.push({ field, what: "order" });
    else last = value;
  }
  for (const field of ["intervalDays", "intervalToolChanges"] as const) {
    const value = parseNumber(draft[field]);
    if (value === undefined) continue;
    if (value === "unreadable" || !Number.isInteger(value) || value < 1) faults.push({ field, what: "whole" });
  }
  const wedge = parseNumber(draft.wedgeRatio);
  if (wedge === "unreadable") faults.push({ field: "wedgeRatio", what: "noNumber" });
  else if (wedge !== undefined && !(wedge > 0)) faults.push({ field: "wedgeRatio", what: "aboveZero" });
  return faults;
}

/** The form as the call wants it. @throws RangeError  a form with faults */
export function spindleOf(
  draft: SpindleDraft,
  before: Spindle | undefined,
  worksUnit: ForceUnit,
): Input<"spindles.save"> {
  if (faultsOf(draft).length > 0) throw new RangeError("spindleOf requires a form without faults");
  const unit = draft.unit === "" ? worksUnit : draft.unit;
  const figure = (text: string) => {
    const value = parseNumber(text);
    return typeof value === "number" ? value : undefined;
  };
  const forceN = (text: string) => {
    const value = figure(text);
    return value === undefined ? undefined : toNewtons(value, unit);
  };
  const given = <T>(value: T | undefined | "") => (value === "" ? undefined : value);
  const rule = draft.rule === "" ? undefined : draft.rule === before?.rule?.rule ? before.rule : { rule: draft.rule };
  return withoutUndefined({
    spindleId: before?.spindleId,
    order: before?.order,
    name: draft.name.trim(),
    machine: draft.machine.trim(),
    area: draft.area.trim(),
    taper: draft.taper.trim(),
    unitSerial: given(draft.unitSerial.trim()),
    limits: withoutUndefined({
      minimumN: forceN(draft.limits.minimum),
      warningN: forceN(draft.limits.warning),
      nominalN: forceN(draft.limits.nominal),
      maximumN: forceN(draft.limits.maximum),
    }),
    limitsFrom: given(draft.limitsFrom.trim()),
    unitShown: given(draft.unit),
    rule,
    intervalDays: figure(draft.intervalDays),
    intervalToolChanges: figure(draft.intervalToolChanges),
    wedgeRatio: figure(draft.wedgeRatio),
    springPack: given(draft.springPack.trim()),
    note: given(draft.note),
    state: draft.retired ? "retired" : "inUse",
  });
}

function withoutUndefined<T extends object>(value: T): T {
  // The same object less what is absent; the schema takes an absent key, not every transport an undefined one.
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as T;
}
