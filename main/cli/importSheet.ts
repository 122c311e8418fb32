import { z } from "zod";
import {
  type ImportPreview,
  type ListFile,
  listFile,
  type NameAnswer,
  type TakesPreview,
} from "../../app/contract/importViews.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import { ImportStopped, importFile, previewFile } from "../import/importFile.ts";
import { plainLabel } from "../import/Twins.ts";
import { programVersion } from "../programVersion.ts";
import { registered } from "../store/records/register.ts";
import type { Store } from "../store/Store.ts";
import { type CommandIo, UsageError } from "./Command.ts";

/** What can be said on the command line about a spreadsheet. */
export const sheetOptions = {
  kind: { type: "string" },
  column: { type: "string", multiple: true },
  unit: { type: "string" },
  "date-order": { type: "string" },
  sheet: { type: "string" },
  spindle: { type: "string", multiple: true },
  "new-spindles": { type: "string" },
  "pass-over-known": { type: "boolean" },
  preview: { type: "boolean" },
} as const;

type Values = {
  readonly column?: string[] | undefined;
  readonly unit?: string | undefined;
  readonly "date-order"?: string | undefined;
  readonly sheet?: string | undefined;
  readonly spindle?: string[] | undefined;
  readonly "new-spindles"?: string | undefined;
  readonly "pass-over-known"?: boolean | undefined;
  readonly preview?: boolean | undefined;
};
type Done = { readonly inWords: string; readonly result: object };

/**
 * Takes a spreadsheet in, or with `--preview` says what would come of it.
 * @throws UsageError  what stands against it
 */
export async function importSheet(
  store: Store,
  chosen: Pick<ListFile, "what" | "fileName" | "base64">,
  values: Values,
  io: CommandIo,
): Promise<Done> {
  const goOn = () => io.signal.throwIfAborted();
  const look = (file: ListFile) => previewFile(file, store.db, Date.now(), goOn);
  const file = await fileSaid(store, chosen, values, look);
  if (values.preview === true) {
    const preview = await look(file);
    return { inWords: previewInWords(file, preview), result: preview };
  }
  try {
    const done = await importFile(store, file, { nowMs: Date.now(), programVersion, goOn, progress: () => {} });
    const rows = `${done.imported} rows of ${file.fileName} were imported`;
    const over = done.passedOver === 0 ? "" : `; ${done.passedOver} were there already and were passed over`;
    return { inWords: `${rows}${over}.\n`, result: done };
  } catch (cause) {
    if (cause instanceof ImportStopped)
      throw new UsageError(`${file.fileName}: ${cause.message} See it all with --preview`);
    throw cause;
  }
}

async function fileSaid(
  store: Store,
  chosen: Pick<ListFile, "what" | "fileName" | "base64">,
  values: Values,
  look: (file: ListFile) => Promise<ImportPreview>,
): Promise<ListFile> {
  const plain = parsed({
    ...chosen,
    ...(values.sheet === undefined ? {} : { sheet: values.sheet }),
    ...(values.unit === undefined ? {} : { unit: unitOf(values.unit) }),
    ...(values["date-order"] === undefined ? {} : { dateOrder: orderOf(values["date-order"]) }),
    ...(values["pass-over-known"] === true ? { passOverKnown: true } : {}),
  });
  const mapped =
    values.column === undefined ? plain : { ...plain, mapping: mappingOf(values.column, await look(plain)) };
  const names = [
    ...(values.spindle ?? []).map((text) => spindleSaid(store, text)),
    ...(await newSpindles(mapped, values["new-spindles"], look)),
  ];
  return names.length === 0 ? mapped : parsed({ ...mapped, names });
}

function parsed(file: unknown): ListFile {
  const read = listFile.safeParse(file);
  if (read.success) return read.data;
  throw new UsageError(z.prettifyError(read.error));
}

/** As the head proposes, with what was said laid over it; `HEAD=` leaves a column out. */
function mappingOf(said: readonly string[], { columns, fields }: ImportPreview): (string | null)[] {
  const pairs = said.map((text) => {
    const at = text.lastIndexOf("=");
    const [head, field] = [text.slice(0, at), text.slice(at + 1)];
    if (at < 0 || !columns.some((c) => c.name === head))
      throw new UsageError(
        `--column ${text}: there is no column ${at < 0 ? text : head}; there are ${columns.map((c) => c.name).join(", ")}`,
      );
    if (field !== "" && !fields.some((f) => f.field === field))
      throw new UsageError(`--column ${text}: a column is one of ${fields.map((f) => f.field).join(", ")}, or nothing`);
    return [head, field] as const;
  });
  const taken = new Map(pairs);
  return columns.map(({ name, field }) => {
    const own = taken.get(name);
    if (own !== undefined) return own === "" ? null : own;
    const again = fields.some((f) => f.field === field && f.many);
    return field === undefined || (!again && pairs.some(([, f]) => f === field)) ? null : field;
  });
}

function spindleSaid(store: Store, text: string): NameAnswer {
  const at = text.lastIndexOf("=");
  const [name, other] = [text.slice(0, at), text.slice(at + 1)];
  const found = registered(store.db, "spindle").find((s) => plainLabel(s.name) === plainLabel(other));
  if (at < 1 || found === undefined)
    throw new UsageError(`--spindle ${text}: write the name in the file, = and the name of a spindle in the register`);
  return { thing: "spindle", name, to: found.spindleId };
}

async function newSpindles(
  file: ListFile,
  said: string | undefined,
  look: (file: ListFile) => Promise<ImportPreview>,
): Promise<NameAnswer[]> {
  if (said === undefined) return [];
  if (said !== "create" && said !== "leave-out") throw new UsageError("--new-spindles is create or leave-out");
  const to = said === "create" ? "create" : "leaveOut";
  const { names } = await look(file);
  return names
    .filter((n) => n.thing === "spindle" && n.to === undefined)
    .map(({ name }) => ({ thing: "spindle", name, to }));
}

function unitOf(text: string): string {
  const meaning = parseForceUnit(text);
  if (meaning.kind === "force") return meaning.unit;
  throw new UsageError(
    meaning.kind === "torque"
      ? meaning.reason
      : `--unit ${text} is no unit of force; write N, daN, kN, lbf, kip or kgf`,
  );
}

function orderOf(text: string): NonNullable<ListFile["dateOrder"]> {
  if (text === "day") return "dayFirst";
  if (text === "month") return "monthFirst";
  throw new UsageError("--date-order is day or month, whichever comes first");
}

function previewInWords(file: ListFile, preview: ImportPreview): string {
  const { columns, rowCount, ready, passedOver, problems, problemCount, names, takes } = preview;
  const taken = columns.map((c) => `  ${c.name}: ${c.field ?? "left out"}\n`).join("");
  const told = problems.map((p) => `  ${p.message}\n`).join("");
  const more = problemCount > problems.length ? `  … and ${problemCount - problems.length} more.\n` : "";
  const unknown = names
    .map((n) => `  ${n.thing} "${n.name}" in ${n.rows} rows: ${n.to ?? "not in the register"}\n`)
    .join("");
  const averaged = takes === undefined ? "" : `  ${takesInWords(takes)}\n`;
  const passed = passedOver === 0 ? "" : `, ${passedOver} there already`;
  return `${file.fileName}: ${rowCount} rows, ${ready} would be imported${passed}; nothing was filed.\n${taken}${averaged}${unknown}${told}${more}`;
}

function takesInWords({ rows, example: { row, takes, mean, unit, decimals } }: TakesPreview): string {
  const figures = takes.map((figure) => figure.toFixed(decimals)).join(", ");
  return `${rows} rows hold several takes, each row one check of their mean; row ${row}: ${figures} give ${mean.toFixed(decimals)} ${unit}`;
}
