import type { Check } from "../../app/ledger/check.ts";
import type { FiledEntry } from "../store/Store.ts";
import {
  allTables,
  cycleLines,
  cycleTable,
  headerLine,
  kindLine,
  kindTables,
  type Table,
  waveformTable,
} from "./tables.ts";
import type { ZipMember } from "./ZipMember.ts";
import type { ZipWriter } from "./ZipWriter.ts";

/** The CSV files of an archive, all growing at once. */
export class CsvFiles {
  readonly tables: readonly Table[];
  readonly #members: ReadonlyMap<Table, ZipMember>;

  constructor(zip: ZipWriter, withWaveforms: boolean) {
    this.tables = allTables.filter((table) => withWaveforms || table !== waveformTable);
    this.#members = new Map(
      this.tables.map((table) => [table, zip.member(table.file, table === waveformTable ? 1 : 3)]),
    );
    for (const [table, member] of this.#members) member.write(headerLine(table));
  }

  take(entry: FiledEntry): void {
    this.#of(kindTables.get(entry.kind)!).write(kindLine(entry.kind, entry, entry.body));
    const check = checkIn(entry);
    if (check === undefined) return;
    if (entry.kind === "replacement") this.#of(kindTables.get("check")!).write(kindLine("check", entry, check));
    this.#of(cycleTable).write(cycleLines(entry, check));
  }

  waveform(line: string): void {
    this.#of(waveformTable).write(line);
  }

  async room(): Promise<void> {
    for (const member of this.#members.values()) await member.room();
  }

  #of(table: Table): ZipMember {
    return this.#members.get(table)!; // made for every table asked for
  }
}

/** The check an entry brings: its body, or what a replacement puts in the place of another. */
export function checkIn(entry: FiledEntry): Check | undefined {
  if (entry.kind === "check") return entry.body as Check; // its schema has seen it
  return entry.kind === "replacement" ? (entry.body as { by: Check }).by : undefined;
}
