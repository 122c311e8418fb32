import type { ImportProblem, NamedThing } from "../../../app/contract/importViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../../app/quantity/parseForceUnit.ts";
import type { MappedColumn } from "../mapColumns.ts";
import { rowProblem } from "../problem.ts";
import { readCell } from "../readCell.ts";
import { type DateOrder, readDay, readTime } from "../readDay.ts";
import type { Table, TableRow } from "../Table.ts";
import { ForceReader } from "./ForceReader.ts";
import { isFarOff } from "./isFarOff.ts";
import { joinedCells } from "./joinedCells.ts";
import type { NameBook } from "./NameBook.ts";
import type { ReadRow } from "./Reading.ts";
import type { Register } from "./Register.ts";
import { WallClock } from "./WallClock.ts";

/** Before that nobody measured a clamping force, and a spreadsheet that lost its dates begins in 1900. */
const FIRST_DAY = "1950-01-01";
/** A day without a time of day is taken at noon. */
const NOON_S = 43_200;

export type RowsToRead = {
  readonly table: Table;
  readonly columns: readonly MappedColumn[];
  readonly unit: string | undefined;
  readonly order: DateOrder | undefined;
  readonly names: NameBook;
  readonly register: Register;
};

/** Reads the rows of a table of checks one by one, and notes what cannot be read. */
export class RowReader {
  readonly problems: ImportProblem[] = [];
  readonly #work: RowsToRead;
  readonly #at: Readonly<Record<string, MappedColumn | undefined>>;
  readonly #shown: readonly MappedColumn[];
  readonly #clock: WallClock;
  readonly #forces: ForceReader;
  readonly #joined: ReadonlySet<number>;

  constructor(work: RowsToRead) {
    const { table, columns, register } = work;
    this.#work = work;
    this.#at = Object.fromEntries(columns.flatMap((c) => (c.field === undefined ? [] : [[c.field.field, c]])));
    this.#shown = columns.filter((c) => c.field?.field !== "operator");
    this.#clock = new WallClock(register.works.timeZone);
    this.#forces = new ForceReader(table, columns);
    const joined = joinedCells(table, columns);
    this.problems.push(...joined.problems);
    this.#joined = joined.valueRows;
  }

  /** Undefined: it cannot be taken, and why stands among the problems; or it is to be left out. */
  read(row: TableRow): ReadRow | undefined {
    const { columns } = this.#work;
    if (row.cells.length !== columns.length) {
      const counts = `it has ${row.cells.length} cells and the head ${columns.length}`;
      this.#stop("cells", row, undefined, counts, `${counts}; quote cells that hold the separator`);
      return undefined;
    }
    const before = this.problems.length;
    const spindle = this.#spindle(row);
    if (spindle === "leaveOut") return undefined;
    const when = this.#when(row);
    const value = this.#force(row);
    const tools = {
      adapterId: this.#tool(row, "adapter"),
      gaugeId: this.#tool(row, "gauge"),
      operatorId: this.#tool(row, "operator"),
    };
    const counter = this.#counter(row);
    const note = this.#text(row, "note");
    if (note.length > 10_000) this.#stop("range", row, "note", "note", "is too long");
    if (spindle === undefined || when === undefined || value === undefined || this.#stops(before)) return undefined;
    this.#lookAtSize(row, spindle.spindleId, value);
    return {
      row: row.row,
      ...spindle,
      ...when,
      ...value,
      ...tools,
      counter,
      note,
      raw: this.#shown
        .map((c) => row.cells[c.place]!.trim())
        .join(" | ")
        .slice(0, 500),
    };
  }

  #spindle(row: TableRow): { readonly spindleId: string | undefined; readonly named: string } | "leaveOut" | undefined {
    const name = this.#text(row, "spindle");
    if (name === "") return this.#stop("needed", row, "spindle", "spindle", "spindle is needed");
    if (name.length > 120) return this.#stop("range", row, "spindle", "name", "is too long for a name");
    const meaning = this.#work.names.find("spindle", name);
    if (meaning === "leaveOut") return "leaveOut";
    if (meaning === undefined) {
      const why = `"${name}" is no spindle of the register: make it, say which one it is, or leave its rows out`;
      return this.#stop("spindleUnknown", row, "spindle", name, why);
    }
    return { spindleId: meaning === "create" ? undefined : meaning, named: name };
  }

  #when(row: TableRow): Pick<ReadRow, "date" | "atMs" | "offsetMinutes"> | undefined {
    const text = this.#text(row, "day");
    if (text === "") return this.#stop("needed", row, "day", "day", "day is needed");
    const day = readDay(text, this.#work.order, this.#work.table.book?.from1904);
    if (day === undefined || day === "undecided")
      return this.#stop(
        "noDate",
        row,
        "day",
        text,
        `"${text.slice(0, 40)}" is no date here; write 2026-04-03 or 03.04.2026`,
      );
    const clock = this.#text(row, "time");
    const timeS = clock === "" ? day.timeS : readTime(clock.replace(/^\d{4}-\d\d-\d\d /, ""));
    if (clock !== "" && timeS === undefined)
      return this.#stop("noDate", row, "time", clock, `"${clock.slice(0, 40)}" is no time of day; write 14:30`);
    const at = this.#clock.instantOf(day.date, timeS ?? NOON_S);
    if (day.date < FIRST_DAY) return this.#stop("tooOld", row, "day", text, `${day.date} is before 1950`);
    // Today without a time of day is no future, though noon may be.
    const noLater = timeS === undefined ? at.atMs - NOON_S * 1_000 : at.atMs;
    if (noLater > this.#work.register.nowMs)
      return this.#stop("future", row, "day", text, `${day.date} is in the future`);
    return { date: day.date, ...at };
  }

  #force(row: TableRow): Pick<ReadRow, "valueN" | "takesN" | "text" | "unit"> | undefined {
    if (this.#joined.has(row.row)) return undefined; // told already
    const unit = this.#unit(row);
    if (unit === "wrong") return undefined;
    return this.#forces.read(row, unit, (code, column, about, message) => {
      this.problems.push(rowProblem(code, row.row, column.name, about, message));
    });
  }

  #unit(row: TableRow): ForceUnit | "wrong" | undefined {
    const said = this.#text(row, "unit");
    if (said !== "") {
      const read = readCell(said, "unit", { unit: undefined, percent: false });
      if ("value" in read) return read.value as ForceUnit; // a cell of that form holds one
      this.#stop(read.code, row, "unit", said, read.message);
      return "wrong";
    }
    const meaning = parseForceUnit(this.#work.unit ?? "");
    return meaning.kind === "force" ? meaning.unit : undefined;
  }

  #counter(row: TableRow): number | undefined {
    const text = this.#text(row, "counter");
    if (text === "") return undefined;
    const read = readCell(text, "whole", { unit: undefined, percent: false });
    if (!("value" in read)) return this.#stop(read.code, row, "counter", text, read.message);
    const count = Number(read.value);
    if (count >= 0 && Number.isSafeInteger(count)) return count;
    return this.#stop("range", row, "counter", "counter", "a counter is not below zero, and ends somewhere");
  }

  /** A tool or a person that nobody knows is left out of the check; the row's cells are kept with it. */
  #tool(row: TableRow, thing: Exclude<NamedThing, "spindle">): string | undefined {
    const name = this.#text(row, thing);
    const meaning = name === "" ? undefined : this.#work.names.find(thing, name);
    return meaning === undefined || meaning === "leaveOut" || meaning === "create" ? undefined : meaning;
  }

  #lookAtSize(row: TableRow, spindleId: string | undefined, { valueN, text }: Pick<ReadRow, "valueN" | "text">): void {
    const limits = spindleId === undefined ? undefined : this.#work.register.limits.get(spindleId);
    if (limits === undefined || !isFarOff(valueN, limits)) return;
    const why = `${text} is far from what this spindle is made for: is the unit right?`;
    this.problems.push(rowProblem("farOff", row.row, this.#forces.column.name, text, why));
  }

  #text(row: TableRow, field: string): string {
    const column = this.#at[field];
    return column === undefined ? "" : row.cells[column.place]!.trim();
  }

  #stop(
    code: ImportProblem["code"],
    { row }: TableRow,
    field: string | undefined,
    about: string,
    message: string,
  ): undefined {
    const column = field === undefined ? undefined : this.#at[field]?.name;
    this.problems.push(rowProblem(code, row, column, about, message));
    return undefined;
  }

  #stops(from: number): boolean {
    for (let i = from; i < this.problems.length; i += 1) if (this.problems[i]!.weight === "stops") return true;
    return false;
  }
}
