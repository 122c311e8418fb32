import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { JobView } from "../../../app/contract/programViews.ts";
import type { Rejudged } from "../../../app/contract/recordViews.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";

let core: CoreInTemp;
let spindleId: string;
beforeEach(async () => {
  core = await coreInTemp();
  ({ spindleId } = await smallWorks(core));
});
afterEach(() => core.close());

async function ended(jobId: string): Promise<JobView> {
  for (;;) {
    const push = core.pushes.find((p) => p.event === "job.finished" && (p.data as JobView).jobId === jobId);
    if (push !== undefined) return push.data as JobView;
    await new Promise((done) => setTimeout(done, 5));
  }
}

async function rejudged(): Promise<Rejudged> {
  const { jobId } = await core.call("checks.rejudge");
  return (await ended(jobId)).result as Rejudged; // what the contract says it finishes with
}

const row = async () => (await core.call("spindles.list"))[0]!;
async function setMinimum(minimumN: number) {
  const { spindle } = await row();
  await core.call("spindles.save", { ...spindle, limits: { minimumN, maximumN: 20_000 } });
}
const counted = ({ counts }: Rejudged) => Object.fromEntries(counts.map((c) => [`${c.filed} ${c.today}`, c.count]));

describe("today's word on what was filed", () => {
  it("agrees with every filed verdict while nothing has changed", async () => {
    await fileTyped(core, spindleId, "18.6 kN");
    await fileTyped(core, spindleId, "16.7 kN");
    const found = await rejudged();
    expect(counted(found)).toEqual({ "good good": 1, "watch watch": 1 });
    expect(found).toMatchObject({ changed: [], changedCount: 0, notJudged: 0 });
  });

  it("counts by filed and today's verdict, and lists what changed, the gravest first", async () => {
    const better = await fileTyped(core, spindleId, "18.6 kN");
    const lower = await fileTyped(core, spindleId, "17.9 kN");
    await setMinimum(18_400);
    const found = await rejudged();
    expect(counted(found)).toEqual({ "good stop": 1, "good cannotTell": 1 });
    expect(found.changed.map((c) => [c.checkId, c.filed, c.today, c.reason?.code])).toEqual([
      [lower.row.checkId, "good", "stop", "belowMinimum"],
      [better.row.checkId, "good", "cannotTell", "undecidedAtMinimum"],
    ]);
  });

  it("leaves the filed verdict, its limits and the spindle's standing as they were", async () => {
    const { row: filed } = await fileTyped(core, spindleId, "17.9 kN");
    await setMinimum(18_400);
    await rejudged();
    const page = await core.call("checks.get", { checkId: filed.checkId });
    expect(page.check.verdict).toBe("good");
    expect(page.check.limits.minimumN).toBe(14_400);
    expect(await row()).toMatchObject({ verdict: "good", stopped: false });
  });

  it("stands beside the filed verdict in an opened check, with what has changed since", async () => {
    const { row: filed } = await fileTyped(core, spindleId, "17.9 kN");
    const today = async () => (await core.call("checks.get", { checkId: filed.checkId })).today;
    expect(await today()).toBeUndefined();
    await setMinimum(18_400);
    expect(await today()).toMatchObject({ verdict: "stop", changed: ["limits"] });
    const works = (await core.call("state.snapshot")).works;
    await core.call("works.save", { ...works, rule: { rule: "simple" }, cautionDrop: 0.05 });
    expect((await today())!.changed).toEqual(["limits", "rule", "drops"]);
    await setMinimum(14_400);
    expect(await today()).toMatchObject({ verdict: "good", changed: ["limits", "rule", "drops"] });
  });

  it("leaves out checks that no longer count", async () => {
    const { row: filed } = await fileTyped(core, spindleId, "17.9 kN");
    await core.call("checks.void", { checkId: filed.checkId, reason: "another spindle was measured" });
    expect((await rejudged()).counts).toEqual([]);
  });
});
