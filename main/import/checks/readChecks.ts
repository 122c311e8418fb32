import type { ImportPreview, ImportProblem, ListFile } from "../../../app/contract/importViews.ts";
import { fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { sha256 } from "../../store/ledger/sha256.ts";
import { dateOrderOf } from "../dateOrderOf.ts";
import { fieldsOf } from "../fields.ts";
import { type MappedColumn, mapColumns, mappingProblems } from "../mapColumns.ts";
import { markProblem } from "../markProblem.ts";
import { bookProblems, previewOf, unreadable } from "../previewOf.ts";
import { headProblem } from "../problem.ts";
import type { DateOrder } from "../readDay.ts";
import type { Table } from "../Table.ts";
import { TableError } from "../TableError.ts";
import { fileRemarks } from "./fileRemarks.ts";
import { NameBook } from "./NameBook.ts";
import type { ReadChecks, ReadRow } from "./Reading.ts";
import type { Register } from "./Register.ts";
import { readRows } from "./readRows.ts";
import { type Filled, saidBefore } from "./saidBefore.ts";

/** More is no list that anybody kept by hand. */
const MOST_ROWS = 300_000;
/** So many can be said what they are. */
const MOST_COLUMNS = 200;

/**
 * Reads a spreadsheet of old checks, all of it or nothing: every problem is found, with its row and column, before
 * anything is filed. What was said at the last import of a file with the same head is taken to hold again.
 * @param table  what `openTable` found in the file
 * @param goOn  called often; may throw to end it
 */
export function readChecks(
  file: ListFile,
  table: Table | TableError,
  register: Register,
  goOn: () => void = () => {},
): ReadChecks {
  const fields = fieldsOf.checks;
  if (table instanceof TableError) {
    return { preview: unreadable(`${file.fileName}: ${table.message}.`, fields), rows: [], reading: { columns: [] } };
  }
  const said = saidBefore(file, table.columns, register.imports);
  const columns = mapColumns(table.columns, fields, said.mapping);
  const dates = orderIn(table, columns, said.dateOrder);
  const before = beforeRows(table, columns, said, dates.problems);
  const names = new NameBook(register.names, said.names);
  const fileHash = sha256(Buffer.from(file.base64, "base64"));
  const read =
    before.length > 0
      ? { rows: [], problems: [], passedOver: 0 }
      : readRows({ table, columns, unit: said.unit, order: dates.order, names, register }, goOn);
  const problems = before.concat(read.problems, fileRemarks({ table, fileHash, register, names, ...read }));
  const preview = previewOf(table, columns, fields, {
    ready: read.rows.length,
    passedOver: read.passedOver,
    problems,
    dateOrder: dates.asked ? said.dateOrder : undefined,
    unit: said.unit,
    names: names.unknown(),
    takes: takesIn(read.rows),
  });
  return { preview, rows: preview.stopped ? [] : read.rows, reading: readingOf(table, columns, said, dates.asked) };
}

/** What becomes of rows with several takes, so that somebody can look whether the columns are what they were taken for. */
function takesIn(rows: readonly ReadRow[]): ImportPreview["takes"] {
  const several = rows.filter(({ takesN }) => takesN.length > 1);
  const [first] = several;
  if (first === undefined) return undefined;
  const { row, takesN, valueN, text, unit } = first;
  const decimals = /[.,](\d+) /.exec(text)?.[1]?.length ?? 0;
  const takes = takesN.map((forceN) => fromNewtons(forceN, unit));
  return { rows: several.length, example: { row, takes, mean: fromNewtons(valueN, unit), unit, decimals } };
}

function beforeRows(
  table: Table,
  columns: readonly MappedColumn[],
  said: Filled,
  aboutDates: readonly ImportProblem[],
): ImportProblem[] {
  const asked = bookProblems(table);
  if (asked.length > 0) return asked;
  const tooMuch = (message: string) => [headProblem("unreadable", undefined, "", message)];
  if (table.rows.length > MOST_ROWS) return tooMuch(`It has more than ${MOST_ROWS} rows: save it in parts.`);
  if (columns.length > MOST_COLUMNS)
    return tooMuch(`It has more than ${MOST_COLUMNS} columns: save only the list itself.`);
  const marks = markProblem(table, columns);
  return [
    ...mappingProblems(columns, fieldsOf.checks, said.unit, table.rows),
    ...(marks === undefined ? [] : [marks]),
    ...aboutDates,
  ];
}

type Order = {
  readonly order: DateOrder | undefined;
  readonly asked: boolean;
  readonly problems: readonly ImportProblem[];
};

/** What the dates themselves tell goes before what somebody said: it cannot be otherwise. */
function orderIn(table: Table, columns: readonly MappedColumn[], said: DateOrder | undefined): Order {
  const column = columns.find((c) => c.field?.field === "day");
  if (column === undefined) return { order: undefined, asked: false, problems: [] };
  const cells = table.rows.map(({ row, cells: all }) => ({ row, text: (all[column.place] ?? "").trim() }));
  const { order, mixed, open } = dateOrderOf(cells);
  const stop = (code: ImportProblem["code"], row: number, about: string, message: string): ImportProblem[] => [
    { row, column: column.name, code, about, message: `Row ${row}, ${column.name}: ${message}`, weight: "stops" },
  ];
  if (mixed !== undefined) {
    const why = `"${mixed.text}" has day and month the other way round than row ${mixed.other}: write all dates in one order`;
    return { order: undefined, asked: false, problems: stop("noDate", mixed.row, mixed.text, why) };
  }
  const asked = order === undefined && open !== undefined;
  if (!asked || said !== undefined) return { order: order ?? said, asked, problems: [] };
  const why = `"${open.text}" can be read in two ways: say whether the day or the month comes first`;
  return { order: undefined, asked, problems: stop("dateOrderWanted", open.row, open.text, why) };
}

function readingOf(
  table: Table,
  columns: readonly MappedColumn[],
  said: Filled,
  asked: boolean,
): ReadChecks["reading"] {
  // People's names stay out of the ledger.
  const names = said.names.flatMap(({ thing, name, to }) => (thing === "operator" ? [] : [{ thing, name, to }]));
  return {
    columns: columns.map(({ name, field }) => ({ name: name.slice(0, 500), field: field?.field ?? null })),
    ...(said.unit === undefined ? {} : { unit: said.unit }),
    ...(asked && said.dateOrder !== undefined ? { dateOrder: said.dateOrder } : {}),
    ...(table.book?.sheet === undefined ? {} : { sheet: table.book.sheet }),
    ...(names.length === 0 ? {} : { names }),
  };
}
