import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Input } from "../../../app/contract/methods.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";

let core: CoreInTemp;
beforeEach(async () => {
  core = await coreInTemp();
});
afterEach(() => core.close());

const spindle = (over: Partial<Input<"spindles.save">> = {}): Input<"spindles.save"> => ({
  name: "Mill 9",
  machine: "Mill 9",
  area: "hall B",
  taper: "HSK-A63",
  limits: {},
  state: "inUse",
  ...over,
});
const adapter = (over: Partial<Input<"adapters.save">> = {}): Input<"adapters.save"> => ({
  name: "A63-9",
  taper: "HSK-A63",
  scale: 1,
  scaleUncertainty: 0.001,
  assumed: false,
  version: 1,
  state: "inUse",
  ...over,
});
const refusal = (attempt: Promise<unknown>) =>
  attempt.then(
    () => "taken",
    (error: { failure?: { code: string; key?: string; field?: string } }) =>
      [error.failure?.key ?? error.failure?.code, error.failure?.field].filter(Boolean).join(" "),
  );

describe("the register", () => {
  it.each([
    ["emoji", "Fräse 🔩 3"],
    ["writing from right to left", "מכונה 3 עמודה"],
    ["a name as long as may be", "x".repeat(120)],
  ])("keeps %s in a name to the letter", async (_, name) => {
    const { spindle: saved } = await core.call("spindles.save", spindle({ name }));
    expect(saved.name).toBe(name);
    expect((await core.call("spindles.list"))[0]!.spindle.name).toBe(name);
  });

  it("keeps a note of 10,000 characters through ledger and list, and refuses a longer one", async () => {
    const note = [..."שלום 🛠️ ".repeat(2_000)].slice(0, 10_000).join(""); // characters, however many units each takes
    const saved = await core.call("spindles.save", spindle({ note }));
    expect(saved.spindle.note).toBe(note);
    expect(await refusal(core.call("spindles.save", spindle({ name: "Mill 10", note: `${note}x` })))).toMatch(
      /invalid/,
    );
  });

  it("keeps a check's note of 10,000 characters", async () => {
    const { spindleId } = await smallWorks(core);
    const { seriesId } = (await core.call("state.snapshot")).draft;
    const note = "ü".repeat(10_000);
    await core.call("series.describe", { seriesId, note });
    const { row } = await fileTyped(core, spindleId, "18 kN");
    expect((await core.call("checks.get", { checkId: row.checkId })).check.note).toBe(note);
  });

  it("refuses a second record in use with the same serial number, until the first is retired", async () => {
    const first = await core.call("adapters.save", adapter({ serial: "17" }));
    const second = adapter({ name: "A63-10", serial: " 17 " });
    expect(await refusal(core.call("adapters.save", second))).toBe("twin.serial serial");
    await core.call("adapters.save", { ...first.adapter, state: "retired" });
    expect(await refusal(core.call("adapters.save", second))).toBe("taken");
  });

  it.each([
    ["no name", adapter({ name: "  " })],
    ["a scale of 0", adapter({ scale: 0 })],
    ["a negative scale", adapter({ scale: -1 })],
    ["an uncertainty of 0", adapter({ scaleUncertainty: 0 })],
    ["a negative uncertainty", adapter({ scaleUncertainty: -0.001 })],
  ])("refuses an adapter with %s", async (_, input) => {
    expect(await refusal(core.call("adapters.save", input))).toMatch(/^invalid/);
  });

  it.each([
    ["a minimum over the maximum", { minimumN: 20_000, maximumN: 18_000 }],
    ["a force of 0", { minimumN: 0 }],
    ["a negative force", { nominalN: -18_000 }],
  ])("refuses limits with %s", async (_, limits) => {
    expect(await refusal(core.call("spindles.save", spindle({ limits })))).toMatch(/^invalid/);
  });

  it("keeps what is known of the clamping unit, and a rule of the spindle's own", async () => {
    const about = {
      wedgeRatio: 3.5,
      springPack: "96 disc springs",
      unitSerial: "U 4711",
      rule: { rule: "simple" as const },
    };
    const { spindle: saved } = await core.call("spindles.save", spindle(about));
    expect(saved).toMatchObject(about);
  });
});
