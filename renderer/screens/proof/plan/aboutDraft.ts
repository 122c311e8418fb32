import type { ProofAbout } from "../../../../app/contract/proofViews.ts";
import type { ProofChoices, ProofConditions } from "../../../../app/ledger/proof.ts";
import type { PermissibleError } from "../../../../app/proof/working/PermissibleError.ts";
import { type ForceUnit, fromNewtons, toNewtons } from "../../../../app/quantity/forceUnits.ts";
import { figureText, parseNumber } from "../../../words/parseNumber.ts";

/** What the report says beside the readings, as it stands in the fields. */
export type AboutDraft = {
  readonly operatorId: string | undefined;
  readonly customer: string;
  readonly workOrder: string;
  readonly edition: string;
  readonly accreditation: string;
  readonly note: string;
  readonly temperature: string;
  readonly temperatureRange: string;
  readonly pressure: string;
  readonly humidity: string;
  readonly degree: string;
  /** Permissible error: percent, or a force in `allowedUnit`. */
  readonly allowed: string;
  readonly allowedKind: PermissibleError["kind"];
  readonly allowedUnit: ForceUnit;
  readonly rule: NonNullable<ProofChoices["rule"]>["rule"];
};

export type AboutField = "temperature" | "temperatureRange" | "pressure" | "humidity" | "degree" | "allowed";

const text = (value: number | null | undefined) => figureText(value, 8);

/**
 * @param rule  of the works, where the proof has none of its own
 * @param unit  in which a permissible force is typed
 */
export function aboutDraftOf(
  about: Partial<ProofAbout>,
  operatorId: string | undefined,
  rule: AboutDraft["rule"],
  unit: ForceUnit = "N",
): AboutDraft {
  const { conditions, choices } = about;
  const mpe = choices?.mpe;
  return {
    operatorId,
    customer: about.customer ?? "",
    workOrder: about.workOrder ?? "",
    edition: about.edition ?? "",
    accreditation: about.accreditation ?? "",
    note: about.note ?? "",
    temperature: text(conditions?.temperatureC),
    temperatureRange: text(conditions?.temperatureRangeK),
    pressure: text(conditions?.pressurePa == null ? undefined : conditions.pressurePa / 100),
    humidity: text(conditions?.humidity == null ? undefined : conditions.humidity * 100),
    degree: text(choices?.degree),
    allowed: text(mpe?.kind === "absolute" ? fromNewtons(mpe.force, unit) : mpe && mpe.fraction * 100),
    allowedKind: mpe?.kind ?? "relative",
    allowedUnit: unit,
    rule: choices?.rule?.rule ?? rule,
  };
}

export type SaidAbout = {
  readonly operatorId: string | null;
  readonly customer: string | null;
  readonly workOrder: string | null;
  readonly edition: string | null;
  readonly accreditation: string | null;
  readonly note: string;
  readonly conditions: ProofConditions;
  readonly choices: Partial<ProofChoices>;
};

const ranges: Readonly<Record<AboutField, (value: number) => boolean>> = {
  temperature: (v) => v >= -20 && v <= 60,
  temperatureRange: (v) => v >= 0 && v <= 60,
  pressure: (v) => v >= 500 && v <= 1100,
  humidity: (v) => v >= 0 && v <= 100,
  degree: (v) => Number.isInteger(v) && v >= 1 && v <= 12,
  allowed: (v) => v > 0,
};

/**
 * As the core takes it; an empty field is null.
 * @returns  `faults`: fields whose figure cannot be
 */
export function aboutOf(draft: AboutDraft): { readonly said: SaidAbout; readonly faults: ReadonlySet<AboutField> } {
  const faults = new Set<AboutField>();
  const figure = (field: AboutField, scale: number): number | null => {
    const value = parseNumber(draft[field]);
    if (value === undefined) return null;
    if (value === "unreadable" || !ranges[field](value)) faults.add(field);
    return value === "unreadable" ? null : value * scale;
  };
  const line = (typed: string) => (typed.trim() === "" ? null : typed.trim());
  const mpe = allowedOf(draft, figure("allowed", 1));
  if (mpe !== null && mpe.kind !== "absolute" && mpe.fraction > 1) faults.add("allowed");
  return {
    said: {
      operatorId: draft.operatorId ?? null,
      customer: line(draft.customer),
      workOrder: line(draft.workOrder),
      edition: line(draft.edition),
      accreditation: line(draft.accreditation),
      note: draft.note,
      conditions: {
        temperatureC: figure("temperature", 1),
        temperatureRangeK: figure("temperatureRange", 1),
        pressurePa: figure("pressure", 100),
        humidity: figure("humidity", 0.01),
      },
      choices: {
        degree: figure("degree", 1),
        mpe,
        rule: mpe === null ? null : { rule: draft.rule },
      },
    },
    faults,
  };
}

function allowedOf({ allowedKind: kind, allowedUnit }: AboutDraft, figure: number | null): PermissibleError | null {
  if (figure === null) return null;
  return kind === "absolute" ? { kind, force: toNewtons(figure, allowedUnit) } : { kind, fraction: figure / 100 };
}
