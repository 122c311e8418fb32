import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { expect, it } from "vitest";
import { invented } from "../../support/aCheck.ts";
import { tempFolder } from "../../support/storeInTemp.ts";
import { checkAfterKill } from "../../support/storeTrial/checkAfterKill.ts";
import { killWriter } from "../../support/storeTrial/killWriter.ts";

it("keeps all that was acknowledged, and nothing by halves, through twenty kills", async () => {
  const path = join(tempFolder(), "holdfast.sqlite");
  const next = invented(20_240_304);
  let acknowledged = 0;
  for (let round = 1; round <= 20; round += 1) {
    acknowledged = Math.max(acknowledged, await killWriter(path, next() * 120));
    expect(await checkAfterKill(path, acknowledged)).toEqual([]);
  }
  expect(acknowledged).toBeGreaterThan(20);
  // SQLite's own shell, where it is installed, is the judge from outside.
  const shell = spawnSync("sqlite3", [path, "PRAGMA integrity_check"], { encoding: "utf8" });
  if (shell.error === undefined) expect(shell.stdout.trim()).toBe("ok");
}, 60_000);
