import { TableError } from "../TableError.ts";
import type { BookParts } from "./BookParts.ts";
import { attribute, eachTag } from "./eachTag.ts";

export type Sheet = { readonly name: string; readonly hidden: boolean; readonly path: string };

/** What a workbook says of itself: its sheets in order, where its strings and styles stand, and from when days count. */
export type BookFacts = {
  readonly sheets: readonly Sheet[];
  readonly strings: string | undefined;
  readonly styles: string | undefined;
  readonly from1904: boolean;
};

const BOOK = "xl/workbook.xml";
const RELATIONS = "xl/_rels/workbook.xml.rels";

/**
 * @see ECMA-376-1, 18.2.19 sheet, 18.2.28 workbookPr; ECMA-376-2, 9.3 relationships
 * @throws TableError
 */
export function bookFacts(parts: BookParts): BookFacts {
  if (!parts.has(BOOK) || !parts.has(RELATIONS))
    throw new TableError("is no XLSX workbook; save it as XLSX, or as CSV");
  const targets = relations(parts.text(RELATIONS));
  const sheets: Sheet[] = [];
  let from1904 = false;
  const whole = eachTag(parts.text(BOOK), ["workbookPr", "sheet"], (tag, attributes) => {
    if (tag === "workbookPr") from1904 = /^(1|true)$/.test(attribute(attributes, "date1904") ?? "");
    const target = tag === "sheet" ? targets.get(attribute(attributes, "id") ?? "") : undefined;
    if (target?.type !== "worksheet") return; // a sheet of charts has no cells
    const hidden = (attribute(attributes, "state") ?? "visible") !== "visible";
    sheets.push({ name: (attribute(attributes, "name") ?? "").slice(0, 120), hidden, path: target.path });
  });
  if (!whole) throw new TableError(`is no workbook this program can read: ${BOOK} is not well formed`);
  const of = (type: string) => [...targets.values()].find((t) => t.type === type && parts.has(t.path))?.path;
  return { sheets, strings: of("sharedStrings"), styles: of("styles"), from1904 };
}

type Target = { readonly type: string; readonly path: string };

function relations(xml: string): Map<string, Target> {
  const found = new Map<string, Target>();
  eachTag(xml, ["Relationship"], (_, attributes) => {
    const [id, type, target] = ["Id", "Type", "Target"].map((name) => attribute(attributes, name));
    if (id === undefined || type === undefined || target === undefined) return;
    const path = target.startsWith("/") ? target.slice(1) : `xl/${target.replace(/^\.\//, "")}`;
    found.set(id, { type: type.slice(type.lastIndexOf("/") + 1), path });
  });
  return found;
}
