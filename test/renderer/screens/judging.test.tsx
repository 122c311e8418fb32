import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, faults, openPage, press, scan, settle, standInBrowser } from "../../support/page.tsx";

async function clamped() {
  const page = await openPage();
  await act(async () => {
    await page.core.client.call("link.open", { source: { kind: "simulated" } });
  });
  await scan("Mill 3");
  await act(async () => {
    page.fake.state.gauge.clamp(17_950);
    page.fake.run(3);
    page.fake.state.gauge.release();
    page.fake.run(2);
  });
  await settle();
  return page;
}
const hatched = () => document.querySelectorAll(".column rect[fill^='url']").length;

describe("how it is judged", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("shows where the uncertainty of the forming verdict comes from, behind one act, the greatest named", async () => {
    const page = await clamped();
    const { budget } = page.fake.state.series.draft.forming!;
    fireEvent.click(screen.getByRole("button", { name: "How sure?" }));
    const dialog = screen.getByRole("dialog");
    const rows = within(within(dialog).getByRole("table")).getAllByRole("row");
    expect(rows).toHaveLength(budget.contributions.length + 1);
    expect(within(dialog).getByText(/Most of it: /).textContent).toContain("Most of it: adapter.");
    expect(await faults()).toEqual([]);
  });

  it("files nothing with the space bar while the budget is looked at", async () => {
    const page = await clamped();
    const before = page.fake.state.checks.length;
    fireEvent.click(screen.getByRole("button", { name: "How sure?" }));
    await press(" ");
    expect(page.fake.state.checks).toHaveLength(before);
  });

  it("draws the guard bands of the rule about both limits once there is an uncertainty", async () => {
    const page = await openPage();
    await act(async () => {
      await page.core.client.call("link.open", { source: { kind: "simulated" } });
    });
    await scan("Mill 3");
    expect(hatched()).toBe(0);
    closePage();
    await clamped();
    expect(hatched()).toBe(2);
  });

  it("says in one sentence what the chosen rule does, for the works and for a spindle", async () => {
    await openPage("#/setup");
    fireEvent.change(screen.getByLabelText("Decision rule"), { target: { value: "simple" } });
    expect(screen.getByText(/^The value itself decides/)).toBeTruthy();
    fireEvent.change(screen.getByLabelText("Decision rule"), { target: { value: "iso14253" } });
    expect(screen.getByText(/^Good and not good must both be proven/)).toBeTruthy();
  });
});
