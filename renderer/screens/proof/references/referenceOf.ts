import type { Input } from "../../../../app/contract/methods.ts";
import type { Reference } from "../../../../app/ledger/proof.ts";
import { type ForceUnit, toNewtons } from "../../../../app/quantity/forceUnits.ts";
import { parseNumber } from "../../../words/parseNumber.ts";
import type { ReferenceDraft } from "./referenceDraft.ts";

/** What is wrong with a field, by the words that say it. */
export type ReferenceFault =
  | "aboveZero"
  | "zeroOrMore"
  | "noNumber"
  | "dateNeeded"
  | "labelNeeded"
  | "twiceLabel"
  | "densityRange"
  | "gravityRange"
  | "latitudeRange"
  | "heightRange"
  | "rangeWrong";

export type ReadReference = {
  /** As the core takes it. What a field holds that is no figure is 0 there and stands in `faults`. */
  readonly reference: Omit<Input<"references.save">, "referenceId">;
  readonly faults: ReadonlyMap<string, ReferenceFault>;
};

/** Reads the fields of the kind that is chosen; the others are let be. */
export function referenceOf(draft: ReferenceDraft, unit: ForceUnit): ReadReference {
  const faults = new Map<string, ReferenceFault>();
  const figure = (field: string, typed: string, good: (v: number) => boolean, fault: ReferenceFault): number => {
    const value = parseNumber(typed);
    if (value === "unreadable") faults.set(field, "noNumber");
    else if (value === undefined || !good(value)) faults.set(field, fault);
    return typeof value === "number" ? value : 0;
  };
  const above = (field: string, typed: string) => figure(field, typed, (v) => v > 0, "aboveZero");
  const orZero = (field: string, typed: string) =>
    typed.trim() === "" ? 0 : figure(field, typed, (v) => v >= 0, "zeroOrMore");
  const inNewtons = (value: number) => toNewtons(value, unit);
  const date = (field: string, typed: string) => {
    if (typed === "") faults.set(field, "dateNeeded");
    return typed;
  };
  const sections = { weights, transducer, typed };
  const reference = {
    name: draft.name.trim(),
    kind: draft.kind,
    state: draft.retired ? ("retired" as const) : ("inUse" as const),
    ...(draft.serial.trim() === "" ? {} : { serial: draft.serial.trim() }),
    ...(draft.certificate.trim() === "" ? {} : { certificate: draft.certificate.trim() }),
    ...sections[draft.kind](),
  };
  return { reference, faults };

  function weights(): { readonly weights: NonNullable<Reference["weights"]> } {
    const rows = draft.weights.map((w, i) => {
      const label = w.label.trim();
      if (label === "") faults.set(`label${i}`, "labelNeeded");
      else if (draft.weights.findIndex((other) => other.label.trim() === label) < i)
        faults.set(`label${i}`, "twiceLabel");
      return {
        label,
        massKind: draft.massKind,
        massKg: above(`mass${i}`, w.mass),
        massStandardKg: orZero(`massU${i}`, w.massU) / 2000,
        densityKgM3: figure(`density${i}`, w.density, (v) => v >= 1000 && v <= 23_000, "densityRange"),
        densityStandardKgM3: orZero(`densityU${i}`, w.densityU) / 2,
      };
    });
    return { weights: { weights: rows, gravity: gravity() } };
  }

  function gravity(): NonNullable<Reference["weights"]>["gravity"] {
    if (draft.gravityFrom === "measured")
      return {
        from: "measured",
        value: figure("gravity", draft.gravity, (v) => v > 9.7 && v < 9.9, "gravityRange"),
        standard: orZero("gravityU", draft.gravityU) / 2,
      };
    return {
      from: "place",
      latitudeDeg: figure("latitude", draft.latitude, (v) => Math.abs(v) <= 90, "latitudeRange"),
      heightM: figure("height", draft.height, (v) => v >= -500 && v <= 9000, "heightRange"),
    };
  }

  function transducer(): { readonly transducer: NonNullable<Reference["transducer"]> } {
    const perUnit = inNewtons(1);
    const coefficients = draft.coefficients.map(
      (c, k) => figure(`coefficient${k}`, c, () => true, "noNumber") * perUnit ** (1 - k),
    );
    while (coefficients.length > 2 && coefficients.at(-1) === 0) coefficients.pop();
    const capacity = above("capacity", draft.capacity);
    const from = orZero("from", draft.from);
    const to = draft.to.trim() === "" ? capacity : figure("to", draft.to, (v) => v > from, "rangeWrong");
    return {
      transducer: {
        capacityN: inNewtons(capacity),
        calibratedOn: date("calibratedOn", draft.calibratedOn),
        dueOn: date("dueOn", draft.dueOn),
        driftPerYear: orZero("drift", draft.drift) / 100,
        ...(draft.class.trim() === "" ? {} : { class: draft.class.trim() }),
        unitShown: unit,
        curve: {
          version: 1,
          coefficients,
          fromN: inNewtons(from),
          toN: inNewtons(to),
          uncertainty: draft.points.map(({ at, u }, i) => ({
            atN: at.trim() === "" ? inNewtons(to) : inNewtons(orZero(`at${i}`, at)),
            relative: above(`u${i}`, u) / 200,
          })),
        },
      },
    };
  }

  function typed(): { readonly typed: NonNullable<Reference["typed"]> } {
    const relative = orZero("relative", draft.relative) / 200;
    const standardN = inNewtons(orZero("fixed", draft.fixed)) / 2;
    // Nothing is known without any uncertainty at all.
    if (relative === 0 && standardN === 0 && !faults.has("relative")) faults.set("relative", "aboveZero");
    return {
      typed: {
        relative,
        standardN,
        ...(draft.capacity.trim() === "" ? {} : { capacityN: inNewtons(above("capacity", draft.capacity)) }),
        ...(draft.dueOn === "" ? {} : { dueOn: draft.dueOn }),
      },
    };
  }
}
