import type { ImportProblem } from "../../../app/contract/importViews.ts";
import { mean } from "../../../app/numerics/mean.ts";
import { type ForceUnit, fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../../app/quantity/parseForceUnit.ts";
import { TAKE } from "../fields.ts";
import type { MappedColumn } from "../mapColumns.ts";
import { readCell } from "../readCell.ts";
import type { Table, TableRow } from "../Table.ts";
import { decimalsIn } from "./decimalsIn.ts";
import type { ReadRow } from "./Reading.ts";

const MOST_N = 1e9;
/** As wide as the field for a unit in a check: the short and long ton do not fit, and are shown in newtons. */
const UNIT_WIDTH = 8;

/** Notes what stands against a row, at a column. */
type Stop = (code: ImportProblem["code"], column: MappedColumn, about: string, message: string) => void;
type Force = { readonly valueN: number; readonly unit: ForceUnit; readonly text: string; readonly decimals: number };

/** Reads a row's force: the one figure of its column, or the mean of its takes, as many as the row holds. */
export class ForceReader {
  readonly #columns: readonly MappedColumn[];
  readonly #isBook: boolean;
  readonly #decimals: number;

  constructor(table: Table, columns: readonly MappedColumn[]) {
    this.#columns = columns.filter(({ field }) => field?.field === "value" || field?.field === TAKE);
    this.#isBook = table.book !== undefined;
    const places = this.#columns.map(({ place }) => place);
    this.#decimals = this.#isBook ? decimalsIn(table, places) : 0;
  }

  /** The column a problem of the force as a whole is told at. */
  get column(): MappedColumn {
    return this.#columns[0]!; // the mapping is whole
  }

  /**
   * @param unit  of figures that name none themselves, and whose column names none
   * @returns  undefined: it cannot be read, which `stop` was told
   */
  read(
    row: TableRow,
    unit: ForceUnit | undefined,
    stop: Stop,
  ): Pick<ReadRow, "valueN" | "takesN" | "text" | "unit"> | undefined {
    const filled = this.#columns.filter(({ place }) => row.cells[place]!.trim() !== "");
    if (filled.length === 0) {
      stop("needed", this.column, "value", "value is needed");
      return undefined;
    }
    const forces = filled.map((column) => this.#force(column, row.cells[column.place]!.trim(), unit, stop));
    const [first] = forces;
    if (first === undefined || !forces.every((force) => force !== undefined)) return undefined;
    const shown = first.unit.length > UNIT_WIDTH ? "N" : first.unit;
    if (forces.length === 1) return { valueN: first.valueN, takesN: [], text: first.text, unit: shown };
    const takesN = forces.map(({ valueN }) => valueN);
    const valueN = mean(takesN);
    const decimals = Math.max(...forces.map((force) => force.decimals));
    return { valueN, takesN, text: `${fromNewtons(valueN, first.unit).toFixed(decimals)} ${first.unit}`, unit: shown };
  }

  #force(column: MappedColumn, text: string, fallback: ForceUnit | undefined, stop: Stop): Force | undefined {
    const unit = column.head.unit ?? fallback;
    const read = readCell(text, "force", { unit, percent: false });
    if (!("value" in read)) {
      stop(read.code, column, text, read.message);
      return undefined;
    }
    const valueN = Number(read.value);
    if (!(valueN > 0 && valueN <= MOST_N)) {
      stop("range", column, "value", "a clamping force is above zero");
      return undefined;
    }
    const own = parseForceUnit(/[^\d\s.,'+-].*$/.exec(text)?.[0] ?? "");
    const written = own.kind === "force" ? own.unit : (unit ?? "N");
    // A workbook keeps 18.00 as 18: the columns' own number of places says how finely it was read.
    const figure = this.#isBook ? fromNewtons(valueN, written).toFixed(this.#decimals) : text;
    const asWritten = own.kind === "force" ? text : `${figure} ${written}`;
    return { valueN, unit: written, text: asWritten, decimals: decimalsOf(own.kind === "force" ? text : figure) };
  }
}

/** Places behind the last mark of a figure. */
const decimalsOf = (text: string) => /\d[.,](\d{1,6})(?![\d.,])/.exec(text)?.[1]?.length ?? 0;
