import { appendFileSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { ArchiveMade, PersonExported } from "../../../app/contract/reportViews.ts";
import type { SupportMade } from "../../../app/contract/supportViews.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";
import { jobEnded } from "../../support/jobEnded.ts";

let core: CoreInTemp;
beforeEach(async () => {
  core = await coreInTemp();
});
afterEach(() => core.close());

async function result<T>({ jobId }: { jobId: string }): Promise<T> {
  const job = await jobEnded(core, jobId);
  if (job.state !== "finished") throw new Error(job.message);
  return job.result as T;
}
const onShift = async (operatorId: string) => {
  const { seriesId } = (await core.call("state.snapshot")).draft;
  await core.call("series.tag", { seriesId, operatorId });
};
const texts = (zip: Uint8Array) =>
  new Map(Object.entries(unzipSync(zip)).map(([name, bytes]) => [name, Buffer.from(bytes).toString("utf8")]));

describe("collecting for support", () => {
  it("shows each text that is in the archive, and none holds a name, a token or a record", async () => {
    const { spindleId } = await smallWorks(core);
    const { operatorId } = await core.call("operators.save", {
      name: "Tilda Reeve",
      role: "technician",
      state: "inUse",
    });
    await onShift(operatorId);
    await fileTyped(core, spindleId, "17.83 kN");
    // Written before the name came on the list, or by hand.
    appendFileSync(join(core.folder, "holdfast.log"), `x warn Tilda Reeve at ${core.folder} token=abcdefghijk\n`);
    const { files, zip } = await result<SupportMade>(await core.call("support.collect"));
    const inside = texts(Buffer.from(zip.base64, "base64"));
    expect([...inside]).toEqual(files.map(({ name, text }) => [name, text]));
    expect([...inside.keys()]).toEqual(["about.txt", "holdfast.log"]);
    const all = [...inside.values()].join("\n");
    for (const secret of ["Tilda", "Reeve", "abcdefghijk", "Mill 3", "17.83", "17830"])
      expect(all).not.toContain(secret);
    expect(inside.get("about.txt")).toMatch(/Holdfast \d/);
    expect(inside.get("about.txt")).toContain("check: 1");
  });
});

describe("where the data lies", () => {
  it("is said of everything that is kept, with its size", async () => {
    await smallWorks(core);
    const places = await core.call("places.list");
    expect(places.map(({ what }) => what)).toEqual(["dataFile", "spool", "log", "key", "settings"]);
    expect(places[0]).toMatchObject({ path: core.dataFile, bytes: expect.any(Number) });
    expect(places.find(({ what }) => what === "key")?.bytes).toBeGreaterThan(0);
  });
});

describe("one person's entries", () => {
  it("leave as lines and tables: all that names the person, nothing else, no PIN", async () => {
    const { spindleId } = await smallWorks(core);
    const tilda = (await core.call("operators.save", { name: "Tilda Reeve", role: "technician", state: "inUse" }))
      .operatorId;
    const kay = (await core.call("operators.save", { name: "Kay Ashdown", role: "keeper", state: "inUse" })).operatorId;
    await core.call("people.setPin", { operatorId: tilda, pin: "13572468" }).catch(() => undefined); // nobody is on shift yet
    await onShift(kay);
    await core.call("people.setPin", { operatorId: tilda, pin: "13572468" });
    await fileTyped(core, spindleId, "18 kN");
    await onShift(tilda);
    await core.call("people.confirm", { operatorId: tilda, right: "accept", pin: "13572468" });
    await fileTyped(core, spindleId, "17 kN");
    const made = await result<PersonExported>(
      await core.call("people.export", { operatorId: tilda, folder: core.folder }),
    );
    const inside = texts(readFileSync(made.file));
    const lines = inside
      .get("entries.jsonl")!
      .trim()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(lines).toHaveLength(made.entries);
    expect(lines.map((entry) => entry.kind)).toEqual(["operator", "act", "check"]);
    expect(lines[2].body).toMatchObject({ operatorId: tilda, valueN: 17_000 });
    expect([...inside.keys()].sort()).toEqual([
      "README.txt",
      "csv/act.csv",
      "csv/check.csv",
      "csv/operator.csv",
      "entries.jsonl",
      "person.json",
    ]);
    expect(JSON.parse(inside.get("person.json")!)).toMatchObject({ name: "Tilda Reeve", initials: "TR" });
    const all = [...inside.values()].join("\n");
    for (const other of ["scrypt", "13572468", "Kay Ashdown"]) expect(all).not.toContain(other);
  });

  it("are one's own, or a keeper's to hand out", async () => {
    const tilda = (await core.call("operators.save", { name: "Tilda Reeve", role: "technician", state: "inUse" }))
      .operatorId;
    const kay = (await core.call("operators.save", { name: "Kay Ashdown", role: "keeper", state: "inUse" })).operatorId;
    await onShift(tilda);
    await expect(core.call("people.export", { operatorId: kay, folder: core.folder })).rejects.toMatchObject({
      failure: { asks: { what: "role", right: "people" } },
    });
    await result(await core.call("people.export", { operatorId: tilda, folder: core.folder }));
    expect(readdirSync(core.folder).filter((name) => name.startsWith("holdfast-person-"))).toHaveLength(1);
  });

  it("say so when the folder is gone, and leave nothing behind", async () => {
    const { operatorId } = await core.call("operators.save", {
      name: "Tilda Reeve",
      role: "technician",
      state: "inUse",
    });
    await onShift(operatorId);
    const folder = join(core.folder, "stick");
    await expect(core.call("people.export", { operatorId, folder }).then(result)).rejects.toThrow(
      "Was the stick taken out",
    );
  });
});

describe("damaged records in the running program", () => {
  it("are found by a walk asked for, stop all writing, and what can be read is saved from the screen", async () => {
    const { spindleId } = await smallWorks(core);
    await fileTyped(core, spindleId, "18 kN");
    const { default: Database } = await import("better-sqlite3");
    const db = new Database(core.dataFile);
    db.exec("UPDATE entry SET hash = zeroblob(32) WHERE n = (SELECT min(n) + 1 FROM entry)");
    db.close();
    await result(await core.call("records.verify"));
    const { program } = await core.call("state.snapshot");
    expect(program).toMatchObject({ damaged: true, readOnly: expect.stringContaining("Nothing more is written") });
    await expect(fileTyped(core, spindleId, "18 kN")).rejects.toMatchObject({ failure: { code: "readOnly" } });
    const made = await result<ArchiveMade>(await core.call("records.export", { folder: core.folder, waveforms: true }));
    expect(made).toMatchObject({ entries: 3, leftOut: 1 });
    expect(texts(readFileSync(made.file)).get("damaged.txt")).toContain("entry 2");
  });
});
