import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import { closePage, faults, openPage, settle, standInBrowser } from "../../support/page.tsx";

describe("Setup, Gauges, Records and the first start", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("shows raw lines beside what was read of them, and why one was not", async () => {
    const page = await openPage("#/setup");
    await act(async () => {
      await page.core.client.call("link.open", { source: { kind: "simulated" } });
    });
    fireEvent.click(screen.getByLabelText("Show what the gauge sends"));
    await settle();
    const lines = screen.getByRole("region", { name: "as sent" });
    expect(lines.textContent).toContain("17.92 kN");
    expect(lines.textContent).toContain("not read: cut short or garbled");
  });

  it("asks for the unit it cannot know, and takes the pattern only once it is answered", async () => {
    const page = await openPage("#/setup");
    await act(async () => {
      await page.core.client.call("link.open", { source: { kind: "simulated" } });
    });
    fireEvent.click(screen.getByRole("button", { name: "Learn from the stream" }));
    await settle();
    expect(screen.getByLabelText("Which unit do the numbers have?")).toBeTruthy();
    fireEvent.change(screen.getByLabelText("Name of the pattern"), { target: { value: "bench gauge" } });
    expect(screen.getByRole("button", { name: "Use this pattern" }).hasAttribute("disabled")).toBe(true);
  });

  it("saves the works, and names the field that cannot be right", async () => {
    const page = await openPage("#/setup");
    fireEvent.change(screen.getByLabelText("Act from a fall of, %"), { target: { value: "5" } });
    const form = screen.getByRole("region", { name: "The works and how it judges" }).querySelector("form")!;
    fireEvent.submit(form);
    expect(screen.getByText("To act comes after to watch.")).toBeTruthy();
    fireEvent.change(screen.getByLabelText("Act from a fall of, %"), { target: { value: "17,5" } });
    fireEvent.submit(form);
    await settle();
    expect(page.fake.state.works.actDrop).toBeCloseTo(0.175, 12);
  });

  it("adds an operator", async () => {
    const page = await openPage("#/setup");
    fireEvent.click(screen.getByRole("button", { name: "Add an operator" }));
    const dialog = screen.getByRole("dialog");
    fireEvent.change(within(dialog).getByLabelText("Name"), { target: { value: "Operator 3" } });
    fireEvent.submit(dialog.querySelector("form")!);
    await settle();
    expect(page.fake.state.operators.map(({ name }) => name)).toContain("Operator 3");
  });

  it("counts a changed scale of an adapter as a new calibration", async () => {
    const page = await openPage("#/gauges");
    fireEvent.click(screen.getByRole("button", { name: "Edit: A63-2" }));
    const dialog = screen.getByRole("dialog");
    fireEvent.change(within(dialog).getByLabelText("Scale"), { target: { value: "1,0035" } });
    fireEvent.submit(dialog.querySelector("form")!);
    await settle();
    const saved = page.fake.state.adapters.find(({ adapter }) => adapter.name === "A63-2")!.adapter;
    expect(saved).toMatchObject({ scale: 1.0035, version: 2 });
  });

  it("says which gauge is past due before the table", async () => {
    await openPage("#/gauges");
    expect(screen.getByText(/Past due: Gauge 2\./)).toBeTruthy();
  });

  it("verifies the records and says how many entries are whole", async () => {
    await openPage("#/records");
    fireEvent.click(screen.getByRole("button", { name: "Verify the records" }));
    await settle();
    expect(screen.getByText("1204 entries verified: all whole.")).toBeTruthy();
  });

  it("leads by the hand where nothing is known yet, and opens the demo by one act", async () => {
    const page = await openPage("#/measure", { empty: true });
    expect(screen.getByText("Welcome to Holdfast")).toBeTruthy();
    expect(await faults()).toEqual([]);
    fireEvent.click(screen.getByRole("button", { name: "Open the demo" }));
    await settle();
    expect(page.fake.state.program.demo).toBe(true);
    expect(screen.getByText(/Demo works: everything here is invented/)).toBeTruthy();
  });

  it("keeps the other screens when one fails, and says what is safe", async () => {
    const page = await openPage("#/measure");
    const said = vi.spyOn(console, "error").mockImplementation(() => {});
    await act(async () => {
      // A draft no screen can show.
      page.core.draft.setState({ draft: { seriesId: "x" } as never });
    });
    expect(screen.getByText("This screen has failed")).toBeTruthy();
    expect(said).toHaveBeenCalled();
    said.mockRestore();
    await act(async () => {
      location.hash = "#/gauges";
      dispatchEvent(new HashChangeEvent("hashchange"));
    });
    await settle();
    expect(screen.getByText("Gauges and adapters")).toBeTruthy();
  });

  it("exports everything into a folder, and asks for one first", async () => {
    const { fake } = await openPage("#/records");
    fireEvent.click(screen.getByRole("button", { name: "Export everything" }));
    expect(screen.getByText("A folder is needed.")).toBeTruthy();
    fireEvent.change(screen.getByLabelText(/Folder for the archive/), { target: { value: "/media/stick" } });
    fireEvent.click(screen.getByRole("button", { name: "Export everything" }));
    expect(await screen.findByText(/1204 entries written to \/media\/stick\/holdfast\.zip/)).toBeTruthy();
    expect(fake.state.jobs.at(-1)?.what).toBe("export");
  });

  it("takes an archive over and says what was new", async () => {
    await openPage("#/records");
    fireEvent.change(screen.getByLabelText(/Archive file/), { target: { value: "/media/stick/holdfast.zip" } });
    fireEvent.click(screen.getByRole("button", { name: "Take it over" }));
    expect(await screen.findByText("900 of 1204 entries were new and stand here now.")).toBeTruthy();
  });

  it("validates the program and shows the hash of its core", async () => {
    await openPage("#/records");
    fireEvent.click(screen.getByRole("button", { name: "Validate the program" }));
    expect(await screen.findByText("354 published cases, all passed.")).toBeTruthy();
    expect(screen.getByText("ab".repeat(32))).toBeTruthy();
  });

  it.each(["#/setup", "#/gauges", "#/records"])("has nothing that axe finds wrong in %s", async (hash) => {
    await openPage(hash);
    expect(await faults()).toEqual([]);
  });
});
