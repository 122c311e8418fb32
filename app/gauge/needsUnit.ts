import type { LinePattern } from "./linePattern.ts";

/** Whether a pattern's readings may come without a unit: then `unit` has to say in which. */
export function needsUnit(pattern: LinePattern): boolean {
  const forms = [
    pattern.fields,
    ...pattern.others.filter((other) => other.means === "reading").map((other) => other.fields),
  ];
  return forms.some(
    (fields) => fields.some((f) => f.field === "force") && !fields.some((f) => f.field === "unit" && !f.optional),
  );
}
