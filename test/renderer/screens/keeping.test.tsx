import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { type CoreInTemp, coreInTemp } from "../../support/coreInTemp.ts";
import { closePage, faults, standInBrowser } from "../../support/page.tsx";
import { pageOnCore } from "../../support/pageOnCore.tsx";
import { roundWorks } from "../../support/roundWorks.ts";

const clock = { ms: 0 };
let core: CoreInTemp;
let works: Awaited<ReturnType<typeof roundWorks>>;

const until = async (holds: () => boolean | Promise<boolean>) => {
  for (let i = 0; i < 200; i += 1) {
    if (await holds()) return;
    await act(() => new Promise((done) => setTimeout(done, 20)));
  }
  expect.fail(`it did not come to that in four seconds: ${document.body.textContent}`);
};
const click = (name: RegExp | string) => act(async () => fireEvent.click(screen.getByRole("button", { name })));
const isReady = (name: string) => screen.queryByRole<HTMLButtonElement>("button", { name })?.disabled === false;
const fill = (label: RegExp | string, value: string) =>
  act(async () => fireEvent.change(screen.getByLabelText(label), { target: { value } }));
const dockFile = (text: string) =>
  act(async () => {
    const file = Object.assign(new File([text], "day.csv"), { text: async () => text });
    fireEvent.change(screen.getByLabelText("File with readings"), { target: { files: [file] } });
  });

beforeAll(standInBrowser);
beforeEach(async () => {
  clock.ms = Date.parse("2026-03-02T09:00:00Z");
  core = await coreInTemp({ now: () => clock.ms });
  works = await roundWorks(core, [10, 19, 25]);
  clock.ms += 100 * 86_400_000; // another day: nothing of a round of today is measured yet
});
afterEach(async () => {
  closePage();
  await core.close();
});

describe("the works calendar in Setup", () => {
  it("keeps working days and closures, and due dates follow", async () => {
    await pageOnCore(core, "#/setup");
    await until(() => screen.queryByRole("heading", { name: "Works calendar" }) !== null);
    const section = screen.getByRole("heading", { name: "Works calendar" }).closest("section")!;
    fireEvent.click(within(section).getByLabelText("Saturday"));
    await fill("Closed from", "2027-01-11");
    await fill("to", "2027-01-04");
    await click("Add closed days");
    expect(within(section).getByText(/a last one not before it/)).toBeTruthy();
    await fill("Closed from", "2026-12-24");
    await fill("to", "2027-01-03");
    await click("Add closed days");
    expect(await faults()).toEqual([]);
    await act(async () => fireEvent.click(within(section).getByRole("button", { name: "Save" })));
    await until(() => within(section).queryByText(/Kept. Due dates follow/) !== null);
    expect(await core.call("rounds.getCalendar")).toEqual({
      weekdays: [1, 2, 3, 4, 5, 6],
      closed: [{ from: "2026-12-24", to: "2027-01-03" }],
    });
    await act(async () => {
      location.hash = "#/rounds";
    });
    await until(() => document.body.textContent!.includes("Friday, and Saturday."));
    expect(document.body.textContent).toContain("1 closure is kept.");
  });

  it("takes no day that does not exist, and says so at its field", async () => {
    await pageOnCore(core, "#/setup");
    await until(() => screen.queryByRole("heading", { name: "Works calendar" }) !== null);
    const section = screen.getByRole("heading", { name: "Works calendar" }).closest("section")!;
    const listed = () => within(section).queryAllByRole("listitem").length;
    const before = listed();
    await fill("Closed from", "2027-02-31");
    fireEvent.blur(within(section).getByLabelText("Closed from"));
    await click("Add closed days");
    expect(listed()).toBe(before);
    expect(section.textContent).toMatch(/This is no day of the calendar/);
    await fill("Closed from", "2027-02-28");
    await click("Add closed days");
    expect(listed()).toBe(before + 1);
  });

  it("cannot be saved without a single working day", async () => {
    await pageOnCore(core, "#/setup");
    await until(() => screen.queryByRole("heading", { name: "Works calendar" }) !== null);
    const section = screen.getByRole("heading", { name: "Works calendar" }).closest("section")!;
    for (const day of ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"])
      fireEvent.click(within(section).getByLabelText(day));
    expect(within(section).getByText("The works must be open on some day.")).toBeTruthy();
    expect((within(section).getByRole("button", { name: "Save" }) as HTMLButtonElement).disabled).toBe(true);
  });
});

describe("spindles of a round by hand", () => {
  it("are added and taken out while it is open; those that stay keep their numbers", async () => {
    const [a, b, c] = works.spindleIds as [string, string, string];
    const { today } = await core.call("rounds.due");
    const made = { name: "Halls", on: today, made: "byHand" as const };
    const round = await core.call("rounds.save", { ...made, stops: [{ spindleId: a }, { spindleId: c }] });
    const before = new Map(round.stops.map((s) => [s.spindleId, s.location]));
    await pageOnCore(core, "#/rounds");
    await until(() => screen.queryByRole("button", { name: "Add a spindle" }) !== null);
    await click("Add a spindle");
    const choices = within(screen.getByRole("dialog")).getAllByRole("option");
    expect(choices.map((one) => one.querySelector("b")!.textContent)).toEqual(["Mill 2"]);
    fireEvent.click(choices[0]!);
    const stops = async () => (await core.call("rounds.get", { roundId: round.roundId })).stops;
    await until(async () => (await stops()).length === 3);
    const now = await stops();
    expect(new Set(now.map((s) => s.location)).size).toBe(3);
    for (const [spindleId, location] of before)
      expect(now.find((s) => s.spindleId === spindleId)!.location).toBe(location);
    expect(now.some((s) => s.spindleId === b)).toBe(true);
    await until(() => screen.queryByRole("button", { name: "Take Mill 2 out" }) !== null); // the page has heard of it
    await click("Take Mill 1 out");
    await until(async () => (await stops()).length === 2);
    expect((await stops()).map((s) => s.spindleId)).not.toContain(a);
  });
});

describe("ways of reading a memory", () => {
  const day = ["Place;Reading;Taken", "1;10.02;01/02/2026", "2;19.05;01/02/2026", "3;25.01;01/02/2026", ""].join("\n");

  it("are asked for what the file cannot tell, kept under a name, and chosen the next time without a question", async () => {
    await pageOnCore(core, "#/dock");
    await until(() => screen.queryByLabelText("File with readings") !== null);
    await dockFile(day);
    await until(() => screen.queryByRole("button", { name: "day, month, year" }) !== null);
    await click("day, month, year");
    await until(() => screen.queryByRole("button", { name: "day, month, year" }) === null && isReady("kN"));
    await click("kN");
    await until(() => screen.queryByLabelText("Name, such as the gauge's") !== null);
    await fill("Name, such as the gauge's", "Gauge 1");
    await click("Keep this way of reading");
    await until(() => screen.queryByText("Kept as “Gauge 1”.") !== null);
    expect(await faults()).toEqual([]);
    const kept = await core.call("formats.list");
    expect(kept.map((f) => f.name)).toEqual(["Gauge 1"]);
    await until(() => screen.queryByLabelText("How it is read") !== null);
    await fill("How it is read", kept[0]!.formatId);
    await dockFile(day);
    await until(() => screen.queryByText("How it was read, column by column") === null);
    expect(screen.queryAllByRole("button", { name: "day, month, year" })).toEqual([]);
    await until(() => document.body.textContent!.includes("3 new readings"));
  });

  it("are set right column by column", async () => {
    await pageOnCore(core, "#/dock");
    await until(() => screen.queryByLabelText("File with readings") !== null);
    await dockFile(
      ["Place;Reading;Before;Unit", "1;10.02;11.00;kN", "2;19.05;20.00;kN", "3;25.01;26.00;kN", ""].join("\n"),
    );
    await until(() => screen.queryByText("How it was read, column by column") !== null);
    const column = () => screen.getByLabelText<HTMLSelectElement>(/Before/, { selector: "select" });
    const reading = () => screen.getByLabelText<HTMLSelectElement>(/Reading/, { selector: "select" });
    await act(async () => fireEvent.change(reading(), { target: { value: "ignored" } }));
    await until(() => reading().value === "ignored");
    await act(async () => fireEvent.change(column(), { target: { value: "force" } }));
    await until(() => column().value === "force");
    await until(() => document.body.textContent!.includes("26.00 kN"));
  });
});
