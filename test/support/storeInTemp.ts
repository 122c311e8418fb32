import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { openStore } from "../../main/store/open.ts";
import type { OpenOptions, Store } from "../../main/store/Store.ts";

/** A folder that is gone when the test is over. */
export function tempFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A clock that only moves when told. */
export function stillClock(atMs = Date.parse("2024-03-04T09:00:00.000Z")) {
  const clock = { atMs, now: () => clock.atMs };
  return clock;
}

/** A real store in a folder of its own, closed and removed when the test is over. */
export function storeInTemp(over: Partial<OpenOptions> = {}): Store {
  const clock = stillClock();
  const path = over.path ?? join(tempFolder(), "holdfast.sqlite");
  const store = openStore({ now: clock.now, offsetMinutes: () => 60, machine: "bench", ...over, path });
  onTestFinished(() => store.close());
  return store;
}
