import { controlNames } from "../controlCharacters.ts";
import type { PatternField } from "../linePattern.ts";
import type { FoundChecksum } from "./checksumTrials.ts";

/** A field and the border of tokens it begins at: a checksum's span is told by them. */
export type Piece = { readonly field: PatternField; readonly border: number };

type Ending = { readonly checksum: FoundChecksum | undefined; readonly blindTail: number; readonly suffix: string };

/** Puts the pieces of a line together: neighbouring texts become one, checksum and end bytes follow. */
export function assemble(pieces: readonly Piece[], { checksum, blindTail, suffix }: Ending): PatternField[] {
  const first = checksum === undefined ? 0 : pieces.findIndex((piece) => piece.border >= checksum.from);
  const last = checksum === undefined ? -1 : pieces.findLastIndex((piece) => piece.border < checksum.to);
  const fields: PatternField[] = [];
  let firstField = 1;
  let lastField = 1;
  pieces.forEach(({ field }, i) => {
    const before = fields.at(-1);
    const joins = field.field === "text" && before?.field === "text" && i !== first && i !== last + 1;
    if (joins) fields[fields.length - 1] = { field: "text", text: before.text + field.text };
    else fields.push(field);
    if (i === first) firstField = fields.length;
    if (i <= last) lastField = fields.length;
  });
  if (checksum !== undefined) {
    const { method, as, complement } = checksum;
    fields.push({ field: "checksum", method, as, complement, first: firstField, last: lastField });
  }
  if (blindTail > 0) fields.push({ field: "ignored", what: "hex", width: blindTail });
  for (const character of suffix) fields.push({ field: "control", name: controlNames[character.charCodeAt(0)]! });
  return fields;
}
