import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it, vi } from "vitest";
import * as saving from "../../../renderer/screens/rounds/saveFile.ts";
import { closePage, faults, openPage, settle, standInBrowser } from "../../support/page.tsx";

describe("damaged records", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("lead from every screen to where what stands is saved, and what is left out is named", async () => {
    const page = await openPage("#/measure", { demo: false });
    page.fake.state.program = { ...page.fake.state.program, readOnly: "The records are damaged.", damaged: true };
    await act(async () => page.fake.say("program.changed", page.fake.state.program));
    const way = screen.getByRole("link", { name: "Save what stands, or go back to a copy" });
    expect(way.getAttribute("href")).toBe("#/records");
    location.hash = "#/records";
    await act(async () => void dispatchEvent(new HashChangeEvent("hashchange")));
    const section = within(screen.getByRole("region", { name: "Everything in open formats" }));
    expect(section.getByText(/What can be read is written all the same/)).toBeTruthy();
    fireEvent.change(section.getByLabelText("Folder for the archive"), { target: { value: "/media/stick" } });
    const handle = page.fake.handlers["records.export"];
    Object.assign(page.fake.handlers, {
      "records.export": (input: Parameters<typeof handle>[0]) => {
        const result = {
          file: `${input.folder}/saved.zip`,
          bytes: 1,
          entries: 1_190,
          waveforms: 0,
          heads: [],
          leftOut: 14,
        };
        const job = { jobId: "job-saved", what: "export", done: 1, total: 1, message: undefined };
        page.fake.say("job.finished", { ...job, state: "finished", result });
        return { jobId: "job-saved" };
      },
    });
    fireEvent.click(section.getByRole("button", { name: "Export everything" }));
    await settle();
    expect(section.getByText(/14 places are damaged or gone/)).toBeTruthy();
    expect(await faults()).toEqual([]);
  });
});

describe("what is kept, and what leaves the house", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("is said in Setup: where each thing lies, how large, how long", async () => {
    await openPage("#/setup", { demo: false });
    const section = within(screen.getByRole("region", { name: "Where the data lies" }));
    for (const text of ["/home/you/Holdfast/holdfast.sqlite", "/home/you/Holdfast/spool", "3.4 MB", "not there yet"])
      expect(section.getByText(text)).toBeTruthy();
    expect(section.getByText(/kept seven days/)).toBeTruthy();
  });

  it("is shown word for word before the archive for support can be saved", async () => {
    await openPage("#/setup", { demo: false });
    const save = vi.spyOn(saving, "saveFile").mockImplementation(() => {});
    const section = within(screen.getByRole("region", { name: "Help from outside" }));
    expect(section.queryByRole("button", { name: "Save the archive" })).toBeNull();
    fireEvent.click(section.getByRole("button", { name: "Collect for support" }));
    await settle();
    expect(section.getByText(/Holdfast 0\.1\.0, loopback/)).toBeTruthy();
    expect(section.getByText(/link went silent/)).toBeTruthy();
    expect(await faults()).toEqual([]);
    fireEvent.click(section.getByRole("button", { name: "Save the archive" }));
    expect(save).toHaveBeenCalledWith(expect.objectContaining({ fileName: "holdfast-support.zip" }));
    save.mockRestore();
  });

  it("hands out one person's entries into a folder", async () => {
    await openPage("#/records", { demo: false });
    const section = within(screen.getByRole("region", { name: "What is filed of one person" }));
    fireEvent.click(section.getByRole("button", { name: "Hand out the entries" }));
    expect(section.getByText("A folder is needed.")).toBeTruthy();
    fireEvent.change(section.getByLabelText("Whose entries"), {
      target: { value: section.getByText<HTMLOptionElement>("Operator 2").value },
    });
    fireEvent.change(section.getByLabelText("Folder for the person's archive"), { target: { value: "/media/stick" } });
    fireEvent.click(section.getByRole("button", { name: "Hand out the entries" }));
    await settle();
    expect(section.getByText("31 entries written to /media/stick/holdfast-person-0001.zip")).toBeTruthy();
    expect(await faults()).toEqual([]);
  });
});
