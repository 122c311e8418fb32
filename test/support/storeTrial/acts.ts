import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import { exportArchive } from "../../../main/archive/exportArchive.ts";
import { importArchive } from "../../../main/archive/importArchive.ts";
import { importFile } from "../../../main/import/importFile.ts";
import { backup } from "../../../main/store/copies/backup.ts";
import { readBackupName } from "../../../main/store/copies/backupName.ts";
import { restore } from "../../../main/store/copies/restore.ts";
import { seqOf } from "../../../main/store/ledger/place.ts";
import { allEntries } from "../../../main/store/ledger/readEntry.ts";
import { signedHeads } from "../../../main/store/ledger/signedHeads.ts";
import { migrate } from "../../../main/store/migrate.ts";
import { steps } from "../../../main/store/migrations/steps.ts";
import { openReader, openStore } from "../../../main/store/open.ts";
import { checkSummary } from "../../../main/store/records/checks.ts";
import type { Store } from "../../../main/store/Store.ts";
import { aCheck, idOf } from "../aCheck.ts";
import { fileOne } from "../fullStore.ts";

/** Where an act finds its things: the data file, another hall's file, a backup, a folder for new ones. */
export type Scene = {
  readonly file: string;
  readonly other: string;
  readonly backup: string;
  /** The other hall's records as an archive. */
  readonly archive: string;
  readonly folder: string;
};

/** An act that must come about whole or not at all. `came` answers which, or what is wrong, after the writing failed. */
type Act = {
  readonly run: (scene: Scene) => Promise<void>;
  readonly came: (scene: Scene) => "whole" | "notAtAll" | string;
};

const watch = { progress: () => {}, goOn: () => {} };
const idOfCheck = (seed: number) => aCheck({ seed }).checkId;

/** The same computer and clock in every run. */
export const openHere = (path: string): Store => openStore({ path, now: () => 1_709_600_000_000, machine: "bench" });

async function inStore(path: string, work: (store: Store) => unknown): Promise<void> {
  const store = openHere(path);
  try {
    await work(store);
  } finally {
    store.close();
  }
}

function lookInto<T>(path: string, look: (db: ReturnType<typeof openReader>) => T): T {
  const db = openReader(path);
  try {
    return look(db);
  } finally {
    db.close();
  }
}

/** The other hall's entries, all or none. */
function cameOver({ file, other }: Scene): ReturnType<Act["came"]> {
  const wanted = lookInto(other, (db) => [...allEntries(db)].length);
  const origins = lookInto(file, (db) => [...allEntries(db)].map((entry) => entry.origin));
  const there = origins.filter((origin) => origin !== origins[0]).length;
  return there === 0 ? "notAtAll" : there === wanted ? "whole" : `${there} of ${wanted} entries were taken over`;
}

/** What the export makes; what it is not finished with bears the name with an ending of its own. */
export const ARCHIVE = "all.zip";

const OLD = 40;
const oldChecks = {
  what: "checks" as const,
  fileName: "old.csv",
  base64: Buffer.from(
    `Spindle,Date,Force_kN\n${Array.from({ length: OLD }, (_, i) => `Lathe ${i % 4},2019-03-${10 + (i % 20)},17.${i}\n`).join("")}`,
  ).toString("base64"),
  names: [0, 1, 2, 3].map((i) => ({ thing: "spindle" as const, name: `Lathe ${i}`, to: "create" as const })),
};

export const acts: Readonly<Record<string, Act>> = {
  accept: {
    run: ({ file }) => inStore(file, (store) => fileOne(store, 501, idOf(11))),
    came: ({ file }) => lookInto(file, (db) => (checkSummary(db, idOfCheck(501)) === undefined ? "notAtAll" : "whole")),
  },
  void: {
    run: ({ file }) =>
      inStore(file, (store) =>
        store.append([{ kind: "void", body: { checkId: idOfCheck(2), reason: "wrong adapter", operatorId: null } }]),
      ),
    came: ({ file }) =>
      lookInto(file, (db) => (checkSummary(db, idOfCheck(2))?.voided === undefined ? "notAtAll" : "whole")),
  },
  merge: {
    run: async ({ file, other }) => {
      const entries = lookInto(other, (db) =>
        [...allEntries(db)].map(({ hash, n, ...entry }) => ({ text: canonicalJson(entry), origin: entry.origin })),
      );
      await inStore(file, (store) =>
        store.merge([{ origin: entries[0]!.origin, entries }], { detail: "other hall", operatorId: null }),
      );
    },
    came: cameOver,
  },
  import: {
    run: ({ file, archive }) => inStore(file, (store) => importArchive(store, archive, watch)),
    came: cameOver,
  },
  importChecks: {
    run: ({ file }) =>
      inStore(file, async (store) => {
        const said = { nowMs: 1_709_600_000_000, programVersion: "0.1.0", ...watch };
        await importFile(store, oldChecks, said);
      }),
    came: ({ file }) =>
      lookInto(file, (db) => {
        const counted = db.prepare("SELECT count(*) FROM check_row WHERE source = 'imported'").pluck().get();
        const named = db.prepare("SELECT count(*) FROM entry WHERE kind = 'import'").pluck().get();
        if (counted === 0 && named === 0) return "notAtAll";
        return counted === OLD && named === 1 ? "whole" : `${counted} of ${OLD} checks are there, and ${named} imports`;
      }),
  },
  export: {
    run: async ({ file, folder }) => {
      const db = openReader(file);
      try {
        const options = { waveforms: true, program: "0.1.0", demo: false, nowMs: 1_709_600_000_000, watch };
        await exportArchive(db, { file: join(folder, ARCHIVE), ...options });
      } finally {
        db.close();
      }
    },
    came: ({ file, folder }) => {
      const made = join(folder, ARCHIVE);
      if (!existsSync(made)) return "notAtAll";
      const wanted = lookInto(file, (db) => [...allEntries(db)].length);
      const again = openHere(join(folder, "again.sqlite"));
      try {
        return importArchive(again, made, watch).added === wanted ? "whole" : "the archive does not hold all";
      } finally {
        again.close();
      }
    },
  },
  signHeads: {
    run: ({ file }) =>
      inStore(file, (store) => {
        fileOne(store, 502, idOf(11));
        store.signHeads();
      }),
    came: ({ file }) =>
      lookInto(file, (db) => {
        const filed = checkSummary(db, idOfCheck(502));
        if (filed === undefined) return "notAtAll";
        return signedHeads(db).some((head) => head.seq === seqOf(filed.place)) ? "whole" : "notAtAll";
      }),
  },
  backup: {
    run: async ({ file, folder }) => {
      const db = openReader(file);
      try {
        await backup(db, { folder, nowMs: 1_709_600_000_000, watch });
      } finally {
        db.close();
      }
    },
    came: ({ folder }) =>
      readdirSync(folder).some((name) => readBackupName(name) !== undefined) ? "whole" : "notAtAll",
  },
  restore: {
    run: async ({ backup: from, folder }) => {
      await restore({ from, to: join(folder, "restored.sqlite"), demo: false, now: Date.now, watch });
    },
    came: ({ folder }) => (existsSync(join(folder, "restored.sqlite")) ? "whole" : "notAtAll"),
  },
  migrate: {
    run: async ({ file, folder }) => {
      const db = new Database(file);
      try {
        db.pragma("synchronous = FULL");
        migrate(db, [...steps, nextStep], () => join(folder, "before.sqlite"));
      } finally {
        db.close();
      }
    },
    came: ({ file }) =>
      lookInto(file, (db) => {
        const version = db.pragma("user_version", { simple: true });
        const made = db.prepare("SELECT 1 FROM sqlite_schema WHERE name = 'made_by_step'").get() !== undefined;
        if (version === steps.at(-1)!.version) return made ? "the step without its number" : "notAtAll";
        return made ? "whole" : "the number without its step";
      }),
  },
};

/** A step as a later program may bring one. */
const nextStep = {
  version: steps.at(-1)!.version + 1,
  up: (db: Database.Database) => {
    db.exec("CREATE TABLE made_by_step (a TEXT) STRICT");
    db.exec("INSERT INTO made_by_step SELECT body FROM register");
  },
};
