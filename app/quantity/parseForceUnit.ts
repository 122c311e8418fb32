import type { ForceUnit } from "./forceUnits.ts";
import { forceNames, massNames } from "./unitNames.ts";

/**
 * What a unit's text means. `mass`: by the book no force; `unit` is the force meant if the user confirms once
 * that this gauge means force. `torque`: never a force; `reason` says so in words for the user.
 */
export type UnitMeaning =
  | { readonly kind: "force"; readonly unit: ForceUnit }
  | { readonly kind: "mass"; readonly unit: ForceUnit }
  | { readonly kind: "torque"; readonly reason: string }
  | { readonly kind: "unknown" };

const length = "(?:mm|cm|m|km|ft|feet|foot|in|inch(?:es)?|metres?|meters?)";
const pull =
  "(?:[mcdkM]?N|daN|MN|(?:kilo|deca|mega)?newtons?|kgf?s?|kilos?|kp|gf|tf?|lbf?s?|pounds?|ozf?|ounces?|dyn|kips?|pdl|poundals?|" +
  "(?:pounds?|kilograms?|ounces?)-?force)";
const join = "[ .·⋅*×x_-]*";
const torques = [new RegExp(`^${pull}${join}${length}s?$`, "i"), new RegExp(`^${length}${join}${pull}$`, "i")];

/**
 * Reads the name of a unit as gauges and people write it. Case is forgiven except where it decides
 * (`mN` and `MN`), full stops and blanks around it are ignored.
 */
export function parseForceUnit(text: string): UnitMeaning {
  const name = text.trim().replace(/\.$/, "");
  const plain = name.toLowerCase().replace(/[\s_.()-]+/g, "");
  // Case decides here, and "mn" alone stays open: milli or mega is a factor of a billion.
  if (name === "mN" || name === "MN") return { kind: "force", unit: name };
  if (/^[A-Za-z][^.·⋅*×]*$/.test(name)) {
    const force = forceNames.get(plain);
    if (force !== undefined) return { kind: "force", unit: force };
    const mass = massNames.get(plain);
    if (mass !== undefined) return { kind: "mass", unit: mass };
  }
  if (plain === "mn" && plain.length === name.length) return { kind: "unknown" };
  if (name.length <= 40 && torques.some((torque) => torque.test(name))) {
    return { kind: "torque", reason: `${name} is a unit of torque, and torque is no force: it cannot be read as one` };
  }
  return { kind: "unknown" };
}
