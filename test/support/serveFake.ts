import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { EventName, Events, ReadingsBatch } from "../../app/contract/events.ts";
import { coreOf } from "../../main/host/Core.ts";
import { startLoopback } from "../../main/host/loopback/server.ts";
import { PushHub } from "../../main/host/PushHub.ts";
import { createFakeCore } from "./fakeCore.ts";

/**
 * Serves the built page on top of the fake core, with the real loopback host before it: `node test/support/serveFake.ts
 * FOLDER [empty]` prints one address a line each time Enter is sent. For looking at screens.
 */
const TICK_S = 0.05;
const fake = createFakeCore({ empty: process.argv.includes("empty") });
const hub = new PushHub();
fake.hear((push) => {
  // The hub numbers pushes itself; the fake's own numbers stay behind.
  if (push.event === "readings.arrived") hub.readings(push.data as ReadingsBatch);
  else
    hub.say(
      push.event as Exclude<EventName, "readings.arrived" | "page.joined">,
      push.data as Events["settings.changed"],
    );
});
const handlers = {
  ...fake.handlers,
  "state.snapshot": async () => ({ ...(await fake.handlers["state.snapshot"]({})), seq: hub.seq }),
};
const log = { error: console.error, warn: () => {}, info: () => {} };
const host = await startLoopback({
  core: coreOf(() => handlers, hub, log),
  pageFolder: resolve(process.argv[2] ?? "out/renderer"),
  rememberIn: join(mkdtempSync(join(tmpdir(), "holdfast-fake-")), "remembered.json"),
  now: Date.now,
  log,
});
setInterval(() => fake.run(TICK_S), TICK_S * 1000);
console.log(host.address());
process.stdin.on("data", () => console.log(host.address()));
