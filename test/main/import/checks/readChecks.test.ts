import { describe, expect, it } from "vitest";
import type { ImportPreview } from "../../../../app/contract/importViews.ts";
import { importFile, previewFile } from "../../../../main/import/importFile.ts";
import { allEntries } from "../../../../main/store/ledger/readEntry.ts";
import { aSpindle } from "../../../support/aSpindle.ts";
import { storeInTemp } from "../../../support/storeInTemp.ts";
import { workbook } from "../../../support/workbook.ts";

const NOW = Date.parse("2026-03-04T09:00:00.000Z");

async function preview(content: string | Buffer): Promise<ImportPreview> {
  const store = storeInTemp();
  const limits = { minimumN: 14_400, nominalN: 18_000 };
  store.append([{ kind: "spindle", body: aSpindle({ name: "Mill 3", limits }) }]);
  const base64 = Buffer.from(content).toString("base64");
  return previewFile({ what: "checks", fileName: "old.csv", base64 }, store.db, NOW, () => {});
}
const told = ({ problems }: ImportPreview) => problems.map((p) => [p.row, p.column, p.code]);

describe("a file of old checks", () => {
  it.each([
    ["a torque in the head", "Spindle,Date,Force Nm\nMill 3,2019-03-15,17\n", [1, "Force Nm", "torque"]],
    ["a torque in a cell", "Spindle,Date,Force_kN\nMill 3,2019-03-15,17 Nm\n", [2, "Force_kN", "torque"]],
    ["a mass in a cell", "Spindle,Date,Force_kN\nMill 3,2019-03-15,1700 kg\n", [2, "Force_kN", "mass"]],
    ["words instead of a figure", "Spindle,Date,Force_kN\nMill 3,2019-03-15,ok\n", [2, "Force_kN", "noForce"]],
    ["nothing below zero", "Spindle,Date,Force_kN\nMill 3,2019-03-15,-17\n", [2, "Force_kN", "range"]],
    ["no value", "Spindle,Date,Force_kN\nMill 3,2019-03-15,\n", [2, "Force_kN", "needed"]],
    ["no spindle", "Spindle,Date,Force_kN\n,2019-03-15,17\n", [2, "Spindle", "needed"]],
    ["no date", "Spindle,Date,Force_kN\nMill 3,spring,17\n", [2, "Date", "noDate"]],
    ["a date to come", "Spindle,Date,Force_kN\nMill 3,2999-03-15,17\n", [2, "Date", "future"]],
    ["a date before 1950", "Spindle,Date,Force_kN\nMill 3,1900-01-05,17\n", [2, "Date", "tooOld"]],
    [
      "two orders of dates",
      "Spindle,Date,Force_kN\nMill 3,13/03/2019,17\nMill 3,03/13/2019,17\n",
      [3, "Date", "noDate"],
    ],
    ["a row too short", "Spindle,Date,Force_kN\nMill 3,2019-03-15\n", [2, undefined, "cells"]],
    [
      "two decimal marks",
      'Spindle,Date,Force_kN\nMill 3,2019-03-15,"17,2"\nMill 3,2019-03-16,17.3\n',
      [3, "Force_kN", "mixedMarks"],
    ],
    ["an odd counter", "Spindle,Date,Force_kN,Counter\nMill 3,2019-03-15,17,x\n", [2, "Counter", "noNumber"]],
    ["a day number in a text file", "Spindle,Date,Force_kN\nMill 3,45356,17\n", [2, "Date", "noDate"]],
    ["a counter without end", "Spindle,Date,Force_kN,Counter\nMill 3,2019-03-15,17,1e30\n", [2, "Counter", "range"]],
    ["a take that is no force", "Spindle,Date,F1 kN,F2 kN\nMill 3,2019-03-15,17,?\n", [2, "F2 kN", "noForce"]],
    ["no take at all", "Spindle,Date,F1 kN,F2 kN\nMill 3,2019-03-15,,\n", [2, "F1 kN", "needed"]],
    ["a take without a unit", "Spindle,Date,F1 kN,F2\nMill 3,2019-03-15,17,17\n", [1, "F2", "unitWanted"]],
    ["tomorrow", "Spindle,Date,Force_kN\nMill 3,2026-03-05,17\n", [2, "Date", "future"]],
  ] as const)("is refused with row and column for %s", async (_, text, problem) => {
    const shown = await preview(text);
    expect(told(shown)).toContainEqual(problem);
    expect(shown.stopped).toBe(true);
  });

  it.each([
    ["today, at no time", "Spindle,Date,Force_kN\nMill 3,2026-03-04,17\n"],
    ["the unit in each cell", "Spindle,Date,Force\nMill 3,2019-03-15,17 kN\nMill 3,2019-03-16,1700 daN\n"],
    ["a column of units", "Spindle,Date,Force,Unit\nMill 3,2019-03-15,17,kN\nMill 3,2019-03-16,1700,daN\n"],
    ["a time of its own", "Spindle,Date,Time,Force_kN\nMill 3,2019-03-15,14:30,17\n"],
    ["the machine's name", "Maschine;Prüfdatum;Messwert (kN)\nmill 3;15.3.19;17,0\n"],
  ])("is taken with %s", async (_, text) => {
    expect(await preview(text)).toMatchObject({ stopped: false, problemCount: 0 });
  });

  it("is not read while one column stands for the force and others for its takes", async () => {
    const store = storeInTemp();
    const text = "Spindle,Date,Force_kN,A_kN,B_kN\nMill 3,2019-03-15,17.9,17.8,18.0\n";
    const mapping = ["spindle", "day", "value", "take", "take"];
    const file = {
      what: "checks" as const,
      fileName: "old.csv",
      base64: Buffer.from(text).toString("base64"),
      mapping,
    };
    const shown = await previewFile(file, store.db, NOW, () => {});
    expect(told(shown)).toContainEqual([1, "Force_kN", "valueBesideTakes"]);
  });

  it("shows takes of a workbook as finely as its columns are read", async () => {
    const rows = [
      ["Spindle", "Date", "Take 1 kN", "Take 2 kN"],
      ["Mill 3", { date: 43_539 }, 18, 17.95],
    ];
    expect((await preview(workbook(rows))).takes).toEqual({
      rows: 1,
      example: { row: 2, takes: [18, 17.95], mean: 17.975, unit: "kN", decimals: 2 },
    });
  });

  it("tells of a value that can hardly be this spindle's, and is taken all the same", async () => {
    const shown = await preview("Spindle,Date,Force_kN\nMill 3,2019-03-15,1792\nMill 3,2019-03-16,17.9\n");
    expect(told(shown)).toEqual([[2, "Force_kN", "farOff"]]);
    expect(shown.stopped).toBe(false);
  });

  it("is refused where one value stands for several rows, and tells where a name does", async () => {
    const rows = [
      ["Spindle", "Date", "Force kN"],
      ["Mill 3", { date: 43_539 }, 18],
      [null, { date: 43_540 }, null],
    ];
    const shown = await preview(workbook(rows, { joined: ["A2:A3", "C2:C3"] }));
    expect(told(shown)).toEqual([
      [2, "Spindle", "merged"],
      [2, "Force kN", "mergedValue"],
    ]);
    expect(shown.stopped).toBe(true);
  });

  it("says how many rows cannot be read, however many they are", async () => {
    const rows = Array.from({ length: 150_000 }, (_, i) => `Mill 3,2019-03-15,${i % 2 === 0 ? "x" : "17"}`);
    const shown = await preview(`Spindle,Date,Force_kN\n${rows.join("\n")}\n`);
    expect(shown).toMatchObject({ problemCount: 75_000, stopped: true });
    expect(shown.problems).toHaveLength(200);
  });

  it("names what the register does not know, spindles first, each with all its rows", async () => {
    const rows = ["Mill 3,2019-03-15,17,G7", "Lathe,2019-03-15,17,G7", "Lathe,2019-03-16,17,G7", "Saw,2019-03-16,17,"];
    expect((await preview(`Spindle,Date,Force_kN,Gauge\n${rows.join("\n")}\n`)).names).toEqual([
      { thing: "spindle", name: "Lathe", rows: 2 },
      { thing: "spindle", name: "Saw", rows: 1 },
      { thing: "gauge", name: "G7", rows: 3 },
    ]);
  });

  it("is refused with columns without end", async () => {
    const head = Array.from({ length: 300 }, (_, i) => `c${i}`).join(",");
    expect(told(await preview(`Spindle,Date,Force_kN,${head}\n`))).toEqual([[undefined, undefined, "unreadable"]]);
  });

  it("is empty, or has no rows: nothing is imported", async () => {
    expect(told(await preview(""))).toEqual([[undefined, undefined, "unreadable"]]);
    expect(await preview("Spindle,Date,Force_kN\n")).toMatchObject({ rowCount: 0, ready: 0, stopped: true });
  });
});

describe("importing a file of old checks", () => {
  const rows = Array.from({ length: 2_000 }, (_, i) => `Mill ${i % 7},2019-03-15,17.${i}`).join("\n");
  const file = {
    what: "checks" as const,
    fileName: "old.csv",
    base64: Buffer.from(`Spindle,Date,Force_kN\n${rows}\n`).toString("base64"),
    names: Array.from({ length: 7 }, (_, i) => ({
      thing: "spindle" as const,
      name: `Mill ${i}`,
      to: "create" as const,
    })),
  };

  it("leaves nothing behind when it is stopped on the way", async () => {
    const store = storeInTemp();
    let left = 8;
    const goOn = () => {
      left -= 1;
      if (left === 0) throw new Error("stopped");
    };
    const told: number[] = [];
    const watch = { goOn, progress: (done: number) => void told.push(done) };
    await expect(importFile(store, file, { nowMs: NOW, programVersion: "0.1.0", ...watch })).rejects.toThrow("stopped");
    expect(told.at(-1)).toBeGreaterThan(256); // it was under way
    expect(store.lastPlace()).toBe(0);
    expect(store.db.prepare("SELECT count(*) FROM check_row").pluck().get()).toBe(0);
    store.append([{ kind: "spindle", body: aSpindle() }]); // and the chain begins as if nothing had been
    expect(lastSeq(store)).toBe(1);
  });

  it("stands in one stretch of the chain, spindle by spindle in order of time, the file's own entry last", async () => {
    const store = storeInTemp();
    await importFile(store, file, { nowMs: NOW, programVersion: "0.1.0", goOn: () => {}, progress: () => {} });
    const kinds = [...allEntries(store.db)].map((entry) => entry.kind);
    expect(kinds.filter((kind) => kind === "check")).toHaveLength(2_000);
    expect(kinds.filter((kind) => kind === "spindle")).toHaveLength(7);
    expect(kinds.at(-1)).toBe("import");
  });
});

const lastSeq = (store: ReturnType<typeof storeInTemp>) => [...allEntries(store.db)].at(-1)!.seq;
