import { createHash } from "node:crypto";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { ImportPreview, ListFile } from "../../../../app/contract/importViews.ts";
import type { JobView } from "../../../../app/contract/programViews.ts";
import { DamageList } from "../../../../main/store/ledger/DamageList.ts";
import { openReader } from "../../../../main/store/openReader.ts";
import { compareProjections } from "../../../../main/store/projections/compareProjections.ts";
import { readCheck } from "../../../../main/store/records/checks.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../../support/coreInTemp.ts";
import { workbook } from "../../../support/workbook.ts";

let core: CoreInTemp;
let works: Awaited<ReturnType<typeof smallWorks>>;
beforeEach(async () => {
  core = await coreInTemp();
  works = await smallWorks(core);
});
afterEach(() => core.close());

const file = (content: string | Buffer, over: Partial<ListFile> = {}): ListFile => ({
  what: "checks",
  fileName: "old.csv",
  base64: Buffer.from(content).toString("base64"),
  ...over,
});
const preview = (content: string | Buffer, over: Partial<ListFile> = {}) =>
  core.call("register.preview", file(content, over));
const told = ({ problems }: ImportPreview) => problems.map((p) => [p.row, p.column, p.code]);

async function imported(content: string | Buffer, over: Partial<ListFile> = {}): Promise<JobView> {
  const { jobId } = await core.call("register.import", file(content, over));
  return ended(jobId);
}
async function ended(jobId: string): Promise<JobView> {
  for (;;) {
    const push = core.pushes.find((p) => p.event === "job.finished" && (p.data as JobView).jobId === jobId);
    if (push !== undefined) return push.data as JobView;
    await new Promise((done) => setTimeout(done, 5));
  }
}
const filed = async (spindleId = works.spindleId) =>
  (await core.call("checks.list", { spindleId, limit: 100 })).rows.toReversed();
async function bodies() {
  const rows = await filed();
  const db = openReader(core.dataFile);
  try {
    return rows.map((row) => readCheck(db, row.checkId)!.check);
  } finally {
    db.close();
  }
}

const german =
  "Spindel;Datum;Spannkraft kN;Bemerkung\nMill 3;15.03.2019;17,92;nach Wartung\nmill 3;16.09.2019;17,40;\n";

describe("old checks from a spreadsheet", () => {
  it("are shown first, and nothing is filed", async () => {
    const shown = await preview(german);
    expect(shown).toMatchObject({ rowCount: 2, ready: 2, stopped: false, problemCount: 0, names: [] });
    expect(shown.columns.map((c) => c.field)).toEqual(["spindle", "day", "value", "note"]);
    expect(await filed()).toEqual([]);
  });

  it("are filed as what they are: imported, typed, of that file and row, at the time of the works' wall", async () => {
    expect(await imported(german)).toMatchObject({ state: "finished", result: { imported: 2, passedOver: 0 } });
    const [first, second] = await bodies();
    const fileHash = createHash("sha256").update(german).digest("hex");
    expect(first).toMatchObject({
      source: "imported",
      series: { basis: "typed", n: 1, meanN: 17_920, sN: null },
      cycles: [],
      valueN: 17_920,
      note: "nach Wartung",
      rawLine: "Mill 3 | 15.03.2019 | 17,92 | nach Wartung",
      imported: { fileHash, row: 2 },
      baseline: null,
      previous: null,
    });
    expect(second).toMatchObject({ imported: { row: 3 }, previous: { checkId: first!.checkId, valueN: 17_920 } });
    expect(second!.dropFromPrevious).toBeCloseTo((17_920 - 17_400) / 17_920, 12);
    const wall = new Date(Date.parse(first!.measuredAt) + first!.offsetMinutes * 60_000).toISOString();
    expect(wall).toBe("2019-03-15T12:00:00.000Z");
  });

  it("are judged as a value typed in today would be", async () => {
    await imported("Spindle,Date,Force\nMill 3,2019-03-15,17.92 kN\nMill 3,2019-04-15,13.10 kN\n");
    const [old, low] = await bodies();
    const other = await core.call("spindles.save", {
      name: "Mill 5",
      machine: "",
      area: "",
      taper: "BT 40", // no adapter of this works fits it, and none is proposed
      limits: { minimumN: 14_400, warningN: 15_300, nominalN: 18_000, maximumN: 20_000 },
      state: "inUse",
    });
    const { row } = await fileTyped(core, other.spindle.spindleId, "17.92 kN");
    expect({
      verdict: old!.verdict,
      standardN: old!.budget?.standardN,
      weakened: old!.weakenedBy.map((w) => w.code),
    }).toEqual({
      verdict: row.verdict,
      standardN: row.standardUncertaintyN,
      weakened: expect.arrayContaining(["typedValue"]),
    });
    expect(low!.verdict).toBe("stop");
  });

  it("know no limits where the spindle is made from its name alone, and then nothing can be told", async () => {
    const text = "Spindle,Date,Force_kN\nLathe 9,2019-03-15,17.92\n";
    expect(told(await preview(text))).toEqual([[2, "Spindle", "spindleUnknown"]]);
    await imported(text, { names: [{ thing: "spindle", name: "lathe 9", to: "create" }] });
    const made = (await core.call("spindles.list")).find((row) => row.spindle.name === "Lathe 9");
    expect(made).toMatchObject({ checkCount: 1, last: { verdict: "cannotTell" } });
  });

  it("go to the spindle the user says, or are left out", async () => {
    const text = "Spindle,Date,Force_kN\nM3 left,2019-03-15,17.92\nold one,2019-03-15,11\n";
    const shown = await preview(text);
    expect(shown.names).toEqual([
      { thing: "spindle", name: "M3 left", rows: 1 },
      { thing: "spindle", name: "old one", rows: 1 },
    ]);
    const names = [
      { thing: "spindle" as const, name: "M3 left", to: works.spindleId },
      { thing: "spindle" as const, name: "old one", to: "leaveOut" as const },
    ];
    expect(await imported(text, { names })).toMatchObject({ result: { imported: 1 } });
    expect(await filed()).toHaveLength(1);
    // The next file with the same head is read the same way without being asked.
    expect(await preview(`${text}M3 left,2020-01-01,17\n`)).toMatchObject({ ready: 1, passedOver: 1, stopped: false });
  });

  it("name gauge and adapter that are known, and tell which are not", async () => {
    const text =
      "Spindle,Date,Force_kN,Gauge,Adapter\nMill 3,2019-03-15,17.92,gauge 1,A63-2\nMill 3,2019-03-16,17.9,G77,\n";
    expect(told(await preview(text))).toEqual([[undefined, undefined, "toolUnknown"]]);
    await imported(text);
    expect(await bodies()).toMatchObject([
      {
        gaugeId: works.gaugeId,
        adapterId: works.adapterId,
        corrections: { curve: null, adapterScale: 1, adapterVersion: null },
      },
      { gaugeId: null, adapterId: null },
    ]);
  });

  it("keep people's names out of the ledger", async () => {
    const { operatorId } = await core.call("operators.save", { name: "Ada Berg", role: "technician", state: "inUse" });
    await imported("Spindle,Date,Force_kN,By\nMill 3,2019-03-15,17.92,ada berg\nMill 3,2019-03-16,17.92,Kim Roe\n");
    const [known, unknown] = await bodies();
    expect(known!.operatorId).toBe(operatorId);
    expect(unknown!.operatorId).toBeNull();
    expect(JSON.stringify([known, unknown])).not.toMatch(/ada berg|Kim Roe/i);
  });

  it("are asked for their unit and for the order of day and month, and are read so the next time", async () => {
    const text = "Spindle,Date,Force\nMill 3,03/04/2019,1792\n";
    expect(told(await preview(text))).toEqual([
      [1, "Force", "unitWanted"],
      [2, "Date", "dateOrderWanted"],
    ]);
    await imported(text, { unit: "daN", dateOrder: "monthFirst" });
    expect(await bodies()).toMatchObject([{ valueN: 17_920, unit: "daN" }]);
    expect((await filed())[0]!.measuredAtMs).toBe(
      Date.parse("2019-03-04T12:00:00Z") - (await bodies())[0]!.offsetMinutes * 60_000,
    );
    const next = await preview("Spindle,Date,Force\nMill 3,05/04/2019,1700\n");
    expect(next).toMatchObject({ stopped: false, unit: "daN", dateOrder: "monthFirst" });
  });

  it("are refused whole for one row that cannot be read", async () => {
    const text = "Spindle,Date,Force_kN\nMill 3,2019-03-15,17.9\nMill 3,spring,17\n";
    const job = await imported(text);
    expect(job).toMatchObject({ state: "failed", message: expect.stringMatching(/Nothing was imported. Row 3, Date/) });
    expect(await filed()).toEqual([]);
  });

  it("are in the records once, however often the same file is imported", async () => {
    await imported(german);
    const shown = await preview(german);
    expect(shown).toMatchObject({ ready: 0, passedOver: 2, stopped: true });
    expect(told(shown).map(([, , code]) => code)).toEqual(["sameFile", "alreadyThere"]);
    expect(await imported(german)).toMatchObject({ state: "finished", result: { imported: 0, passedOver: 2 } });
    expect(await filed()).toHaveLength(2);
  });

  it("are in the records once when the file has grown since: what is new comes in", async () => {
    await imported(german);
    const grown = `${german}Mill 3;16.09.2019;17,40;\nMill 3;16.03.2020;17,1;\n`;
    expect(await imported(grown)).toMatchObject({ result: { imported: 2, passedOver: 2 } });
    expect((await filed()).map((row) => row.valueN)).toEqual([17_920, 17_400, 17_400, 17_100]);
  });

  it("fit in among what was measured here, in the order of time", async () => {
    await fileTyped(core, works.spindleId, "16.9 kN");
    const shown = await preview(german);
    expect(told(shown)).toEqual([[undefined, undefined, "baselineMoves"]]);
    await imported(german);
    const row = (await core.call("spindles.list"))[0]!;
    expect(row).toMatchObject({ checkCount: 3, last: { valueN: 16_900 }, stopped: false });
  });

  it("start anew after a service that asked for a new baseline", async () => {
    const service = { spindleId: works.spindleId, at: "2019-06-01", kind: "springs", newBaseline: true } as const;
    await core.call("services.save", service);
    await imported(german);
    expect(await bodies()).toMatchObject([
      { baseline: null, previous: null },
      { baseline: null, previous: null },
    ]);
  });

  it("come out of a workbook too, as finely read as its column is", async () => {
    const rows = [
      ["Spindle", "Date", "Force kN"],
      ["Mill 3", { date: 43_539 }, 18],
      ["Mill 3", { date: 43_540.5 }, 17.25],
    ];
    await imported(workbook(rows), { fileName: "old.xlsx" });
    const [whole, half] = await bodies();
    expect(whole).toMatchObject({ valueN: 18_000, rawLine: "Mill 3 | 2019-03-15 | 18" });
    expect(half!.measuredAt.slice(0, 10)).toBe("2019-03-16");
    const step = whole!.budget!.contributions.find((c) => c.source === "resolution")!;
    expect(step.standardN).toBeCloseTo(10 / Math.sqrt(12), 9); // 18.00 kN, not 18 kN
  });

  it("with several takes in a row are one check of their mean, and their scatter counts", async () => {
    const text =
      "Spindel;Datum;Messung 1 [kN];Messung 2 [kN];3. Messung (daN);Kraft [kN]\n" +
      "Mill 3;15.03.2019;17,92;17,80;1784;17,9\nMill 3;16.03.2019;17,40;;;17,4\n";
    const shown = await preview(text);
    expect(shown.columns.map((c) => c.field)).toEqual(["spindle", "day", "take", "take", "take", undefined]);
    expect(shown).toMatchObject({ ready: 2, stopped: false, takes: { rows: 1, example: { row: 2, unit: "kN" } } });
    expect(shown.takes!.example.takes.map((f) => f.toFixed(3))).toEqual(["17.920", "17.800", "17.840"]);
    await imported(text);
    const [three, one] = await bodies();
    // By hand: mean of 17920, 17800, 17840; deviations 66.67, -53.33, -13.33; s = sqrt(7466.67 / 2).
    const s = Math.sqrt(7_466.666_666_666_667 / 2);
    expect(three!.valueN).toBeCloseTo(17_853.333_333, 5);
    expect(three!.series).toMatchObject({ n: 3, basis: "typed", outliers: [] });
    expect(three!.series.sN).toBeCloseTo(s, 8);
    expect(three!.series.rangeN).toBeCloseTo(120, 8);
    expect(three!.imported).toMatchObject({ row: 2, takesN: [17_920, 17_800, 17_840] });
    expect(three!.rawLine).toBe("Mill 3 | 15.03.2019 | 17,92 | 17,80 | 1784 | 17,9");
    const repeats = three!.budget!.contributions.find((c) => c.source === "repeatability")!;
    expect(repeats).toMatchObject({ degreesOfFreedom: 2, distribution: "t", type: "A" });
    expect(repeats.standardN).toBeCloseTo(s / Math.sqrt(3), 8); // GUM 4.2.3
    expect(one).toMatchObject({ valueN: 17_400, series: { n: 1, sN: null }, imported: { row: 3 } });
    expect(one!.imported).not.toHaveProperty("takesN");
    expect(await preview(text)).toMatchObject({ ready: 0, passedOver: 2 }); // known again by their mean
  });

  it("with takes that differ widely say so beside their verdict", async () => {
    await imported("Spindle,Date,Take 1 kN,Take 2 kN,Take 3 kN\nMill 3,2019-03-15,17.9,17.8,15.1\n");
    const [check] = await bodies();
    expect(check!.series.outliers).toEqual([3]);
    expect(check!.weakenedBy.map((w) => w.code)).toEqual(expect.arrayContaining(["largeScatter", "outliers"]));
  });

  it("are filed in newtons where their unit's name is longer than the record's field for it", async () => {
    await imported("Spindle,Date,Force\nMill 3,2019-03-15,2 tonfShort\n");
    expect(await bodies()).toMatchObject([{ unit: "N", valueN: 2 * 8_896.443_230_521 }]);
  });

  it("verify with everything else, rebuilt from the ledger", async () => {
    await imported(german);
    await fileTyped(core, works.spindleId, "17.3 kN");
    const { jobId } = await core.call("records.verify");
    expect(await ended(jobId)).toMatchObject({ result: { damagedCount: 0 } });
    const damage = new DamageList();
    const db = openReader(core.dataFile);
    compareProjections(db, damage, { progress: () => {}, goOn: () => {} });
    db.close();
    expect(damage.kept).toEqual([]);
  });
});
