import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { exportArchive } from "../../../main/archive/exportArchive.ts";
import { importArchive } from "../../../main/archive/importArchive.ts";
import { chainReports } from "../../../main/store/ledger/LedgerReport.ts";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { spindleList } from "../../../main/store/records/spindles.ts";
import { aCheck, idOf } from "../../support/aCheck.ts";
import { exported, membersOf, quietWatch, writeMembers } from "../../support/archives.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { fillStore } from "../../support/fullStore.ts";
import { outsideTool } from "../../support/outsideTool.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

function filled(checks = 12) {
  const store = storeInTemp();
  fillStore(store, checks);
  return store;
}

const headsOf = (store: ReturnType<typeof filled>) =>
  new Map(chainReports(store.db, []).map((chain) => [chain.origin, chain.head]));

describe("an archive of all records", () => {
  it("comes back into an empty program with the same head for every origin, waveforms and all", async () => {
    const store = filled();
    const file = join(tempFolder(), "all.zip");
    const made = await exported(store, file);
    const other = storeInTemp({ machine: "another" });
    const taken = importArchive(other, file, quietWatch);
    expect(taken.added).toBe(made.entries);
    for (const [origin, head] of headsOf(store)) expect(headsOf(other).get(origin)).toBe(head);
    const report = await verifyFile(other.db, { rebuild: true, watch: quietWatch });
    expect(report).toMatchObject({ damagedCount: 0, waveforms: 36, waveformsLeftOut: 0 });
    expect(spindleList(other.db)).toEqual(
      spindleList(store.db).map((s) => ({
        ...s,
        last: s.last && { ...s.last, place: expect.any(Number) },
        baseline: s.baseline && { ...s.baseline, place: expect.any(Number) },
      })),
    );
  });

  it("keeps the order in which chains were filed when a file holds several", async () => {
    const first = filled(3);
    const folder = tempFolder();
    await exported(first, join(folder, "first.zip"));
    const second = storeInTemp({ machine: "another" });
    second.append([{ kind: "spindle", body: aSpindle({ spindleId: idOf(70) }) }]);
    importArchive(second, join(folder, "first.zip"), quietWatch);
    second.append([
      { kind: "void", body: { checkId: aCheck({ seed: 1 }).checkId, reason: "wrong spindle", operatorId: null } },
    ]);
    await exported(second, join(folder, "second.zip"));
    const third = storeInTemp({ machine: "third" });
    importArchive(third, join(folder, "second.zip"), quietWatch);
    for (const [origin, head] of headsOf(second)) expect(headsOf(third).get(origin)).toBe(head);
    expect(spindleList(third.db).map((s) => s.checkCount)).toEqual(spindleList(second.db).map((s) => s.checkCount));
  });

  it("adds nothing the second time", async () => {
    const store = filled(3);
    const file = join(tempFolder(), "all.zip");
    await exported(store, file);
    expect(importArchive(store, file, quietWatch).added).toBe(0);
  });

  it("can leave the readings out, and says so", async () => {
    const store = filled(3);
    const file = join(tempFolder(), "all.zip");
    await exported(store, file, false);
    expect(Object.keys(membersOf(file))).not.toContain("csv/waveform.csv");
    const other = storeInTemp({ machine: "another" });
    importArchive(other, file, quietWatch);
    const report = await verifyFile(other.db, { rebuild: true, watch: quietWatch });
    expect(report).toMatchObject({ damagedCount: 0, waveforms: 0, waveformsLeftOut: 9 });
  });

  it("holds no name and no PIN", async () => {
    const file = join(tempFolder(), "all.zip");
    await exported(filled(3), file);
    const all = Object.values(membersOf(file)).join("\n");
    expect(all).not.toMatch(/Ilse|Brandt|scrypt/);
    expect(all).toContain(idOf(4));
  });

  it("can be stopped on the way in, and then nothing stands", async () => {
    const file = join(tempFolder(), "all.zip");
    await exported(filled(70), file);
    const other = storeInTemp({ machine: "another" });
    const stopping = {
      progress: () => {},
      goOn: () => {
        throw new Error("stopped");
      },
    };
    expect(() => importArchive(other, file, stopping)).toThrow("stopped");
    expect(other.lastPlace()).toBe(0);
    expect(importArchive(other, file, quietWatch).added).toBeGreaterThan(70);
  });

  it("can be stopped on the way out, and then no file is left", async () => {
    const folder = tempFolder();
    const { db, demo } = filled(70);
    const watch = {
      progress: () => {},
      goOn: () => {
        throw new Error("stopped");
      },
    };
    const options = { file: join(folder, "all.zip"), waveforms: true, program: "0.1.0", demo, nowMs: 0, watch };
    await expect(exportArchive(db, options)).rejects.toThrow("stopped");
    expect(readdirSync(folder)).toEqual([]);
  });

  it("writes over nothing and leaves nothing behind when it is stopped", async () => {
    const store = filled(3);
    const folder = tempFolder();
    const file = join(folder, "all.zip");
    writeFileSync(file, "mine");
    await expect(exported(store, file)).rejects.toMatchObject({ code: "conflict" });
    expect(readFileSync(file, "utf8")).toBe("mine");
    await expect(exported(store, join(folder, "gone", "all.zip"))).rejects.toMatchObject({ code: "notFound" });
    expect(readdirSync(folder)).toEqual(["all.zip"]);
  });
});

describe("the tables of an archive", () => {
  it("have one row a record, columns as their description says, and numbers that are those of the ledger", async () => {
    const store = filled();
    const file = join(tempFolder(), "all.zip");
    await exported(store, file);
    const members = membersOf(file);
    const described = JSON.parse(members["csv-metadata.json"]!);
    for (const { url, tableSchema } of described.tables) {
      const rows = parse(members[url]!) as string[][];
      expect(rows[0]).toEqual(tableSchema.columns.map((c: { name: string }) => c.name));
    }
    const checks = parse(members["csv/check.csv"]!, { columns: true }) as Record<string, string>[];
    expect(checks).toHaveLength(13); // twelve, and the one that replaced another
    const ledger = members["ledger/0001.jsonl"]!.trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    const bodies = ledger.filter((e) => e.kind === "check").map((e) => e.body);
    expect(checks.slice(0, 12).map((c) => Number(c.valueN))).toEqual(bodies.map((b) => b.valueN));
    expect(checks.slice(0, 12).map((c) => Number(c.budget_standardN))).toEqual(bodies.map((b) => b.budget.standardN));
    const cycles = parse(members["csv/cycle.csv"]!, { columns: true }) as Record<string, string>[];
    expect(cycles.slice(0, 3).map((c) => Number(c.zeroN))).toEqual(
      bodies[0].cycles.map((c: { zeroN: number }) => c.zeroN),
    );
    const waveform = parse(members["csv/waveform.csv"]!, { columns: true }) as Record<string, string>[];
    expect(waveform).toHaveLength(36);
    expect(waveform[0]!.forceN!.split(" ")).toHaveLength(120);
  });

  it("keeps formulas from a spreadsheet", async () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle({ name: "=cmd|' /C calc'!A0", machine: "-7" }) }]);
    const file = join(tempFolder(), "all.zip");
    await exported(store, file);
    const [row] = parse(membersOf(file)["csv/spindle.csv"]!, { columns: true }) as [Record<string, string>];
    expect(row.name).toBe("'=cmd|' /C calc'!A0");
    expect(row.machine).toBe("-7");
  });

  // W3C "Metadata Vocabulary for Tabular Data" (2015): what a table group must hold (5.3), a column (5.6), and the
  // built-in datatypes (5.11.1).
  it("are described as CSV on the Web asks", async () => {
    const file = join(tempFolder(), "all.zip");
    await exported(filled(3), file);
    const described = JSON.parse(membersOf(file)["csv-metadata.json"]!);
    expect(described["@context"][0]).toBe("http://www.w3.org/ns/csvw");
    const builtIn = ["string", "double", "integer", "boolean", "date", "dateTime", "json"];
    for (const { url, tableSchema } of described.tables) {
      expect(membersOf(file)[url], url).toBeDefined();
      const names = tableSchema.columns.map((c: { name: string }) => c.name);
      expect(new Set(names).size, url).toBe(names.length);
      for (const column of tableSchema.columns) {
        expect(column.name).toMatch(/^[A-Za-z][A-Za-z0-9_]*$/);
        expect(builtIn).toContain(column.datatype);
      }
    }
  });

  it("are read by Python's csv and zipfile modules", async (context) => {
    const file = join(tempFolder(), "all.zip");
    await exported(filled(3), file);
    const script = `import csv,io,json,sys,zipfile
z=zipfile.ZipFile(sys.argv[1]); assert z.testzip() is None
def rows(n): return list(csv.reader(io.TextIOWrapper(z.open(n),'utf-8',newline=''),strict=True))
print(json.dumps({n:[len(rows(n)),sorted(set(map(len,rows(n))))] for n in z.namelist() if n.endswith('.csv')}))`;
    const ran = outsideTool(context, "python3", ["-c", script, file]);
    const tables = JSON.parse(ran.stdout) as Record<string, [number, number[]]>;
    expect(tables["csv/check.csv"]![0]).toBe(5);
    for (const [, widths] of Object.values(tables)) expect(widths).toHaveLength(1);
  });
});

describe("an archive that is not to be trusted", () => {
  async function members(checks = 3) {
    const file = join(tempFolder(), "all.zip");
    await exported(filled(checks), file);
    return membersOf(file);
  }
  const refused = (file: string, code: string, words: RegExp) => {
    const store = storeInTemp({ machine: "another" });
    expect(() => importArchive(store, file, quietWatch)).toThrow(
      expect.objectContaining({ code, message: expect.stringMatching(words) }),
    );
    expect(store.lastPlace()).toBe(0);
  };
  const written = (all: Record<string, string>) => writeMembers(join(tempFolder(), "bad.zip"), all);

  it.each(["../outside.txt", "/etc/passwd", "a/../../b", "C:\\x", "a\\..\\b"])(
    "is refused for a name like %j",
    async (name) => {
      refused(written({ ...(await members()), [name]: "x" }), "damaged", /leads out/);
    },
  );

  it("is refused when it was made to swell", async () => {
    const all = await members();
    refused(written({ ...all, "ledger/0001.jsonl": " ".repeat(60_000_000) }), "damaged", /swell/);
    refused(written({ ...all, "archive.json": " ".repeat(60_000_000) }), "damaged", /swell|too long/);
  });

  it("is refused when it comes from a newer program", async () => {
    const all = await members();
    const newer = JSON.stringify({ ...JSON.parse(all["archive.json"]!), version: 2, program: "9.0.0", more: [] });
    refused(written({ ...all, "archive.json": newer }), "newer", /newer Holdfast \(9\.0\.0\)/);
  });

  it("is refused when an entry was changed, is missing, or the ledger was cut short", async () => {
    const all = await members();
    const lines = all["ledger/0001.jsonl"]!.split("\n");
    refused(
      written({ ...all, "ledger/0001.jsonl": all["ledger/0001.jsonl"]!.replace("Quarry Lane", "Quarry Line") }),
      "damaged",
      /does not continue|does not end/,
    );
    refused(written({ ...all, "ledger/0001.jsonl": lines.toSpliced(3, 1).join("\n") }), "damaged", /does not continue/);
    refused(written({ ...all, "ledger/0001.jsonl": `${lines.slice(0, 5).join("\n")}\n` }), "damaged", /does not end/);
    const { "ledger/0001.jsonl": _gone, ...without } = all;
    refused(written(without), "damaged", /is missing/);
  });

  it("is refused when a reading was changed", async () => {
    const all = await members();
    const [line, ...rest] = all["waveforms.jsonl"]!.split("\n");
    const changed = JSON.parse(line!);
    const bytes = Buffer.from(changed.packed, "base64");
    bytes[20]! ^= 1;
    const text = [JSON.stringify({ ...changed, packed: bytes.toString("base64") }), ...rest].join("\n");
    refused(written({ ...all, "waveforms.jsonl": text }), "damaged", /waveform of cycle/);
  });

  it("is refused when it is no archive, cut short, or another's", async () => {
    const folder = tempFolder();
    const file = join(folder, "all.zip");
    await exported(filled(3), file);
    const bytes = readFileSync(file);
    const put = (name: string, content: Uint8Array) => {
      writeFileSync(join(folder, name), content);
      return join(folder, name);
    };
    refused(put("noise.zip", Buffer.from("noise ".repeat(100))), "damaged", /no zip archive/);
    refused(put("cut.zip", bytes.subarray(0, bytes.length - 200)), "damaged", /cut short|damaged/);
    const flipped = Buffer.from(bytes);
    flipped[Math.floor(bytes.length / 2)]! ^= 0x10;
    const store = storeInTemp({ machine: "another" });
    try {
      importArchive(store, put("flipped.zip", flipped), quietWatch); // the flip may lie in a table, which is not read
    } catch (cause) {
      expect(cause).toMatchObject({ code: "damaged" });
    }
    refused(written({ "other.txt": "hello" }), "damaged", /no archive of Holdfast/);
    refused(join(folder, "none.zip"), "notFound", /no file/);
  });

  it("keeps invented data out of real records", async () => {
    const demo = storeInTemp({ demo: true });
    fillStore(demo, 2);
    const file = join(tempFolder(), "demo.zip");
    await exported(demo, file);
    refused(file, "demoMismatch", /invented data/);
  });
});
