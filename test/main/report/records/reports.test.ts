import { describe, expect, it } from "vitest";
import type { About } from "../../../../main/report/records/About.ts";
import { checkReport } from "../../../../main/report/records/checkReport.ts";
import { spindleReport } from "../../../../main/report/records/spindleReport.ts";
import { writingOf } from "../../../../main/report/records/Writing.ts";
import { worksReport } from "../../../../main/report/records/worksReport.ts";
import { chainReports } from "../../../../main/store/ledger/LedgerReport.ts";
import { openReader } from "../../../../main/store/open.ts";
import { readCheck } from "../../../../main/store/records/checks.ts";
import type { Store } from "../../../../main/store/Store.ts";
import { aCheck, idOf } from "../../../support/aCheck.ts";
import { fillStore } from "../../../support/fullStore.ts";
import { pdfText } from "../../../support/pdfText.ts";
import { storeInTemp } from "../../../support/storeInTemp.ts";

const HASH = "0123456789abcdef".repeat(4);
const about = ({ db, demo }: Store, over: Partial<About> = {}): About => ({
  db,
  nowMs: Date.UTC(2024, 2, 4, 9),
  paper: "A4",
  write: writingOf("en"),
  version: "0.1.0",
  programHash: HASH,
  demo,
  goOn: () => {},
  ...over,
});
const flat = (text: string) => text.replace(/\s+/g, " ");
const squeezed = (text: string) => text.replace(/\s+/g, "");
function filled(over: Parameters<typeof storeInTemp>[0] = {}): Store {
  const store = storeInTemp(over);
  fillStore(store, 30);
  return store;
}
const idOfCheck = (seed: number) => aCheck({ seed }).checkId;

describe("the report of one check", () => {
  it("holds value, verdict, cycles, budget, cautions and the proof", async (context) => {
    const store = filled();
    store.signHeads();
    const checkId = idOfCheck(10);
    const { check, hash } = readCheck(store.db, checkId)!;
    const text = pdfText(context, await checkReport(about(store), checkId));
    expect(flat(text)).toMatch(/GOOD: \d\d\.\d+ ± 0\.\d+ kN/);
    expect(text).toContain((check.valueN! / 1000).toFixed(2));
    expect(flat(text)).toContain("Where the uncertainty comes from");
    expect(text).toContain("repeatability");
    expect(text).toContain("Lock out the machine");
    expect(flat(text)).toContain("not an accredited certificate");
    expect(squeezed(text)).toContain(hash);
    expect(squeezed(text)).toContain(HASH);
    for (const { origin, head } of chainReports(store.db, []).filter((c) => c.entries > 0)) {
      expect(squeezed(text)).toContain(origin);
      expect(squeezed(text)).toContain(head);
    }
    expect(text).toContain("signed ");
    expect(text).toContain("IB"); // who measured, by initials
    expect(text).not.toContain("Brandt");
  });

  it("says that a check was made void, by whom and why", async (context) => {
    const text = flat(pdfText(context, await checkReport(about(filled()), idOfCheck(3))));
    expect(text).toContain("This check does not count any more.");
    expect(text).toMatch(/made void: as agreed on the floor, by IB \(entry \d+ of chain/);
  });

  it("says of an imported check which row of which file it was", async (context) => {
    const store = filled();
    const checkId = idOf(700_001);
    const imported = { importId: idOf(9), fileHash: "ab".repeat(32), row: 12 };
    store.append([
      { kind: "check", body: aCheck({ seed: 701, checkId, source: "imported", cycleCount: 0, imported }) },
    ]);
    const text = pdfText(context, await checkReport(about(store), checkId));
    expect(flat(text)).toMatch(/imported from row 12 of the file with SHA-256/);
    expect(text).toContain(`${"ab".repeat(8)}…`);
  });

  it("says what replaced a check, and what a replacement stands for", async (context) => {
    const store = filled();
    const old = flat(pdfText(context, await checkReport(about(store), idOfCheck(6))));
    expect(old).toContain(`replaced by check ${idOfCheck(900)}`);
    const later = flat(pdfText(context, await checkReport(about(store), idOfCheck(900))));
    expect(later).toContain(`filed as a correction, in the place of check ${idOfCheck(6)}`);
    expect(later).not.toContain("does not count any more");
  });

  it("cautions where the verdict is stop, and marks invented data", async (context) => {
    const store = filled({ demo: true });
    const text = flat(pdfText(context, await checkReport(about(store, { paper: "Letter" }), idOfCheck(5))));
    expect(text).toContain("STOP:");
    expect(text).toContain("Do not use the spindle until someone entitled has decided");
    expect(text).toContain("Invented data of the demo");
  });

  it("is of a check that is there", async () => {
    await expect(checkReport(about(filled()), idOf(77_777))).rejects.toMatchObject({ code: "notFound" });
  });
});

describe("the report of a spindle", () => {
  it("holds its course, services, and every check with its state", async (context) => {
    const store = filled();
    const text = pdfText(context, await spindleReport(about(store), idOf(11)));
    expect(text).toContain("History of Larch 1");
    expect(text).toContain("lubricated");
    expect(flat(text)).toMatch(/VOID .*made void: as agreed/);
    expect(flat(text)).toMatch(/REPLACED .*replaced: as agreed/);
    expect(flat(text)).toMatch(/Builder's minimum: /);
    await expect(spindleReport(about(store), idOf(78))).rejects.toMatchObject({ code: "notFound" });
  });

  it("is made for a spindle that was never measured", async (context) => {
    const store = storeInTemp();
    fillStore(store, 0);
    expect(pdfText(context, await spindleReport(about(store), idOf(13)))).toContain("Never measured");
  });
});

describe("the summary of the works", () => {
  it("ranks all spindles and says what changed since a day", async (context) => {
    const store = filled();
    const text = pdfText(context, await worksReport(about(store), Date.UTC(2024, 0, 2)));
    expect(flat(text)).toContain("Summary of Quarry Lane works");
    for (const name of ["Larch 1", "Larch 2", "Larch 3"]) expect(text).toContain(name);
    expect(flat(text)).toContain("What changed since 2 Jan 2024");
    expect(flat(text)).toMatch(/\d+ checks measured, 2 made void or replaced, 1 services and events/);
  });

  it("can be stopped", async () => {
    const stopping = about(filled(), {
      goOn: () => {
        throw new Error("stopped");
      },
    });
    await expect(worksReport(stopping, 0)).rejects.toThrow("stopped");
  });

  it("reads while the program writes", async () => {
    const store = filled();
    const db = openReader(store.path);
    const pdf = await worksReport(about(store, { db }), 0);
    db.close();
    expect(pdf.subarray(0, 8).toString("latin1")).toBe("%PDF-1.7");
  });
});

describe("reports in German", () => {
  const german = (store: Store) => about(store, { write: writingOf("de") });
  /** Words and marks that would have been left standing from the English. */
  const english = /\b(the|and|with|of|by|not|check|page|made|from|limit|zero|peak|clamping|verdict|none)\b/;
  /** What people typed, and what is a name in both languages. */
  const typed = /as agreed on the floor|Holdfast|holdfast verify|SHA-256|\bby key\b/g;
  const own = (text: string) => flat(text).replace(typed, "");

  it("write decimal commas, German dates and German answers, and leave no English standing", async (context) => {
    const store = filled();
    const texts = [
      pdfText(context, await checkReport(german(store), idOfCheck(10)), "de"),
      pdfText(context, await spindleReport(german(store), idOf(11)), "de"),
      pdfText(context, await worksReport(german(store), Date.UTC(2024, 0, 2)), "de"),
    ];
    expect(flat(texts[0]!)).toMatch(/GUT: \d\d,\d+ ± 0,\d+ kN/);
    expect(texts[0]).toContain("Woher die Unsicherheit kommt");
    expect(flat(texts[1]!)).toMatch(/UNGÜLTIG .*für ungültig erklärt: as agreed/);
    expect(flat(texts[2]!)).toContain("Was sich seit 2. Jan. 2024 geändert hat");
    for (const text of texts) {
      expect(own(text).match(english)).toBeNull();
      expect(own(text)).not.toMatch(/\d\.\d+ (kN|N|%)/);
      expect(text).toContain("Seite 1 von");
    }
  });
});
