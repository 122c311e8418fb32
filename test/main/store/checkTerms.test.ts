import { join } from "node:path";
import Database from "better-sqlite3";
import { describe, expect, it } from "vitest";
import { rejudge } from "../../../app/verdict/rejudge.ts";
import { DamageList } from "../../../main/store/ledger/DamageList.ts";
import { openReader, openStore } from "../../../main/store/open.ts";
import { compareProjections } from "../../../main/store/projections/compareProjections.ts";
import { readCheck } from "../../../main/store/records/checks.ts";
import { judgeable, stretches } from "../../../main/store/records/judgeable.ts";
import { idOf } from "../../support/aCheck.ts";
import { fileOne, fillStore } from "../../support/fullStore.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

const all = (db: Parameters<typeof judgeable>[0]) => judgeable(db, 0, Number.MAX_SAFE_INTEGER);
const terms = { limits: { minimumN: 21_000, maximumN: 24_000 }, rule: { rule: "probability" as const } };

/** A file as the first form had it. */
function oldFile(): string {
  const path = join(tempFolder(), "holdfast.sqlite");
  const store = openStore({ path, now: () => 1_710_000_000_000, machine: "bench" });
  fillStore(store, 30);
  store.close();
  const db = new Database(path);
  db.exec("DROP TABLE check_terms; DROP TABLE proof_row; DROP TABLE proof_draft");
  db.pragma("user_version = 1");
  db.close();
  return path;
}

describe("what judging anew needs of a check", () => {
  it("gives the same judgement as the whole check, for every check that counts", () => {
    const store = storeInTemp();
    fillStore(store, 30);
    const checks = all(store.db);
    expect(checks).toHaveLength(30 - 1); // one voided; the replaced one stands as its replacement
    for (const { checkId, figures } of checks) {
      expect(rejudge(figures, terms)).toEqual(rejudge(readCheck(store.db, checkId)!.check, terms));
    }
  });

  it("cuts all entries into stretches that miss no check and hold none twice", () => {
    const store = storeInTemp();
    fillStore(store, 30);
    for (let i = 0; i < 2_000; i += 400) {
      const others = Array.from({ length: 400 }, () => ({ kind: "attachment" as const, body: { name: "between" } }));
      store.append(others);
      fileOne(store, 1_000 + i, idOf(11));
    }
    const places = [...stretches(store.db), Number.MAX_SAFE_INTEGER];
    expect(places.length).toBeGreaterThan(2);
    const found = places.slice(0, -1).flatMap((from, i) => judgeable(store.db, from, places[i + 1]!));
    expect(found).toHaveLength(29 + 5);
    expect(found.map((c) => c.checkId)).toEqual(all(store.db).map((c) => c.checkId));
  });

  it("is filled in when a file of the first form is opened, as the ledger says", () => {
    const path = oldFile();
    const store = storeInTemp({ path, machine: "bench" });
    const damage = new DamageList();
    compareProjections(store.db, damage, { goOn: () => {}, progress: () => {} });
    expect(damage.kept).toEqual([]);
    expect(all(store.db)).toHaveLength(29);
  });

  it("comes out of the checks themselves where a file of the first form is only read", () => {
    const db = openReader(oldFile());
    const found = all(db);
    db.close();
    expect(found).toHaveLength(29);
    expect(rejudge(found[0]!.figures, terms).reasons.length).toBeGreaterThan(0);
  });
});
