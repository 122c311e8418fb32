import { strToU8, zipSync } from "fflate";

/** A cell as a workbook holds it: a figure, a text among the shared ones, or markup of its own. */
export type Cell =
  | string
  | number
  | null
  | { readonly xml: string }
  | { readonly date: number }
  | { readonly formula: string; readonly value?: number };

export type SheetOf = {
  readonly name?: string;
  readonly state?: "hidden" | "veryHidden";
  readonly rows: readonly (readonly Cell[])[];
  /** Joined cells, such as A2:A4. */
  readonly joined?: readonly string[];
};

/** The parts of a small workbook by hand, after ECMA-376-1, 12.3 and 18.3. */
export function workbookParts(sheets: readonly SheetOf[], { date1904 = false } = {}): Record<string, string> {
  const strings: string[] = [];
  const relations = sheets.map((_, i) => relation(`rId${i + 1}`, "worksheet", `worksheets/sheet${i + 1}.xml`));
  const tags = sheets.map(({ name, state }, i) => {
    const hidden = state === undefined ? "" : ` state="${state}"`;
    return `<sheet name="${name ?? `Sheet${i + 1}`}" sheetId="${i + 1}"${hidden} r:id="rId${i + 1}"/>`;
  });
  const parts: Record<string, string> = {
    "[Content_Types].xml": `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>`,
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${REL}"><workbookPr date1904="${date1904}"/><sheets>${tags.join("")}</sheets></workbook>`,
    "xl/styles.xml": `<styleSheet xmlns="${MAIN}"><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>`,
  };
  for (const [i, { rows, joined = [] }] of sheets.entries()) {
    const merges =
      joined.length === 0
        ? ""
        : `<mergeCells>${joined.map((ref) => `<mergeCell ref="${ref}"/>`).join("")}</mergeCells>`;
    const body = rows.map(
      (row, r) =>
        `<row r="${r + 1}">${row.map((cell, c) => cellXml(cell, `${letter(c)}${r + 1}`, strings)).join("")}</row>`,
    );
    parts[`xl/worksheets/sheet${i + 1}.xml`] =
      `<worksheet xmlns="${MAIN}"><sheetData>${body.join("")}</sheetData>${merges}</worksheet>`;
  }
  parts["xl/sharedStrings.xml"] =
    `<sst xmlns="${MAIN}">${strings.map((text) => `<si><t>${text}</t></si>`).join("")}</sst>`;
  relations.push(relation("rIdS", "sharedStrings", "sharedStrings.xml"), relation("rIdT", "styles", "styles.xml"));
  parts["xl/_rels/workbook.xml.rels"] =
    `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relations.join("")}</Relationships>`;
  return parts;
}

export const zipped = (parts: Readonly<Record<string, string>>): Buffer =>
  Buffer.from(
    zipSync(Object.fromEntries(Object.entries(parts).map(([path, text]) => [path, strToU8(text)])), { level: 9 }),
  );

export const workbook = (rows: SheetOf["rows"], more: Omit<SheetOf, "rows"> & { date1904?: boolean } = {}): Buffer =>
  zipped(workbookParts([{ rows, ...more }], more));

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const REL = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const relation = (id: string, type: string, target: string) =>
  `<Relationship Id="${id}" Type="${REL}/${type}" Target="${target}"/>`;
const letter = (c: number) => String.fromCharCode(65 + c);

function cellXml(cell: Cell, at: string, strings: string[]): string {
  if (cell === null) return "";
  if (typeof cell === "number") return `<c r="${at}"><v>${cell}</v></c>`;
  if (typeof cell === "string") return `<c r="${at}" t="s"><v>${strings.push(cell) - 1}</v></c>`;
  if ("xml" in cell) return cell.xml.replace("AT", at);
  if ("date" in cell) return `<c r="${at}" s="1"><v>${cell.date}</v></c>`;
  return `<c r="${at}"><f>${cell.formula}</f>${cell.value === undefined ? "" : `<v>${cell.value}</v>`}</c>`;
}
