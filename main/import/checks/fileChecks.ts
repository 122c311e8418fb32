import type { Imported, ListFile } from "../../../app/contract/importViews.ts";
import type { Spindle } from "../../../app/ledger/register.ts";
import { sha256 } from "../../store/ledger/sha256.ts";
import { registered } from "../../store/records/register.ts";
import type { EntryDraft, Store } from "../../store/Store.ts";
import { plainLabel } from "../Twins.ts";
import { importedCheck } from "./importedCheck.ts";
import { Past } from "./Past.ts";
import type { ReadChecks, ReadRow } from "./Reading.ts";
import type { Register } from "./Register.ts";

type Filing = {
  readonly store: Store;
  readonly file: Pick<ListFile, "fileName" | "base64">;
  readonly read: ReadChecks;
  readonly works: Register["works"];
  readonly programVersion: string;
  readonly operatorId: string | undefined;
  readonly goOn: () => void;
  readonly progress: (done: number, total: number) => void;
};

/**
 * Files the checks of a spreadsheet, spindle by spindle and in order of time, with the spindles that are made for them
 * and an entry that names the file, its hash and how it was read: in one transaction, all or nothing.
 * @throws what `goOn` throws; nothing stands then
 */
export function fileChecks({ store, file, read, works, programVersion, operatorId, goOn, progress }: Filing): Imported {
  const importId = store.newId();
  const fileHash = sha256(Buffer.from(file.base64, "base64"));
  const { rows, preview, reading } = read;
  store.appendAll(drafts());
  return { importId, imported: rows.length, passedOver: preview.passedOver };

  function* drafts(): Generator<EntryDraft> {
    const known = new Map(registered(store.db, "spindle").map((s) => [s.spindleId, s]));
    let done = 0;
    for (const those of Map.groupBy(rows, (row) => row.spindleId ?? `new ${plainLabel(row.named)}`).values()) {
      const spindle = known.get(those[0]!.spindleId ?? "") ?? made(those[0]!, store.newId()); // a group has one
      if (!known.has(spindle.spindleId)) yield { kind: "spindle", body: spindle };
      const past = new Past(store.db, spindle.spindleId);
      for (const row of those.toSorted((a, b) => a.atMs - b.atMs)) {
        if (done % 256 === 0) goOn();
        progress(done, rows.length);
        done += 1;
        const source = { importId, fileHash, row: row.row };
        const before = past.before(row.atMs, row.date);
        const check = importedCheck(row, {
          checkId: store.newId(),
          works,
          spindle,
          past: before,
          programVersion,
          source,
        });
        past.enter(check, row.date);
        yield { kind: "check", body: check };
      }
    }
    goOn(); // the last moment at which stopping costs nothing
    const { fileName } = file;
    yield {
      kind: "import",
      body: {
        importId,
        fileName,
        fileHash,
        entries: rows.length,
        what: "checks",
        reading,
        ...(operatorId === undefined ? {} : { operatorId }),
      },
    };
  }
}

/** A place of which only the name is known: without limits nothing can be said of its values, and nothing is. */
function made({ named }: ReadRow, spindleId: string): Spindle {
  return { spindleId, name: named.trim(), machine: "", area: "", taper: "", limits: {}, state: "inUse" };
}
