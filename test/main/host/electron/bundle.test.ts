import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, describe, expect, it } from "vitest";
import type { Input, MethodName, Output } from "../../../../app/contract/methods.ts";
import type { Result } from "../../../../app/contract/result.ts";
import { aSpindle } from "../../../support/aSpindle.ts";

const root = resolve(import.meta.dirname, "..", "..", "..", "..");
const bundle = join(root, "out/main/main.js");
const standIn = join(root, "test/support/electronStandIn.ts");
if (!existsSync(bundle)) console.warn("SKIPPED: the bundle that Electron runs, because npm run build has not been run");

let child: ChildProcess;
let home: string;
afterEach(async () => {
  if (child.exitCode === null) {
    child.kill();
    await once(child, "exit");
  }
  rmSync(home, { recursive: true, force: true });
});

/** The bundle as Electron would run it, `electron` itself a stand-in without a window. */
async function start(...args: string[]) {
  home = mkdtempSync(join(tmpdir(), "holdfast-bundle-"));
  child = spawn(process.execPath, ["--import", pathToFileURL(standIn).href, bundle, ...args], {
    env: { ...process.env, HOLDFAST_HOME: home, NODE_NO_WARNINGS: "1" },
    stdio: ["ignore", "inherit", "inherit", "ipc"],
  });
  child.setMaxListeners(0); // polling asks many times
  let calls = 0;
  const heard = (of: (message: Record<string, unknown>) => boolean) =>
    new Promise<Record<string, unknown>>((done, fail) => {
      const listen = (message: Record<string, unknown>) => {
        if (!of(message)) return;
        child.off("message", listen);
        done(message);
      };
      child.on("message", listen);
      child.once("exit", (code) => fail(new Error(`the bundle ended with ${code}`)));
    });
  const call = async <M extends MethodName>(name: M, input: Input<M>): Promise<Output<M>> => {
    const id = ++calls;
    const answer = heard((message) => message.id === id);
    child.send({ id, name, input });
    const result = (await answer).result as Result<Output<M>>; // what the bridge answers
    if (!result.ok) throw new Error(`${name}: ${result.error.message}`);
    return result.value;
  };
  const [opened, loads] = await Promise.all([heard((m) => "opened" in m), heard((m) => "loads" in m)]);
  return { call, opened: opened.opened as string, loads: loads.loads };
}

describe.skipIf(!existsSync(bundle))("the bundle that Electron runs", () => {
  it("opens its window, works in threads of its own, starts the simulated gauge, and ends when told to", async () => {
    const { call, opened, loads } = await start();
    expect(loads).toBe("app://holdfast/index.html");
    expect(existsSync(opened)).toBe(true);
    const { spindle } = await call("spindles.save", aSpindle({ name: "Mill 1" }));
    const { rows } = await call("spindles.fleet", {}); // a job in the bundled worker
    expect(rows.map(({ spindleId }) => spindleId)).toEqual([spindle.spindleId]);
    await call("link.open", { source: { kind: "simulated" } });
    const live = async () => (await call("state.snapshot", {})).link.state;
    await expect.poll(live, { timeout: 20_000 }).toBe("open");
    const ended = once(child, "exit");
    child.send({ name: "quit" });
    expect((await ended)[0]).toBe(0);
  }, 60_000);
});
