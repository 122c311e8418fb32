import { act, fireEvent, screen } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { changeSeries } from "../../../../renderer/screens/measure/acts.ts";
import { closePage, openPage, press, scan, settle, standInBrowser } from "../../../support/page.tsx";

async function goTo(hash: string) {
  await act(async () => {
    location.hash = hash;
    await new Promise((done) => setTimeout(done)); // the browser tells of it in a turn of its own
  });
  await settle();
}
const content = () => document.getElementById("content");

describe("a place that is gone to", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("begins at its top, and the keyboard with it", async () => {
    await openPage("#/spindles");
    const tops: unknown[] = [];
    const still = window.scrollTo;
    window.scrollTo = ((to: unknown) => tops.push(to)) as typeof window.scrollTo;
    const link = screen.getByRole("link", { name: "Gauges" });
    link.focus();
    await goTo("#/gauges");
    window.scrollTo = still;
    expect(tops).toEqual([{ top: 0 }]);
    expect(document.activeElement).toBe(content());
  });

  it("leaves the focus alone where the page was opened, and on a thing found by its label", async () => {
    const { fake } = await openPage("#/spindles");
    expect(document.activeElement).toBe(document.body);
    const { gauge } = fake.state.gauges[0]!;
    await goTo(`#/gauges?find=${gauge.gaugeId}`);
    expect(document.activeElement?.getAttribute("data-thing")).toBe(gauge.gaugeId);
  });
});

describe("the demo's banner", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("leads into the tour from every page, is silent while it runs, and goes on where it was left", async () => {
    await openPage("#/rounds", { demo: true });
    fireEvent.click(screen.getByRole("button", { name: "Take the tour" }));
    await settle();
    expect(await screen.findByRole("region", { name: "Tour of the demo" })).toBeTruthy();
    expect(screen.queryByRole("button", { name: /Take the tour|Go on at step/ })).toBeNull();
    fireEvent.click(screen.getByRole("button", { name: "Go on later" }));
    await settle();
    expect(screen.getByRole("button", { name: "Go on at step 1" })).toBeTruthy();
  });

  it("offers no tour where there is no demo", async () => {
    await openPage("#/rounds", { demo: false });
    expect(screen.queryByRole("button", { name: "Take the tour" })).toBeNull();
  });
});

describe("the next step on Measure", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("asks for spindle, then gauge, then zero: one at a time", async () => {
    const { core } = await openPage();
    const step = () => document.querySelector(".step")?.textContent;
    expect(step()).toMatch(/Connect a gauge/);
    await act(async () => {
      await core.client.call("link.open", { source: { kind: "simulated" } });
    });
    await act(async () => {
      await changeSeries(core, "series.tag", { gaugeId: null });
    });
    await settle();
    expect(step()).toMatch(/Which spindle/);
    await scan("Mill 3");
    expect(step()).toMatch(/Which gauge is it/);
    await press("g");
    fireEvent.submit(screen.getByRole("combobox").closest("form")!);
    await settle();
    expect(step()).toMatch(/Zero the gauge/);
  });
});
