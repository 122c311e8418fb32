import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, faults, openPage, settle, standInBrowser } from "../../support/page.tsx";

async function choose(text: string): Promise<HTMLElement> {
  fireEvent.click(screen.getByRole("button", { name: "Import a list" }));
  const dialog = screen.getByRole("dialog");
  const file = new File([text], "list.csv", { type: "text/csv" });
  fireEvent.change(within(dialog).getByLabelText("File"), { target: { files: [file] } });
  for (let i = 0; i < 100 && within(dialog).queryByText(/between the cells/) === null; i += 1) {
    await act(() => new Promise((done) => setTimeout(done, 10))); // the platform reads the file in its own time
  }
  expect(within(dialog).getByText(/between the cells/)).toBeTruthy();
  return dialog;
}

describe("importing a list", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("shows what each column is taken for, and imports the rows once nothing stands against it", async () => {
    const page = await openPage("#/spindles");
    const before = page.fake.state.spindles.length;
    const dialog = await choose("Spindel;Kegel;Mindestkraft kN\nFräse 77;HSK-A63;14,4\nFräse 78;HSK-A63;15\n");
    expect(within(dialog).getByText("2 rows, a semicolon between the cells, UTF-8.")).toBeTruthy();
    expect(within(dialog).getByLabelText<HTMLSelectElement>("Mindestkraft kN: taken for").value).toBe("minimum");
    fireEvent.submit(dialog.querySelector("form")!);
    await settle();
    expect(within(dialog).getByText("2 rows imported.")).toBeTruthy();
    expect(page.fake.state.spindles.slice(before).map((row) => row.spindle.name)).toEqual(["Fräse 77", "Fräse 78"]);
  });

  it("names the row and column of each problem, and offers no import before they are settled", async () => {
    const page = await openPage("#/spindles");
    const before = page.fake.state.spindles.length;
    const dialog = await choose("name,minimum_kN\nMill 77,14 Nm\nMill 78,-3\n");
    expect(within(dialog).getByText(/^Row 2, minimum_kN: “14 Nm” is a torque/)).toBeTruthy();
    expect(within(dialog).getByText(/^Row 3, minimum_kN: “minimum” is outside/)).toBeTruthy();
    expect(within(dialog).queryByRole("button", { name: /^Import \d/ })).toBeNull();
    fireEvent.submit(dialog.querySelector("form")!);
    await settle();
    expect(page.fake.state.spindles).toHaveLength(before);
  });

  it("asks for the unit where the head names none, and goes on when it is said", async () => {
    await openPage("#/spindles");
    const dialog = await choose("name,minimum\nMill 77,14.4\n");
    fireEvent.change(within(dialog).getByLabelText("Unit of the forces"), { target: { value: "kN" } });
    await settle();
    expect(within(dialog).getByRole("button", { name: "Import 1 rows" })).toBeTruthy();
  });

  it("lets the user say what a column is", async () => {
    await openPage("#/spindles");
    const dialog = await choose("name,whatever\nMill 77,Hall C\n");
    fireEvent.change(within(dialog).getByLabelText("whatever: taken for"), { target: { value: "area" } });
    await settle();
    expect(within(dialog).getByLabelText<HTMLSelectElement>("whatever: taken for").value).toBe("area");
  });

  it("passes over known names when told to", async () => {
    const page = await openPage("#/spindles");
    const known = page.fake.state.spindles[0]!.spindle.name;
    const dialog = await choose(`name\n${known}\nMill 78\n`);
    fireEvent.click(within(dialog).getByLabelText(/^Pass over rows/));
    await settle();
    expect(within(dialog).getByText(/1 rows are passed over\./)).toBeTruthy();
    expect(within(dialog).getByRole("button", { name: "Import 1 rows" })).toBeTruthy();
  });

  it("has no fault that a checker of accessibility finds", async () => {
    await openPage("#/spindles");
    await choose("name,minimum\nMill 77,14.4\n");
    expect(await faults()).toEqual([]);
  });
});

describe("today's word on everything filed", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("counts by filed and today's verdict, and leads to the changed checks", async () => {
    const page = await openPage("#/records");
    fireEvent.click(screen.getByRole("button", { name: "Go through all checks" }));
    await settle();
    const [check] = page.fake.state.checks;
    expect(screen.getByText("1 of 1 checks would be judged otherwise today.")).toBeTruthy();
    const link = within(screen.getByRole("table", { name: "The gravest first" })).getByRole("link");
    expect(link.getAttribute("href")).toContain(check!.checkId);
  });
});
