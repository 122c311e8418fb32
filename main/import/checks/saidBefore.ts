import type { ListFile, NameAnswer } from "../../../app/contract/importViews.ts";
import type { EarlierImport } from "./Register.ts";

/** What is known of how a file is to be read. */
export type Filled = Pick<ListFile, "mapping" | "unit" | "dateOrder"> & { readonly names: readonly NameAnswer[] };

/**
 * What the user has said about a file, and for the rest what was said at the last import with the same head. A spindle
 * that was made then is known by now.
 */
export function saidBefore(file: ListFile, columns: readonly string[], imports: readonly EarlierImport[]): Filled {
  const last = imports.find(({ reading }) => reading !== undefined && sameHead(reading.columns, columns))?.reading;
  const names = (last?.names ?? []).filter((n) => n.to !== "create");
  return {
    mapping: file.mapping ?? last?.columns.map((c) => c.field),
    unit: file.unit ?? last?.unit,
    dateOrder: file.dateOrder ?? last?.dateOrder,
    // The later of two answers holds.
    names: [...names, ...(file.names ?? [])] as NameAnswer[], // an id, or a word that its schema knew
  };
}

const sameHead = (then: readonly { readonly name: string }[], now: readonly string[]): boolean =>
  then.length === now.length && then.every(({ name }, i) => name === now[i]!.slice(0, 500));
