import { type ForceUnit, forceUnits } from "../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import { UsageError } from "./Command.ts";

/**
 * A force unit named on the command line.
 * @throws UsageError  a torque, a mass, or no unit known here
 */
export function parseForceName(text: string): ForceUnit {
  const exact = forceUnits.find((unit) => unit === text);
  if (exact !== undefined) return exact;
  const meaning = parseForceUnit(text);
  if (meaning.kind === "force") return meaning.unit;
  if (meaning.kind === "torque") throw new UsageError(meaning.reason);
  if (meaning.kind === "mass")
    throw new UsageError(`${text} is a unit of mass; write ${meaning.unit} where a force is meant`);
  throw new UsageError(`"${text}" is no force unit known here; known are ${forceUnits.join(", ")}`);
}
