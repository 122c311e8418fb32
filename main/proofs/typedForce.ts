import { AppError } from "../../app/contract/result.ts";
import { toNewtons } from "../../app/quantity/forceUnits.ts";
import { parseForce } from "../../app/quantity/parseForce.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";

/**
 * A force as somebody typed it, in newtons. A bare number is in `unit`, the one the gauge shows.
 * @throws AppError  `force.torque`, `force.mass`, `force.unreadable`, or `force.bare` where no unit is known
 */
export function typedForce(
  text: string,
  unit: string | undefined,
  field: string,
): { readonly forceN: number; readonly unit: string } {
  const force = parseForce(text);
  if (force.kind === "force") return { forceN: force.forceN, unit: force.unit };
  if (force.kind === "bare") {
    const known = unit === undefined ? undefined : parseForceUnit(unit);
    if (known?.kind === "force") return { forceN: toNewtons(force.value, known.unit), unit: known.unit };
    throw new AppError("invalid", "Which unit? Write it behind the number, such as 17.92 kN.", {
      key: "force.bare",
      field,
    });
  }
  throw new AppError("invalid", force.reason, { key: `force.${force.kind}`, field });
}
