import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import Database from "better-sqlite3";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import { backup } from "../../../main/store/copies/backup.ts";
import { readBackupName } from "../../../main/store/copies/backupName.ts";
import { restore } from "../../../main/store/copies/restore.ts";
import { allEntries } from "../../../main/store/ledger/readEntry.ts";
import { migrate } from "../../../main/store/migrate.ts";
import { steps } from "../../../main/store/migrations/steps.ts";
import { openReader, openStore } from "../../../main/store/open.ts";
import { checkSummary } from "../../../main/store/records/checks.ts";
import type { Store } from "../../../main/store/Store.ts";
import { aCheck, idOf } from "../aCheck.ts";
import { fileOne } from "../fullStore.ts";

/** Where an act finds its things: the data file, another hall's file, a backup, a folder for new ones. */
export type Scene = { readonly file: string; readonly other: string; readonly backup: string; readonly folder: string };

/** An act that must come about whole or not at all. `came` answers which, or what is wrong, after the writing failed. */
type Act = {
  readonly run: (scene: Scene) => Promise<void>;
  readonly came: (scene: Scene) => "whole" | "notAtAll" | string;
};

const watch = { progress: () => {}, goOn: () => {} };
const idOfCheck = (seed: number) => aCheck({ seed }).checkId;

/** The same computer and clock in every run. */
export const openHere = (path: string): Store => openStore({ path, now: () => 1_709_600_000_000, machine: "bench" });

async function inStore(path: string, work: (store: Store) => void): Promise<void> {
  const store = openHere(path);
  try {
    work(store);
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
    came: ({ file, other }) => {
      const wanted = lookInto(other, (db) => [...allEntries(db)].length);
      const origins = lookInto(file, (db) => [...allEntries(db)].map((entry) => entry.origin));
      const there = origins.filter((origin) => origin !== origins[0]).length;
      return there === 0 ? "notAtAll" : there === wanted ? "whole" : `${there} of ${wanted} entries were taken over`;
    },
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
