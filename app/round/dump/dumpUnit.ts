import { type ForceUnit, forceUnits } from "../../quantity/forceUnits.ts";
import { parseForceUnit } from "../../quantity/parseForceUnit.ts";
import type { DumpField } from "./DumpFormat.ts";
import type { DumpHints, DumpQuestion } from "./LearnedDump.ts";

/** A unit said once, in a line without figures. */
export function unitOfHead(bodies: readonly string[]): ForceUnit | undefined {
  const words = bodies.filter((body) => !/\d/.test(body)).flatMap((body) => body.split(/[\s;,|[\]()]+/));
  const meanings = words.map(parseForceUnit).filter((m) => m.kind === "force");
  return meanings.length > 0 && meanings.every((m) => m.unit === meanings[0]!.unit) ? meanings[0]!.unit : undefined;
}

/** Asked where the figures come without a unit, or with a mass. */
export function unitQuestion(
  columns: readonly (readonly string[])[],
  fields: readonly DumpField["field"][],
  hints: DumpHints,
): DumpQuestion[] {
  const unitAt = fields.indexOf("unit");
  const force = columns[fields.indexOf("force")]!;
  const texts = unitAt >= 0 ? columns[unitAt]! : force.map((cell) => /[^\d\s.,+-].*$/.exec(cell)?.[0] ?? "");
  const meanings = texts.filter((t) => t !== "").map(parseForceUnit);
  const mass = meanings.find((m) => m.kind === "mass");
  if (mass?.kind === "mass" && hints.massMeansForce === undefined) {
    const question = `The records say ${texts.find((t) => parseForceUnit(t).kind === "mass")}, which is a mass: does this gauge mean force (${mass.unit})?`;
    return [{ field: "unit", question, proposal: mass.unit }];
  }
  if (meanings.some((m) => m.kind !== "unknown") || hints.unit !== undefined) return [];
  return [
    {
      field: "unit",
      question: `The figures come without a unit of force: which one? (${forceUnits.slice(0, 5).join(", ")} …)`,
    },
  ];
}
