import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, faults, openPage, type Page, settle, standInBrowser } from "../../support/page.tsx";

const inSetup = () => within(screen.getByRole("region", { name: "A copy a day" }));
const inRecords = () => within(screen.getByRole("region", { name: "Back to a copy" }));

async function stands(page: Page, over: Partial<Page["fake"]["state"]["backup"]>) {
  page.fake.state.backup = { ...page.fake.state.backup, ...over };
  await act(async () => page.fake.say("backup.changed", page.fake.state.backup));
}

describe("the daily copy in Setup", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("says that none is chosen, takes a folder with its generations, and has no faults", async () => {
    const { fake } = await openPage("#/setup", { demo: false });
    expect(inSetup().getByText("No daily copy: no folder is chosen.")).toBeTruthy();
    fireEvent.change(inSetup().getByLabelText("Folder for the daily copy"), { target: { value: " /media/stick " } });
    fireEvent.change(inSetup().getByLabelText("weeks"), { target: { value: "20" } });
    fireEvent.submit(inSetup().getByRole("button").closest("form")!);
    await settle();
    expect(fake.state.backup).toMatchObject({ folder: "/media/stick", keep: { days: 14, weeks: 20, months: 24 } });
    expect(inSetup().getByText("The first copy is being made.")).toBeTruthy();
    expect(await faults()).toEqual([]);
  });

  it("refuses generations that are no whole number in range, beside the field", async () => {
    const { fake } = await openPage("#/setup", { demo: false });
    fireEvent.change(inSetup().getByLabelText("days"), { target: { value: "0" } });
    expect(inSetup().getByText("1 to 366")).toBeTruthy();
    fireEvent.submit(inSetup().getByRole("button").closest("form")!);
    await settle();
    expect(fake.state.backup.keep.days).toBe(14);
  });

  it("keeps the last copy in sight, with what was walked, and why a try failed", async () => {
    const page = await openPage("#/setup", { demo: false });
    const lastAtMs = Date.parse("2026-11-15T15:04:00.000Z");
    await stands(page, { folder: "/media/stick", lastAtMs, verifiedEntries: 1204 });
    expect(inSetup().getByRole("status").textContent).toContain("1204 entries walked, all whole");
    await stands(page, { problem: "The folder is not there." });
    expect(inSetup().getByRole("alert").textContent).toContain("The folder is not there.");
  });

  it("calls from every screen when there is none, and when there was none for days", async () => {
    const page = await openPage("#/measure", { demo: false });
    await stands(page, { late: "noFolder" });
    expect(screen.getByText(/These records have no copy anywhere/)).toBeTruthy();
    const lastAtMs = Date.parse("2026-11-01T12:00:00.000Z");
    await stands(page, { late: "overdue", folder: "/x", lastAtMs, problem: "The disk is full." });
    expect(screen.getByText(/No copy of the records since .*2026\. The disk is full\./)).toBeTruthy();
    await stands(page, { late: undefined });
    expect(screen.queryByText(/No copy of the records/)).toBeNull();
  });
});

describe("the way back in Records", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("lists copies, compares first, warns before the swap, and leaves all as it is when one says so", async () => {
    const { fake } = await openPage("#/records", { demo: false });
    fireEvent.change(inRecords().getByLabelText("Folder with the copies"), { target: { value: "/media/stick" } });
    fireEvent.click(inRecords().getByRole("button", { name: "Show the copies" }));
    await settle();
    const [newest, ...older] = inRecords().getAllByRole("button", { name: /^Restore beside and compare: / });
    expect(older).toHaveLength(2);
    const calls: string[] = [];
    for (const name of ["restore.swap", "restore.forget"] as const) {
      const handle = fake.handlers[name];
      const noted = (input: { file: string }) => {
        calls.push(name);
        return handle(input);
      };
      Object.assign(fake.handlers, { [name]: noted });
    }
    fireEvent.click(newest!);
    await settle();
    expect(inRecords().getByText(/14 entries of today's records are not in it, 12 of them checks/)).toBeTruthy();
    expect(await faults()).toEqual([]);
    fireEvent.click(inRecords().getByRole("button", { name: "Leave everything as it is" }));
    await settle();
    expect(calls).toEqual(["restore.forget"]);
    expect(inRecords().queryByText(/The copy is whole/)).toBeNull();
    fireEvent.click(newest!);
    await settle();
    fireEvent.click(inRecords().getByRole("button", { name: "Put it in place …" }));
    const dialog = screen.getByRole("dialog");
    expect(dialog.textContent).toContain("Look at each spindle's last check before it is used");
    fireEvent.click(within(dialog).getByRole("button", { name: "Cancel" }));
    expect(calls).toEqual(["restore.forget"]);
    fireEvent.click(inRecords().getByRole("button", { name: "Put it in place …" }));
    fireEvent.submit(screen.getByRole("dialog").querySelector("form")!);
    await settle();
    expect(calls).toEqual(["restore.forget", "restore.swap"]);
  });

  it("says where the file lies that was in use before", async () => {
    const page = await openPage("#/records", { demo: false });
    await act(async () => {
      page.core.program.setState(({ program }) => ({
        program: { ...program!, keptFile: "/d/before-restore-1.sqlite" },
      }));
    });
    expect(inRecords().getByText(/in use before lies at \/d\/before-restore-1\.sqlite/)).toBeTruthy();
  });
});
