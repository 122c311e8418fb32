import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Imported, ListFile } from "../../../app/contract/importViews.ts";
import type { JobView } from "../../../app/contract/programViews.ts";
import { type CoreInTemp, coreInTemp, smallWorks } from "../../support/coreInTemp.ts";
import { longestTurn } from "../../support/longestTurn.ts";
import { workbook } from "../../support/workbook.ts";

let core: CoreInTemp;
beforeEach(async () => {
  core = await coreInTemp();
});
afterEach(() => core.close());

const list = (text: string, over: Partial<ListFile> = {}): ListFile => ({
  what: "spindles",
  fileName: "list.csv",
  base64: Buffer.from(text).toString("base64"),
  ...over,
});

async function imported(file: ListFile): Promise<JobView> {
  const { jobId } = await core.call("register.import", file);
  for (;;) {
    const push = core.pushes.find((p) => p.event === "job.finished" && (p.data as JobView).jobId === jobId);
    if (push !== undefined) return push.data as JobView;
    await new Promise((done) => setTimeout(done, 5));
  }
}
const names = async () => (await core.call("spindles.list")).map((row) => row.spindle.name).sort();

describe("importing a list", () => {
  it("shows what would come of it before anything is filed", async () => {
    const preview = await core.call("register.preview", list("name,minimum_kN\nMill 7,14.4\n"));
    expect(preview).toMatchObject({ ready: 1, stopped: false, problemCount: 0 });
    expect(await names()).toEqual([]);
  });

  it("files every row, tells all pages, and puts the file's name and hash on record", async () => {
    const job = await imported(list("name,minimum_kN\nMill 7,14.4\nMill 8,15\n"));
    expect(job).toMatchObject({
      state: "finished",
      result: { imported: 2, passedOver: 0 } satisfies Omit<Imported, "importId">,
    });
    expect(await names()).toEqual(["Mill 7", "Mill 8"]);
    expect(core.pushes.some((p) => p.event === "register.changed")).toBe(true);
    expect((await core.call("state.snapshot")).program.empty).toBe(false);
  });

  it("takes a workbook as it takes a text file", async () => {
    const bytes = workbook([["Spindles of hall B"], ["Name", "Taper", "Minimum_kN"], ["Mill 7", "HSK-A63", 14.4]]);
    const file = { what: "spindles", fileName: "list.xlsx", base64: bytes.toString("base64") } as const;
    expect(await imported(file)).toMatchObject({ state: "finished", result: { imported: 1 } });
    const [row] = await core.call("spindles.list");
    expect(row!.spindle).toMatchObject({ name: "Mill 7", taper: "HSK-A63", limits: { minimumN: 14_400 } });
  });

  it("files nothing at all when one row cannot be taken, and says which", async () => {
    const job = await imported(list("name,minimum_kN\nMill 7,14.4\nMill 8,-1\n"));
    expect(job.state).toBe("failed");
    expect(job.message).toMatch(/Nothing was imported\. Row 3, minimum_kN/);
    expect(await names()).toEqual([]);
  });

  it("looks at the register as it is when it files, not as it was at the preview", async () => {
    const file = list("name\nMill 3\n");
    expect(await core.call("register.preview", file)).toMatchObject({ stopped: false });
    await smallWorks(core); // another page registers a Mill 3 meanwhile
    expect(await imported(file)).toMatchObject({
      state: "failed",
      message: expect.stringContaining("in the register already"),
    });
    expect(
      await imported({ ...file, base64: list("name\nMill 3\nMill 4\n").base64, passOverKnown: true }),
    ).toMatchObject({
      result: { imported: 1, passedOver: 1 },
    });
  });

  it("goes on in the same chain: what is filed afterwards follows, and the records verify", async () => {
    await imported(list("name\nMill 7\n"));
    await smallWorks(core);
    const { jobId } = await core.call("records.verify");
    for (;;) {
      const push = core.pushes.find((p) => p.event === "job.finished" && (p.data as JobView).jobId === jobId);
      if (push === undefined) await new Promise((done) => setTimeout(done, 5));
      else {
        expect((push.data as JobView).result).toMatchObject({ damagedCount: 0 });
        break;
      }
    }
  });

  it("takes 50,000 rows without holding up the core", async () => {
    const rows = Array.from(
      { length: 50_000 },
      (_, i) => `Spindle ${i},Machine ${i >> 1},Hall ${i % 9},HSK-A63,14.4,18`,
    );
    const file = list(`name,machine,area,taper,minimum_kN,nominal_kN\n${rows.join("\n")}\n`);
    const turn = longestTurn();
    expect(await core.call("register.preview", file)).toMatchObject({ ready: 50_000, stopped: false });
    expect(await imported(file)).toMatchObject({ state: "finished", result: { imported: 50_000 } });
    expect(turn.stop()).toBeLessThan(50);
    const listing = longestTurn();
    expect(await core.call("spindles.list")).toHaveLength(50_000);
    expect(listing.stop()).toBeLessThan(50);
  }, 120_000);
});
