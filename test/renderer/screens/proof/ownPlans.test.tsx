import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import type { Reference } from "../../../../app/ledger/proof.ts";
import "../../../../renderer/screens/proof/ProofPlaces.tsx";
import { idOf } from "../../../support/aCheck.ts";
import { closePage, faults, openPage, type Page, settle, standInBrowser } from "../../../support/page.tsx";

const reference: Reference = {
  referenceId: idOf(20),
  name: "Certificate 7",
  kind: "typed",
  typed: { relative: 2e-4, standardN: 0 },
  state: "inUse",
};

async function atPlan(): Promise<Page> {
  const page = await openPage("#/records");
  page.fake.state.proofs.references = [reference];
  await openAgain(page);
  return page;
}
async function openAgain(page: Page): Promise<void> {
  for (const hash of ["#/records", `#/gauges/${page.fake.state.gauges[0]!.gauge.gaugeId}/prove`])
    await act(async () => {
      location.hash = hash;
      dispatchEvent(new HashChangeEvent("hashchange"));
    });
  await settle();
}
const click = async (name: string | RegExp) => {
  fireEvent.click(screen.getByRole("button", { name }));
  await settle();
};
const type = (label: string, value: string) => fireEvent.change(screen.getByLabelText(label), { target: { value } });
const choose = async (label: RegExp) => {
  const select = screen.getByLabelText<HTMLSelectElement>("Plan");
  const option = [...select.options].find((one) => label.test(one.text))!;
  fireEvent.change(select, { target: { value: option.value } });
  await settle();
};
const name = async (text: string) => {
  const dialog = within(screen.getByRole("dialog"));
  fireEvent.change(dialog.getByLabelText("Name"), { target: { value: text } });
  fireEvent.click(dialog.getByRole("button", { name: "Save" }));
  await settle();
};
const plans = (page: Page) => page.fake.state.proofs.plans;
const begun = async (page: Page) => {
  await click("To the cautions");
  return page.fake.state.proofs.draft!.planned.plan;
};

describe("plans of one's own", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("are kept under a name, chosen in a later proof, and begun as they were kept", async () => {
    const page = await atPlan();
    expect(screen.queryByLabelText("Plan")).toBeNull();
    type("Load 5", "28");
    await click("Keep this as a plan of our own");
    await name("Toolroom, yearly");
    expect(plans(page)).toMatchObject([{ name: "Toolroom, yearly", method: "working", state: "inUse" }]);
    expect(plans(page)[0]!.loadsN.at(-1)).toBe(28_000);
    await openAgain(page);
    expect(screen.getByLabelText<HTMLInputElement>("Load 5").value).toBe("30");
    await choose(/^Toolroom, yearly · Working check$/);
    expect(screen.getByLabelText<HTMLInputElement>("Load 5").value).toBe("28");
    expect(await faults()).toEqual([]);
    const { planId: _id, state: _state, ...kept } = plans(page)[0]!;
    expect(await begun(page)).toEqual(kept);
  });

  it("changed in the form are not begun under their name, until the change is kept too", async () => {
    const page = await atPlan();
    await click("Keep this as a plan of our own");
    await name("Short");
    type("Load 1", "4");
    expect(screen.getByText(/it will not be filed as “Short”/)).toBeTruthy();
    await click("Change “Short”");
    await name("Short, from 4 kN");
    expect(plans(page)).toHaveLength(1);
    expect(plans(page)[0]).toMatchObject({ name: "Short, from 4 kN" });
    expect(plans(page)[0]!.loadsN[0]).toBe(4_000);
    type("Load 1", "5");
    expect(await begun(page)).toMatchObject({ name: "Working check", loadsN: [5_000, 12_000, 18_000, 24_000, 30_000] });
  });

  it("are retired, no longer offered, and taken back", async () => {
    const page = await atPlan();
    await click("Keep this as a plan of our own");
    await name("Short");
    await click("Retire “Short”");
    expect(plans(page)[0]!.state).toBe("retired");
    expect(screen.queryByLabelText("Plan")).toBeNull();
    await click("Use “Short” again");
    expect(plans(page)[0]!.state).toBe("inUse");
    expect(screen.getByLabelText<HTMLSelectElement>("Plan").selectedOptions[0]!.text).toContain("Short");
  });

  it("need a name that no other has, and figures that can be", async () => {
    const page = await atPlan();
    await click("Keep this as a plan of our own");
    await name(" ");
    expect(screen.getByText("A name is needed.")).toBeTruthy();
    await name("Short");
    await click("Keep this as a plan of our own");
    await name("short");
    expect(screen.getByText(/a plan of this name already/)).toBeTruthy();
    fireEvent.click(within(screen.getByRole("dialog")).getByRole("button", { name: "Cancel" }));
    type("Load 1", "31");
    await click("Keep this as a plan of our own");
    expect(screen.getByText(/holds a figure that cannot be/)).toBeTruthy();
    expect(plans(page)).toHaveLength(1);
  });
});
