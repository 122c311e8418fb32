import type { ImportProblem } from "../../app/contract/importViews.ts";
import type { MappedColumn } from "./mapColumns.ts";
import { rowProblem } from "./problem.ts";
import type { Known } from "./readList.ts";
import type { RowValues } from "./toBody.ts";

/** As names are compared in the register: two that differ in case or in blanks around them are one. */
export const plainLabel = (label: string): string => label.trim().toLocaleLowerCase();

/** Looks for names and serial numbers that stand twice, in the file or in the register: the wrong one would be picked some day. */
export class Twins {
  passedOver = 0;
  readonly #known: Known;
  readonly #passOver: boolean;
  readonly #rows = { name: new Map<string, number>(), serial: new Map<string, number>() };

  constructor(known: Known, passOver: boolean) {
    this.#known = known;
    this.#passOver = passOver;
  }

  /** Whether a row is to be left out because its name is in the register; counts it. */
  passesOver({ name }: RowValues): boolean {
    const there = this.#passOver && typeof name === "string" && this.#known.names.has(plainLabel(name));
    if (there) this.passedOver += 1;
    return there;
  }

  problems(values: RowValues, row: number, columns: readonly MappedColumn[]): ImportProblem[] {
    return [
      ...this.#look("name", values.name, this.#known.names, row, columns),
      ...this.#look("serial", values.serial, this.#known.serials, row, columns),
    ];
  }

  #look(
    field: "name" | "serial",
    value: string | number | undefined,
    known: ReadonlySet<string>,
    row: number,
    columns: readonly MappedColumn[],
  ): ImportProblem[] {
    if (typeof value !== "string") return [];
    const label = plainLabel(value);
    const column = columns.find((c) => c.field?.field === field)?.name;
    const first = this.#rows[field].get(label);
    if (first !== undefined) {
      const message = `"${value}" stands in row ${first} already; the two could not be told apart`;
      return [rowProblem("twinInFile", row, column, String(first), message)];
    }
    this.#rows[field].set(label, row);
    if (!known.has(label)) return [];
    return [rowProblem("twinInRegister", row, column, value, `"${value}" is in the register already`)];
  }
}
