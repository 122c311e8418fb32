import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { putInPlace } from "../../main/putInPlace.ts";
import { tempFolder } from "../support/storeInTemp.ts";

function place(open: (kept?: string) => Promise<string>) {
  const folder = tempFolder();
  const [dataFile, restored] = [join(folder, "holdfast.sqlite"), join(folder, "restored.sqlite")];
  writeFileSync(dataFile, "old");
  writeFileSync(restored, "new");
  let closed = 0;
  const close = async () => {
    closed += 1;
  };
  const done = putInPlace({ restored, dataFile, nowMs: 0, damaged: false, close, open });
  return { folder, dataFile, done, closed: () => closed };
}

describe("putting a restored file in place", () => {
  it("closes, swaps, opens, and says where the old one is kept", async () => {
    const { dataFile, done, closed } = place(async (kept) => `opened, ${kept === undefined ? "none" : "one"} kept`);
    const placed = await done;
    expect(placed).toMatchObject({ opened: "opened, one kept", kept: expect.stringContaining("before-restore-") });
    expect(closed()).toBe(1);
    expect(readFileSync(dataFile, "utf8")).toBe("new");
  });

  it("goes back to the old file when the new one does not open, keeps the restored one, and tells why", async () => {
    const cause = new Error("it will not open");
    const { folder, dataFile, done } = place(async (kept) => {
      if (kept !== undefined) throw cause;
      return "the old one";
    });
    expect(await done).toEqual({ opened: "the old one", cause });
    expect(readFileSync(dataFile, "utf8")).toBe("old");
    expect(readdirSync(folder).sort()).toEqual(["holdfast.sqlite", "restored.sqlite"]);
  });
});
