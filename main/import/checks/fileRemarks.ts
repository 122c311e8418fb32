import type { ImportProblem } from "../../../app/contract/importViews.ts";
import { fileRemark } from "../problem.ts";
import type { Table } from "../Table.ts";
import type { NameBook } from "./NameBook.ts";
import type { ReadRow } from "./Reading.ts";
import type { Register } from "./Register.ts";

type About = {
  readonly table: Table;
  readonly fileHash: string;
  readonly register: Register;
  readonly names: NameBook;
  readonly rows: readonly ReadRow[];
  readonly passedOver: number;
};

/** What is said of the file as a whole and stands against nothing. */
export function fileRemarks({ table, fileHash, register, names, rows, passedOver }: About): ImportProblem[] {
  const found: ImportProblem[] = [];
  const earlier = register.imports.find((one) => one.fileHash === fileHash);
  if (earlier !== undefined) {
    const on = earlier.at.slice(0, 10);
    found.push(fileRemark("sameFile", on, `This very file was imported on ${on}.`));
  }
  const { hidden = 0 } = table.book ?? {};
  if (hidden > 0) found.push(fileRemark("hiddenSheets", String(hidden), `${hidden} hidden sheets are not read.`));
  if (passedOver > 0) {
    const what =
      rows.length === 0
        ? "Every check of it is in the records already: nothing would be added"
        : `${passedOver} checks are in the records already and are passed over`;
    found.push(fileRemark("alreadyThere", String(passedOver), `${what}.`));
  }
  const tools = names.unknown().filter(({ thing, to }) => thing !== "spindle" && to === undefined);
  if (tools.length > 0) {
    const those = tools.map(({ name }) => name).join(", ");
    found.push(
      fileRemark(
        "toolUnknown",
        those,
        `Not in the register, and left out of the checks unless you say which they are: ${those}.`,
      ),
    );
  }
  const moved = baselinesMoved(rows, register);
  if (moved > 0) {
    const message = `${moved} spindles get an older check as the first of their history, with which later ones are compared; choose another on the spindle's page where that is wrong.`;
    found.push(fileRemark("baselineMoves", String(moved), message));
  }
  return found;
}

function baselinesMoved(rows: readonly ReadRow[], { baselineAtMs }: Register): number {
  const earliest = new Map<string, number>();
  for (const { spindleId, atMs } of rows) {
    if (spindleId !== undefined && atMs < (earliest.get(spindleId) ?? Infinity)) earliest.set(spindleId, atMs);
  }
  return [...earliest].filter(([id, atMs]) => atMs < (baselineAtMs(id) ?? -Infinity)).length;
}
