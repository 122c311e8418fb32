import { LISTS, type Table } from "./tables.ts";

/** Where a description of tables is looked for beside them. */
export const CSVW = "csv-metadata.json";

/**
 * The machine-readable description of the tables.
 * @see W3C Recommendation "Metadata Vocabulary for Tabular Data" (2015), sections 5.3 to 5.6
 */
export function csvwMetadata(tables: readonly Table[], about: { readonly program: string; readonly madeAt: string }) {
  return {
    "@context": ["http://www.w3.org/ns/csvw", { "@language": "en" }],
    "dc:title": "Records of spindle clamping force",
    "dc:creator": about.program,
    "dc:date": about.madeAt,
    "dc:description":
      "Forces in newtons, times in seconds, ratios as fractions. In text columns a leading apostrophe was put before " +
      "= + - @, tab, line end or apostrophe so that no spreadsheet takes the cell for a formula; take one off.",
    dialect: {
      delimiter: ",",
      quoteChar: '"',
      doubleQuote: true,
      lineTerminators: ["\r\n"],
      encoding: "utf-8",
      header: true,
    },
    tables: tables.map(({ file, about: text, columns }) => ({
      url: file,
      "dc:description": text,
      tableSchema: {
        columns: columns.map(({ name, datatype }) => ({
          name,
          titles: name,
          datatype,
          ...(LISTS.has(name) ? { separator: " " } : {}),
          ...unitOf(name, datatype),
        })),
      },
    })),
  };
}

/** Names carry their unit at the end, as everywhere in the program. */
function unitOf(name: string, datatype: string): { readonly "dc:description"?: string } {
  if (datatype !== "double") return {};
  if (/NPerS$/.test(name)) return { "dc:description": "newtons per second" };
  if (/N$/.test(name)) return { "dc:description": "newtons" };
  if (/S$/.test(name)) return { "dc:description": "seconds" };
  if (/Hz$/.test(name)) return { "dc:description": "hertz" };
  return /C$/.test(name) ? { "dc:description": "degrees Celsius" } : {};
}
