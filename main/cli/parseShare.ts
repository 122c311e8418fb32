import { fromNewtons } from "../../app/quantity/forceUnits.ts";
import { parseDecimal, parseForce } from "../../app/quantity/parseForce.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import { UsageError } from "./Command.ts";

/** A figure given as "0.5 %", or as a force or bare figure in the unit of a column. */
export type Share =
  | { readonly kind: "percent"; readonly fraction: number; readonly ofGreatest: boolean }
  | { readonly kind: "figure"; readonly value: number };

/**
 * Reads an option such as "0.5 %", "0.5 % FS" (of the greatest load), "0.2 kN", or, where `bare` allows it, "0.2".
 * @param unit  unit of the column the figure belongs to; a force is converted to it
 * @throws UsageError  neither, not above zero, or a force for a column whose unit is no force
 */
export function parseShare(option: string, text: string, unit: string | undefined, bare: boolean): Share {
  const percent = /^([^%]+)%\s*(FS)?\s*$/i.exec(text);
  const share = percent === null ? undefined : parseDecimal(percent[1]!);
  if (share !== undefined)
    return positive(
      option,
      text,
      { kind: "percent", fraction: share / 100, ofGreatest: percent![2] !== undefined },
      share,
    );
  const force = parseForce(text);
  if (force.kind === "bare" && bare) return positive(option, text, { kind: "figure", value: force.value }, force.value);
  if (force.kind === "torque" || force.kind === "mass") throw new UsageError(`--${option} ${text}: ${force.reason}`);
  const meaning = unit === undefined ? undefined : parseForceUnit(unit);
  if (force.kind === "force" && meaning?.kind === "force") {
    const value = fromNewtons(force.forceN, meaning.unit);
    return positive(option, text, { kind: "figure", value: force.unit === meaning.unit ? force.value : value }, value);
  }
  if (force.kind === "force")
    throw new UsageError(
      `--${option} ${text}: the column names no force unit to convert it to; name it, as in reference_kN`,
    );
  throw new UsageError(`--${option} ${text}: is neither a percentage such as "0.5 %" nor a force such as "0.2 kN"`);
}

function positive(option: string, text: string, share: Share, value: number): Share {
  if (!(value > 0)) throw new UsageError(`--${option} ${text}: must be above zero`);
  return share;
}
