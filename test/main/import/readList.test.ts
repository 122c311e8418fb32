import { describe, expect, it } from "vitest";
import { type Known, type RegisterFile, readList } from "../../../main/import/readList.ts";
import { readTable } from "../../../main/import/readTable.ts";
import { TableError } from "../../../main/import/TableError.ts";
import { plainLabel } from "../../../main/import/Twins.ts";
import { idOf } from "../../support/aCheck.ts";

const nobody: Known = { names: new Set(), serials: new Set() };
const known = (...names: string[]): Known => ({ names: new Set(names.map(plainLabel)), serials: new Set() });

function read(text: string | Uint8Array, over: Partial<RegisterFile> = {}, register = nobody) {
  const bytes = typeof text === "string" ? new TextEncoder().encode(text) : text;
  const ids = Array.from({ length: 2_000 }, (_, i) => idOf(i + 1)).values();
  const newId = () => ids.next().value!; // no list here is longer
  const base64 = Buffer.from(bytes).toString("base64");
  return readList({ what: "spindles", fileName: "list.csv", base64, ...over }, tableOf(bytes), register, newId);
}
function tableOf(bytes: Uint8Array) {
  try {
    return readTable(bytes);
  } catch (cause) {
    if (cause instanceof TableError) return cause;
    throw cause;
  }
}
const told = (list: ReturnType<typeof read>) => list.preview.problems.map((p) => [p.row, p.column, p.code]);
const fields = (list: ReturnType<typeof read>) => list.preview.columns.map((c) => c.field);

function utf16(text: string, { little, mark }: { little: boolean; mark: boolean }): Uint8Array {
  const all = (mark ? "\uFEFF" : "") + text;
  const view = new DataView(new ArrayBuffer(2 * all.length));
  for (let i = 0; i < all.length; i += 1) view.setUint16(2 * i, all.charCodeAt(i), little);
  return new Uint8Array(view.buffer);
}

const german = "Spindel;Maschine;Kegel;Mindestkraft kN;Sollkraft kN\nFräse 3 links;Fräse 3;HSK-A63;14,4;18\n";

describe("a list for the register", () => {
  it("proposes what each column is from its head, in English and in German", () => {
    const english = read(
      "Name,Machine,Area,Taper,Minimum_kN,Warning_kN,Nominal_kN,Maximum_kN,Whatever\nMill 3,M3,Hall B,HSK-A63,14.4,15.3,18,20,x\n",
    );
    expect(fields(english)).toEqual([
      "name",
      "machine",
      "area",
      "taper",
      "minimum",
      "warning",
      "nominal",
      "maximum",
      undefined,
    ]);
    expect(fields(read(german))).toEqual(["name", "machine", "taper", "minimum", "nominal"]);
    expect(english.bodies).toEqual([
      {
        spindleId: idOf(1),
        name: "Mill 3",
        machine: "M3",
        area: "Hall B",
        taper: "HSK-A63",
        limits: { minimumN: 14_400, warningN: 15_300, nominalN: 18_000, maximumN: 20_000 },
        state: "inUse",
      },
    ]);
  });

  it("takes the mapping the user gives in place of its own", () => {
    const list = read("a,b,c\nMill 3,x,14.4\n", { mapping: ["name", null, "minimum"], unit: "kN" });
    expect(list.bodies[0]).toMatchObject({ name: "Mill 3", limits: { minimumN: 14_400 } });
  });

  it.each([
    ["comma", german.replaceAll(",", ".").replaceAll(";", ","), ","],
    ["semicolon", german, ";"],
    ["tab", german.replaceAll(";", "\t"), "\t"],
  ])("reads %s between the cells", (_, text, separator) => {
    const list = read(text);
    expect(list.preview.separator).toBe(separator);
    expect(list.bodies[0]).toMatchObject({ name: "Fräse 3 links", limits: { minimumN: 14_400, nominalN: 18_000 } });
  });

  it.each([
    ["UTF-8 with a byte-order mark", new TextEncoder().encode(`\uFEFF${german}`), "utf-8"],
    ["UTF-16, low byte first", utf16(german, { little: true, mark: true }), "utf-16le"],
    ["UTF-16, high byte first", utf16(german, { little: false, mark: true }), "utf-16be"],
    ["UTF-16 without a mark", utf16(german, { little: true, mark: false }), "utf-16le"],
    ["Windows-1252", Uint8Array.from(german, (c) => c.charCodeAt(0)), "windows-1252"],
  ])("reads %s", (_, bytes, encoding) => {
    const list = read(bytes);
    expect(list.preview.encoding).toBe(encoding);
    expect(list.bodies[0]).toMatchObject({ name: "Fräse 3 links" });
  });

  it("asks for the unit of forces where head and cell name none, and takes it once said", () => {
    const text = "name,minimum\nMill 3,14.4\n";
    expect(told(read(text))).toEqual([[1, "minimum", "unitWanted"]]);
    expect(read(text, { unit: "daN" }).bodies[0]).toMatchObject({ limits: { minimumN: 144 } });
  });

  it("takes the unit of a column of its own, and one that stands in the cell before all others", () => {
    const list = read("name,minimum,nominal,unit\nMill 3,1440,18 kN,daN\n");
    expect(list.bodies[0]).toMatchObject({ limits: { minimumN: 14_400, nominalN: 18_000 }, unitShown: "daN" });
  });

  it.each([
    ["a torque in the head", "name,minimum_Nm\nMill 3,14\n", [1, "minimum_Nm", "torque"]],
    ["a torque in a cell", "name,minimum_kN\nMill 3,14 Nm\n", [2, "minimum_kN", "torque"]],
    ["a torque as the row's unit", "name,minimum,unit\nMill 3,14,Nm\n", [2, "unit", "torque"]],
    ["a mass", "name,minimum_kg\nMill 3,14\n", [1, "minimum_kg", "mass"]],
    ["words where a force belongs", "name,minimum_kN\nMill 3,strong\n", [2, "minimum_kN", "noForce"]],
    ["a minimum over the maximum", "name,minimum_kN,maximum_kN\nMill 3,20,18\n", [2, undefined, "limits"]],
    ["a force of zero", "name,minimum_kN\nMill 3,0\n", [2, "minimum_kN", "range"]],
    ["a negative force", "name,minimum_kN\nMill 3,-3\n", [2, "minimum_kN", "range"]],
    ["an empty name", "name,minimum_kN\n,18\n", [2, "name", "needed"]],
    ["a name too long", `name\n${"x".repeat(121)}\n`, [2, "name", "range"]],
    ["a note too long", `name,note\nMill 3,${"x".repeat(10_001)}\n`, [2, "note", "range"]],
    ["half a day", "name,interval days\nMill 3,1.5\n", [2, "interval days", "noNumber"]],
    ["a row too short", "name,machine,area\nMill 3,M3\n", [2, undefined, "cells"]],
    ["a name twice", "name\nMill 3\nMill 4\n mill 3 \n", [4, "name", "twinInFile"]],
    ["no column of names", "machine,area\nM3,Hall B\n", [undefined, undefined, "fieldMissing"]],
    ["a wrong separator", "name|minimum\nMill 3|14\n", [undefined, undefined, "fieldMissing"]],
    ["a quote never closed", 'name\n"Mill 3\n', [undefined, undefined, "unreadable"]],
    ["an empty file", "", [undefined, undefined, "unreadable"]],
    ["a head alone", "name\n", undefined],
  ])("refuses the whole list for %s, and says in which row and column", (_, text, problem) => {
    const list = read(text);
    expect(list.preview.stopped).toBe(true);
    expect(list.bodies).toEqual([]);
    if (problem !== undefined) expect(told(list)).toContainEqual(problem);
  });

  it("names one decimal mark beside another: one of them may group thousands", () => {
    const list = read("name;minimum_kN\nMill 3;14,4\nMill 4;14.4\n");
    expect(told(list)).toEqual([[3, "minimum_kN", "mixedMarks"]]);
  });

  it("refuses a name that is in the register, or passes the row over where that was said", () => {
    const text = "name\nMill 3\nMill 4\n";
    expect(told(read(text, {}, known("MILL 3")))).toEqual([[2, "name", "twinInRegister"]]);
    const list = read(text, { passOverKnown: true }, known("MILL 3"));
    expect(list.preview).toMatchObject({ ready: 1, passedOver: 1, stopped: false });
    expect(list.bodies.map((b) => b.name)).toEqual(["Mill 4"]);
  });

  it("keeps a taper of nobody's standard and tells so", () => {
    const list = read("name,taper\nMill 3,own cone 7\n");
    expect(list.preview).toMatchObject({
      stopped: false,
      problems: [{ row: 2, column: "taper", code: "taperUnknown", weight: "tell" }],
    });
    expect(list.bodies[0]).toMatchObject({ taper: "own cone 7" });
  });

  it("keeps emoji and writing from right to left as they are", () => {
    const name = "מכונה 3 🔩";
    expect(read(`name,note\n${name},שלום 🛠️\n`).bodies[0]).toMatchObject({ name, note: "שלום 🛠️" });
  });

  it("reads adapters: percent, dates both ways, a scale of 0 refused, none taken as assumed", () => {
    const adapters = (text: string) => read(text, { what: "adapters" });
    const good = adapters(
      "Name;Kegel;Seriennummer;Faktor;Unsicherheit %;Kalibriert am;Fällig\nA63-2;HSK-A63;17;1,002;0,1;03.04.2026;2027-04-03\nA63-3;HSK-A63;18;;;;\n",
    );
    expect(good.bodies).toEqual([
      expect.objectContaining({
        scale: 1.002,
        scaleUncertainty: 0.001,
        assumed: false,
        calibratedOn: "2026-04-03",
        dueOn: "2027-04-03",
      }),
      expect.objectContaining({ scale: 1, assumed: true }),
    ]);
    expect(told(adapters("name,taper,u\nA,HSK-A63,0\n"))).toEqual([[2, "u", "range"]]);
    expect(told(adapters("name,taper,scale\nA,HSK-A63,0\n"))).toEqual([[2, "scale", "range"]]);
    expect(told(adapters("name,taper,due\nA,HSK-A63,03/04/2026\n"))).toEqual([[2, "due", "noDate"]]);
    expect(told(adapters("name,taper,due\nA,HSK-A63,31.02.2026\n"))).toEqual([[2, "due", "noDate"]]);
    expect(told(adapters("name,taper,serial\nA,HSK-A63,17\nB,HSK-A63,17\n"))).toEqual([[3, "serial", "twinInFile"]]);
  });

  it("names every problem of a row, each once", () => {
    const list = read("Name;Kegel;Faktor;Fällig\n;HSK-A63;0;03/04/2027\n", { what: "adapters" });
    expect(told(list).sort()).toEqual([
      [2, "Faktor", "range"],
      [2, "Fällig", "noDate"],
      [2, "Name", "needed"],
    ]);
    expect(told(read("name,capacity_kN\nDose 1,strong\n", { what: "gauges" }))).toEqual([
      [2, "capacity_kN", "noForce"],
    ]);
  });

  it("reads gauges with capacity and resolution", () => {
    const list = read("Messgerät;Seriennr.;Nennlast kN;Auflösung N\nDose 1;44;30;10\n", { what: "gauges" });
    expect(list.bodies).toEqual([
      { gaugeId: idOf(1), name: "Dose 1", serial: "44", capacityN: 30_000, resolutionN: 10, state: "inUse" },
    ]);
  });

  it("tells the first two hundred problems and counts all", () => {
    const rows = Array.from({ length: 1_000 }, (_, i) => `S${i},-1`).join("\n");
    expect(read(`name,minimum_kN\n${rows}\n`).preview).toMatchObject({
      problemCount: 1_000,
      rowCount: 1_000,
      ready: 0,
    });
    expect(read(`name,minimum_kN\n${rows}\n`).preview.problems).toHaveLength(200);
  });
});
