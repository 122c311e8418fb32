import { fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { astmE74Table } from "../../../../app/proof/tables/astmE74Table.ts";
import { iso376Table } from "../../../../app/proof/tables/iso376Table.ts";
import { tableDraftOf, tableOf } from "../../../../renderer/screens/proof/tables/tableDraft.ts";
import { closePage, faults, openPage, type Page, settle, standInBrowser } from "../../../support/page.tsx";

const iso = { table: "iso376", value: iso376Table, own: false } as const;
const e74 = { table: "astmE74", value: astmE74Table, own: false } as const;
const withFigure = (name: string, text: string) => {
  const draft = tableDraftOf(iso);
  return tableOf("iso376", { ...draft, figures: { ...draft.figures, [name]: text } });
};

describe("a table of limits in its fields", () => {
  it("comes back as it was, to the figure", () => {
    expect(tableOf("iso376", tableDraftOf(iso))).toEqual({ value: iso376Table, faults: new Map() });
    expect(tableOf("astmE74", tableDraftOf(e74))).toEqual({ value: astmE74Table, faults: new Map() });
  });

  it.each([
    ["b1", "0", "noNumber"],
    ["v3", "half", "noNumber"],
    ["fc2", "0.01", "narrower"],
    ["smallestForceShare", "20", "upToOne"],
    ["fewestSteps", "7.5", "wholeNumber"],
  ])("says at %s that %s cannot be", (field, text, fault) => {
    expect([...withFigure(field, text).faults]).toEqual([[field, fault]]);
  });

  it("knows what the choice of a degree can be", () => {
    const draft = tableDraftOf(e74);
    const figures = { ...draft.figures, highestDegree: "13", degreeProbability: "1" };
    expect([...tableOf("astmE74", { ...draft, standard: " ", figures }).faults]).toEqual([
      ["standard", "editionNeeded"],
      ["highestDegree", "atMostTwelve"],
      ["degreeProbability", "belowOne"],
    ]);
  });
});

describe("the limits of the standards", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  const states = () =>
    [...screen.getByRole("region", { name: "Limits of the standards" }).querySelectorAll("tbody tr")].map(
      (row) => row.querySelectorAll("td")[1]!.textContent,
    );
  async function open(): Promise<{ page: Page; dialog: ReturnType<typeof within> }> {
    const page = await openPage("#/gauges");
    await import("../../../../renderer/screens/proof/tables/TableForm.tsx");
    await settle();
    return { page, dialog: await enter() };
  }
  async function enter() {
    fireEvent.click(screen.getByRole("button", { name: /^Enter the figures of Classes after ISO 376/ }));
    await settle();
    return within(screen.getByRole("dialog"));
  }
  const type = (field: HTMLElement, value: string) => fireEvent.change(field, { target: { value } });
  const save = async (dialog: ReturnType<typeof within>) => {
    fireEvent.click(dialog.getByRole("button", { name: "Save" }));
    await settle();
  };

  it("are from memory until a laboratory enters its edition and has held them against it", async () => {
    const { page, dialog } = await open();
    expect(states()).toEqual(["from memory", "from memory"]);
    expect(await faults()).toEqual([]);
    type(dialog.getByLabelText("Edition of the standard"), "ISO 376:2011, our copy");
    type(within(dialog.getByRole("group", { name: "Class 2" })).getByLabelText(/^b, turned/), "0,42");
    await save(dialog);
    expect(page.fake.state.proofs.tables.iso376).toMatchObject({
      standard: "ISO 376:2011, our copy",
      fromMemory: true,
      classes: { 3: { class: "2", b: 0.42 } },
    });
    expect(states()).toEqual(["entered, not yet held against the edition", "from memory"]);
    const again = await enter();
    fireEvent.click(again.getByLabelText("Every figure here was held against this edition."));
    await save(again);
    expect(page.fake.state.proofs.tables.iso376?.fromMemory).toBe(false);
    expect(states()).toEqual(["held against your edition", "from memory"]);
  });

  it("are asked for anew when the edition is another, and the shipped ones can be taken again", async () => {
    const { page, dialog } = await open();
    const held = dialog.getByLabelText("Every figure here was held against this edition.") as HTMLInputElement; // a tick box
    fireEvent.click(held);
    type(dialog.getByLabelText("Edition of the standard"), "ISO 376, a later one");
    expect(held.checked).toBe(false);
    fireEvent.click(held);
    await save(dialog);
    const again = await enter();
    fireEvent.click(again.getByRole("button", { name: "Take the shipped figures again" }));
    await settle();
    expect(page.fake.state.proofs.tables.iso376).toBeUndefined();
    expect(states()).toEqual(["from memory", "from memory"]);
  });

  it("say at the field what cannot be, and keep nothing then", async () => {
    const { page, dialog } = await open();
    type(within(dialog.getByRole("group", { name: "Class 1" })).getByLabelText(/^fc, curve/), "0.01");
    await save(dialog);
    expect(dialog.getByText("Narrower than the class before it.")).toBeTruthy();
    expect(page.fake.state.proofs.tables.iso376).toBeUndefined();
  });
});
