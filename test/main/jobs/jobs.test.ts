import { statSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import type { JobView } from "../../../app/contract/programViews.ts";
import { Jobs, type JobsOptions } from "../../../main/jobs/Jobs.ts";
import type { Store } from "../../../main/store/Store.ts";
import { idOf } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { fileOne, fillStore } from "../../support/fullStore.ts";
import { longestTurn } from "../../support/longestTurn.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

function jobsOn(store: Store, over: Partial<JobsOptions> = {}) {
  const seen: JobView[] = [];
  const faults: string[] = [];
  const jobs = new Jobs({
    path: store.path,
    demo: false,
    newId: () => store.newId(),
    onChange: (job) => seen.push(job),
    onFault: (message) => faults.push(message),
    ...over,
  });
  onTestFinished(() => jobs.close());
  return { jobs, seen, faults };
}

const testWorker = join(import.meta.dirname, "testWorker.ts");

async function until(done: () => boolean): Promise<void> {
  while (!done()) await new Promise((resolve) => setTimeout(resolve, 5));
}

describe("Jobs", () => {
  it("runs a job on the data file in a thread, and says how it ended", async () => {
    const store = storeInTemp();
    fillStore(store, 10);
    const { jobs, seen } = jobsOn(store);
    const jobId = jobs.start("verify", { rebuild: true });
    expect(seen).toEqual([expect.objectContaining({ jobId, what: "verify", state: "running" })]);
    await until(() => seen.at(-1)?.state !== "running");
    expect(seen.at(-1)).toMatchObject({ jobId, state: "finished", result: { damagedCount: 0, waveforms: 30 } });
    expect(jobs.list()).toEqual([seen.at(-1)]);
  });

  it("sees what was filed up to its start, though nothing was written back yet", async () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    const { jobs } = jobsOn(store);
    expect(await jobs.run("verify", {})).toMatchObject({ entries: 1 });
  });

  it("walks one moment of the file, whatever is filed meanwhile", async () => {
    const store = storeInTemp();
    fillStore(store, 10);
    const { jobs } = jobsOn(store);
    let filed = 100;
    const accepting = setInterval(() => fileOne(store, ++filed, idOf(11)), 4);
    const report = await jobs.run("verify", { rebuild: true });
    clearInterval(accepting);
    expect(filed).toBeGreaterThan(105);
    expect(report.damaged).toEqual([]);
  });

  it("files in a job, while the core waits its turn and goes on in the same chain", async () => {
    const store = storeInTemp({ machine: undefined }); // this computer, as the job takes it
    store.append([{ kind: "spindle", body: aSpindle() }]);
    const { jobs } = jobsOn(store, { workerFile: testWorker });
    const running = jobs.run("restore", { from: "", to: "" });
    let busy: unknown;
    while (busy === undefined && store.lastPlace() < 2 ** 32 + 2) {
      await new Promise((resolve) => setTimeout(resolve, 5));
      try {
        store.write(() => {});
      } catch (cause) {
        busy = cause;
      }
    }
    expect(busy).toMatchObject({ code: "busy", message: expect.stringContaining("accept again when it is done") });
    await running;
    const [filed] = store.append([{ kind: "attachment", body: { name: "after the job" } }]);
    expect(filed?.seq).toBe(3);
  });

  it("writes the log back in a thread when it has grown", async () => {
    const store = storeInTemp();
    const { jobs, seen } = jobsOn(store);
    store.whenLogGrows(() => jobs.quietly("checkpoint"));
    const before = statSync(store.path).size;
    for (let i = 1; i <= 160; i += 1) fileOne(store, i, idOf(1));
    await until(() => statSync(store.path).size > before + 1e6);
    expect(seen).toEqual([]);
  });

  it("says how far it is, and ends a busy job when told to", async () => {
    const { jobs, seen } = jobsOn(storeInTemp(), { workerFile: testWorker });
    const jobId = jobs.start("verify", {});
    await until(() => seen.some((job) => job.done > 0));
    expect(jobs.stop(jobId)).toBe(true);
    await until(() => seen.at(-1)?.state !== "running");
    expect(seen.at(-1)).toMatchObject({ state: "stopped" });
    expect(jobs.stop(jobId)).toBe(false);
  });

  it("can be stopped by a signal, as the command line does", async () => {
    const { jobs } = jobsOn(storeInTemp(), { workerFile: testWorker });
    const stop = new AbortController();
    const running = jobs.run("verify", {}, stop.signal);
    setTimeout(() => stop.abort(), 20);
    await expect(running).rejects.toMatchObject({ code: "stopped" });
  });

  it.each([
    ["store", "full", "The disk is full."],
    ["program", "internal", "backup failed; see the log"],
    ["exit", "internal", expect.stringContaining("ended early")],
  ])("says by a closed code how a job failed: %s", async (folder, code, message) => {
    const { jobs, seen, faults } = jobsOn(storeInTemp(), { workerFile: testWorker });
    await expect(jobs.run("backup", { folder })).rejects.toMatchObject({ code, message });
    expect(seen.at(-1)).toMatchObject({ state: "failed", message });
    expect(faults).toHaveLength(code === "internal" ? 1 : 0);
  });

  it("refuses arguments its schema does not know", async () => {
    const { jobs } = jobsOn(storeInTemp());
    const wrong = { rebuild: "yes" } as unknown as { rebuild: boolean };
    await expect(jobs.run("verify", wrong)).rejects.toMatchObject({ code: "badRequest" });
  });

  it("stops everything when it is closed", async () => {
    const { jobs, seen } = jobsOn(storeInTemp(), { workerFile: testWorker });
    jobs.start("verify", {});
    jobs.start("verify", {});
    await jobs.close();
    expect(seen.filter((job) => job.state === "stopped")).toHaveLength(2);
  });
});

describe("the core", () => {
  it("is never held up for 50 ms while a job walks 100,000 entries", async () => {
    const store = storeInTemp();
    for (let i = 0; i < 100; i += 1) {
      store.append(
        Array.from({ length: 1_000 }, (_, k) => ({
          kind: "attachment" as const,
          body: { name: `proof ${i * 1_000 + k}` },
        })),
      );
    }
    const { jobs } = jobsOn(store);
    const turn = longestTurn();
    const report = await jobs.run("verify", {});
    expect(turn.stop()).toBeLessThan(50);
    expect(report.entries).toBeGreaterThanOrEqual(100_000);
    expect(report.damaged).toEqual([]);
  }, 60_000);
});
