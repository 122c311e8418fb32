import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, faults, openPage, settle, standInBrowser } from "../../support/page.tsx";
import { workbookParts, zipped } from "../../support/workbook.ts";

async function choose(content: string | Buffer, name = "old.csv"): Promise<HTMLElement> {
  fireEvent.click(screen.getByRole("button", { name: "Import old checks" }));
  const dialog = screen.getByRole("dialog");
  const file = new File([typeof content === "string" ? content : new Uint8Array(content)], name);
  fireEvent.change(within(dialog).getByLabelText("File"), { target: { files: [file] } });
  for (let i = 0; i < 200 && dialog.querySelector("h3, .acts button[type=submit]") === null; i += 1) {
    await act(() => new Promise((done) => setTimeout(done, 10))); // the platform reads the file in its own time
  }
  return dialog;
}
const say = async (dialog: HTMLElement, label: string, value: string) => {
  fireEvent.change(within(dialog).getByLabelText(label), { target: { value } });
  await settle();
};

describe("importing old checks", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("asks for unit, order of dates and unknown spindles one after the other, then imports all rows", async () => {
    const page = await openPage("#/records");
    const known = page.fake.state.spindles[0]!.spindle.name;
    const dialog = await choose(`Spindle,Date,Force\n${known},03/04/2019,17.9\nLathe X,05/04/2019,17.1\n`);
    expect(within(dialog).queryByRole("button", { name: /^Import \d/ })).toBeNull();
    await say(dialog, "Unit of the forces", "kN");
    await say(dialog, "Dates such as 03/04/2026", "dayFirst");
    expect(within(dialog).getByText(/^Row 3, Spindle: “Lathe X” is no spindle known here/)).toBeTruthy();
    await say(dialog, "Lathe X: is", "create");
    fireEvent.submit(dialog.querySelector("form")!);
    await settle();
    expect(within(dialog).getByText("2 rows imported.")).toBeTruthy();
  });

  it("settles all unknown spindles at once where that is wanted", async () => {
    await openPage("#/records");
    const dialog = await choose("Spindle,Date,Force_kN\nLathe X,2019-04-03,17.9\nLathe Y,2019-04-03,17.1\n");
    fireEvent.click(within(dialog).getByRole("button", { name: "All the others are new spindles" }));
    await settle();
    expect(within(dialog).getByRole("button", { name: "Import 2 rows" })).toBeTruthy();
    await say(dialog, "Lathe Y: is", "leaveOut");
    expect(within(dialog).getByRole("button", { name: "Import 1 rows" })).toBeTruthy();
  });

  it("shows what becomes of several takes in a row, and lets a further column be one of them", async () => {
    const page = await openPage("#/records");
    const known = page.fake.state.spindles[0]!.spindle.name;
    const dialog = await choose(`Spindle,Date,Take 1 kN,Take 2 kN,Late kN\n${known},2019-04-03,17.90,17.80,17.70\n`);
    expect(within(dialog).getByText(/Row 2: 17\.90 · 17\.80 give 17\.85 kN\./)).toBeTruthy();
    await say(dialog, "Late kN: taken for", "take");
    expect(within(dialog).getByText(/Row 2: 17\.90 · 17\.80 · 17\.70 give 17\.80 kN\./)).toBeTruthy();
  });

  it("asks which sheet of a workbook is meant", async () => {
    const page = await openPage("#/records");
    const name = page.fake.state.spindles[0]!.spindle.name;
    const rows = [
      ["Spindle", "Date", "Force_kN"],
      [name, { date: 43_558 }, 17.9],
    ];
    const dialog = await choose(
      zipped(
        workbookParts([
          { name: "2019", rows },
          { name: "2020", rows },
        ]),
      ),
      "old.xlsx",
    );
    await say(dialog, "Sheet", "2020");
    expect(within(dialog).getByText("1 rows of the sheet “2020”.")).toBeTruthy();
    expect(within(dialog).getByRole("button", { name: "Import 1 rows" })).toBeTruthy();
  });

  it("has no fault that a checker of accessibility finds", async () => {
    await openPage("#/records");
    await choose("Spindle,Date,Force,Gauge\nLathe X,03/04/2019,17.9,G 77\n");
    expect(await faults()).toEqual([]);
  });
});
