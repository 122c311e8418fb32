import { act, fireEvent, screen } from "@testing-library/react";
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import type { RoundView } from "../../../../app/contract/roundViews.ts";
import type { Core } from "../../../../renderer/state/Core.ts";
import { type CoreInTemp, coreInTemp } from "../../../support/coreInTemp.ts";
import { closePage, faults, press, scan, standInBrowser } from "../../../support/page.tsx";
import { pageOnCore } from "../../../support/pageOnCore.tsx";
import { roundWorks } from "../../../support/roundWorks.ts";

let core: CoreInTemp;
let page: Core;
let round: RoundView;
const clock = { ms: 0 };

const text = () => document.body.textContent?.replace(/\u00a0/g, " ") ?? "";
const until = async (holds: () => boolean) => {
  for (let i = 0; i < 200; i += 1) {
    if (holds()) return;
    await act(() => new Promise((done) => setTimeout(done, 20)));
  }
  expect.fail(`it did not come to that in four seconds: ${text()}`);
};
const draft = () => page.draft.getState().draft!;
const shown = (name: string) => () => screen.queryByText(name, { selector: ".round-at b" }) !== null;
const type = async (place: number) => {
  const { seriesId } = draft();
  const forceN = round.stops[place]!.expectedN!;
  await core.call("series.type", { seriesId, text: `${(forceN / 1000).toFixed(2)} kN` });
  await until(() => draft().typed != null);
};
const click = (name: RegExp | string) => act(async () => fireEvent.click(screen.getByRole("button", { name })));

beforeAll(standInBrowser);
beforeEach(async () => {
  clock.ms = Date.parse("2026-03-02T09:00:00Z");
  core = await coreInTemp({ now: () => clock.ms });
  const { spindleIds, gaugeId } = await roundWorks(core, [10, 19, 25]);
  clock.ms += 100 * 86_400_000;
  round = await core.call("rounds.save", {
    name: "Halls",
    on: "2026-06-10",
    gaugeId,
    made: "byHand",
    stops: spindleIds.map((spindleId) => ({ spindleId })),
  });
  page = await pageOnCore(core, "#/rounds");
  await until(() => screen.queryByRole("button", { name: "Measure with the gauge connected" }) !== null);
  await click("Measure with the gauge connected");
  await until(shown(round.stops[0]!.name));
});
afterEach(async () => {
  closePage();
  await core.close();
});

describe("a round in hand on Measure", () => {
  it("shows the machine, how far it is, what comes then, and the adapter to put on with what to mind", async () => {
    expect(text()).toContain("0 of 3 measured");
    expect(text()).toContain("Stop 1");
    expect(text()).toMatch(/about [\d.]+ kN expected/);
    expect(text()).toContain(`then ${round.stops[1]!.name}`);
    await until(() => /Put Adapter .+ on the gauge/.test(text()));
    expect(text()).toContain("gauge out of the spindle and unloaded");
    expect(await faults()).toEqual([]);
  });

  it("says a change of adapter at the stop that needs it, and only until something is measured there", async () => {
    const change = round.stops.findIndex((s, i) => i > 0 && s.adapterId !== round.stops[i - 1]!.adapterId);
    for (let i = 0; i < change; i += 1) {
      await type(i);
      expect(text()).not.toContain("Change the adapter");
      await press(" ");
      await until(shown(round.stops[i + 1]!.name));
    }
    await until(() => /Change the adapter: Adapter .+ off, Adapter .+ on/.test(text()));
    await type(change);
    await until(() => !text().includes("Change the adapter"));
  });

  it("puts a stop off with L and leaves one out with X, each with its reason, and shows them in the result", async () => {
    await press("l");
    await click("machine is running");
    await until(shown(round.stops[1]!.name));
    await press("x");
    fireEvent.change(screen.getByLabelText(/Reason/), { target: { value: "guard locked" } });
    await act(async () => fireEvent.submit(screen.getByRole("dialog").querySelector("form")!));
    await until(shown(round.stops[2]!.name));
    expect(text()).toContain("1 put off · 1 left out");
    await type(2);
    await press(" ");
    await until(shown(round.stops[0]!.name));
    expect(text()).toContain("put off before: machine is running");
    await type(0);
    await press(" ");
    await until(() => text().includes("The round is done: 2 of 3 measured"));
    expect(text()).toContain("guard locked");
    expect(await faults()).toEqual([]);
    await click("Close the round");
    await until(() => screen.queryByText(/The round is done/) === null);
    expect((await core.call("rounds.get", { roundId: round.roundId })).state).toBe("done");
  });

  it("keeps the reason that was written when it is not taken, and passes one stop however often it is pressed", async () => {
    await press("x");
    fireEvent.change(screen.getByLabelText(/Reason/), { target: { value: "guard locked" } });
    const submit = () => fireEvent.submit(screen.getByRole("dialog").querySelector("form")!);
    const refusal = { ok: false, error: { code: "link", message: "The program did not answer." } } as const;
    const call = vi.spyOn(page.client, "call").mockResolvedValueOnce(refusal);
    await act(async () => submit());
    expect(call).toHaveBeenCalledWith("rounds.pass", expect.objectContaining({ why: "guard locked" }));
    call.mockRestore();
    expect(screen.getByLabelText(/Reason/)).toHaveProperty("value", "guard locked");
    await act(async () => {
      submit();
      submit();
    });
    await until(shown(round.stops[1]!.name));
    expect(screen.queryByRole("dialog")).toBeNull();
    const { stops } = await core.call("rounds.get", { roundId: round.roundId });
    expect(stops.filter(({ passed }) => passed !== undefined)).toHaveLength(1);
    expect(page.toasts.getState().toasts).toHaveLength(1); // the refusal, and nothing of the second press
  });

  it("wants a reason before a stop is left out", async () => {
    await press("x");
    await act(async () => fireEvent.submit(screen.getByRole("dialog").querySelector("form")!));
    expect(screen.getByRole("dialog")).toBeTruthy();
    expect(draft().tag.spindleId).toBe(round.stops[0]!.spindleId);
  });

  it("goes to the stop whose label is scanned, with its adapter", async () => {
    await scan(round.stops[2]!.name);
    await until(shown(round.stops[2]!.name));
    expect(draft().tag.adapterId).toBe(round.stops[2]!.adapterId);
  });

  it("asks whose the values are when another label is scanned over them, and loses none by itself", async () => {
    await type(0);
    await scan(round.stops[2]!.name);
    await until(() => screen.queryByText("Whose clamping is this?") !== null);
    expect(draft()).toMatchObject({ tag: { spindleId: round.stops[0]!.spindleId } });
    await click("Cancel");
    expect(draft().typed).toBeTruthy();
    await scan(round.stops[2]!.name);
    await click(`Discard, and go to ${round.stops[2]!.name}`);
    await until(shown(round.stops[2]!.name));
    expect(draft().typed ?? undefined).toBeUndefined();
  });

  it("is put away from the list of its stops and stays open", async () => {
    await press("p");
    await click("Put the round away");
    await until(() => screen.queryByText("Stop 1") === null);
    expect((await core.call("rounds.get", { roundId: round.roundId })).state).toBe("open");
  });
});
