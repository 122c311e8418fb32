import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, faults, openPage, settle, standInBrowser } from "../../support/page.tsx";

const plain = (element: Element | null | undefined) => element?.textContent?.replace(/\u00a0/g, " ") ?? "";

/** A round of all spindles, made through the page. */
async function makeRound() {
  const page = await openPage("#/rounds");
  await settle();
  for (const box of screen.getAllByRole("checkbox")) fireEvent.click(box);
  fireEvent.click(screen.getByRole("button", { name: /Make a round of \d+/ }));
  await act(async () => {
    fireEvent.submit(screen.getByRole("dialog").querySelector("form")!);
  });
  await settle();
  return page;
}

async function dockText(text: string) {
  const input = screen.getByLabelText("File with readings");
  const file = Object.assign(new File([text], "memory.txt"), { text: async () => text });
  await act(async () => {
    fireEvent.change(input, { target: { files: [file] } });
  });
  await settle();
}

describe("rounds", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("show what is due with its reason, and cannot make a round of nothing", async () => {
    await openPage("#/rounds");
    await settle();
    expect(screen.getByRole("heading", { name: /Due/ })).toBeTruthy();
    expect(screen.getByText(/lock each machine out/)).toBeTruthy();
    expect((screen.getByRole("button", { name: /Make a round of 0/ }) as HTMLButtonElement).disabled).toBe(true);
    expect(await faults()).toEqual([]);
  });

  it("make a round of what is ticked and show its stops", async () => {
    const { fake } = await makeRound();
    const rows = screen.getAllByRole("row").map(plain);
    expect(rows.some((row) => row.startsWith("1") && row.includes(fake.state.spindles[0]!.spindle.name))).toBe(true);
    expect(screen.getByRole("button", { name: "Print the sheet (PDF)" })).toBeTruthy();
    expect(screen.getByRole("link", { name: "Dock the gauge" }).getAttribute("href")).toMatch(/^#\/dock\//);
  });
});

describe("a round that another page changes meanwhile", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("is shown as it stands now, and nothing is laid over it unseen", async () => {
    const { client } = await makeRound();
    const list = await client.call("rounds.list", {});
    const before = list.ok ? list.value[0]! : expect.fail("no list");
    const stops = before.stops.slice(0, 3).map(({ spindleId }) => ({ spindleId }));
    const { roundId, on } = before;
    const takeOut = screen.getByRole("button", { name: `Take ${before.stops[0]!.name} out` });
    await act(async () => {
      const other = client.call("rounds.save", { roundId, name: "Hall B first", on, made: "byHand", stops });
      fireEvent.click(takeOut); // before this page has heard of it
      await other;
    });
    await settle();
    expect(screen.getByText(/This round was changed meanwhile/)).toBeTruthy();
    expect(screen.getByText("Hall B first")).toBeTruthy();
    const now = await client.call("rounds.list", {});
    expect(now.ok && now.value.map((round) => round.stops.length)).toEqual([3]);
  });
});

describe("docking", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("goes to what was read as soon as it is there, and to what was filed", async () => {
    const { fake } = await openPage("#/dock");
    await settle();
    const values = fake.state.spindles.slice(0, 2).map((row) => (row.last?.valueN ?? 0) / 1000);
    const sights: Element[] = [];
    const look = HTMLElement.prototype.scrollIntoView;
    HTMLElement.prototype.scrollIntoView = function seen() {
      sights.push(this);
    };
    await dockText(values.join("\n"));
    HTMLElement.prototype.scrollIntoView = look;
    expect(document.activeElement?.querySelector(".accept-line")).not.toBeNull();
    expect(sights).toContain(document.activeElement);
  });

  it("says what belongs here, and files nothing before questions are answered", async () => {
    const { fake } = await openPage("#/dock");
    await settle();
    expect(screen.getByRole("heading", { name: "Nothing docked yet" })).toBeTruthy();
    const values = fake.state.spindles.slice(0, 3).map((row) => (row.last?.valueN ?? 0) / 1000);
    await dockText([...values, 0.03].join("\n"));
    expect(screen.getByText(/The gauge's clock is 1 h 2 min behind/)).toBeTruthy();
    expect(screen.getByText(/looks as if nothing was clamped|fits no spindle/)).toBeTruthy();
    const accept = () => screen.getByRole("button", { name: /^File \d+ checks/ }) as HTMLButtonElement;
    expect(accept().disabled).toBe(true);
    const list = screen.getByRole("heading", { name: /Questions/ }).closest("section")!;
    for (const button of within(list).queryAllByRole("button", { name: /Leave out$|Right as shown/ })) {
      if (button.classList.contains("main")) fireEvent.click(button);
    }
    expect(accept().disabled).toBe(false);
    expect(await faults()).toEqual([]);
    await press(accept());
    expect(screen.getByRole("heading", { name: "3 checks filed" })).toBeTruthy();
    expect(await faults()).toEqual([]);
  });

  it("answers questions alike with one act, which can be taken back until it is accepted", async () => {
    const { fake } = await openPage("#/dock");
    await settle();
    const values = fake.state.spindles.slice(1, 2).map((row) => (row.last?.valueN ?? 0) / 1000);
    await dockText([...values, ...Array.from({ length: 80 }, () => 0.001)].join("\n"));
    const accept = () => screen.getByRole("button", { name: /^File \d+ checks/ }) as HTMLButtonElement;
    expect(screen.getByRole("heading", { name: "Questions, 80 open" })).toBeTruthy();
    expect(screen.getByText(/^Readings 2, 3, .*, 13 and 68 more\s+look as if nothing was clamped\.$/)).toBeTruthy();
    expect(screen.getAllByRole("group", { name: "0.00 kN" })).toHaveLength(60); // the rest on request
    await press(screen.getByRole("button", { name: "Show 20 more" }));
    expect(screen.getAllByRole("group", { name: "0.00 kN" })).toHaveLength(80);

    await press(screen.getByRole("button", { name: "Leave out: all 80" }));
    expect(screen.getByText("✓ 80 of 80 answered")).toBeTruthy();
    expect(accept().disabled).toBe(false);
    expect(await faults()).toEqual([]);
    await press(screen.getByRole("button", { name: "Take back 80 answers" }));
    expect(screen.getByRole("heading", { name: "Questions, 80 open" })).toBeTruthy();
    expect(accept().disabled).toBe(true);

    const details = screen.getByText("Look at the 80 one by one").closest("details")!;
    await act(async () => {
      details.open = true;
      details.dispatchEvent(new Event("toggle"));
    });
    await press(within(details).getAllByRole("button", { name: "Leave out" })[1] as HTMLButtonElement);
    await press(screen.getByRole("button", { name: "Leave out: the other 79" }));
    expect(accept().disabled).toBe(false);
    await press(within(details).getAllByRole("button", { name: "Take back" })[0] as HTMLButtonElement);
    expect(screen.getByRole("heading", { name: "Questions, 1 open" })).toBeTruthy();
    await press(screen.getByRole("button", { name: "Leave out: the other 1" }));
    await press(screen.getByRole("button", { name: "Take the last step back" }));
    expect(screen.getByRole("heading", { name: "Questions, 1 open" })).toBeTruthy();
    expect(await faults()).toEqual([]);
  });

  it("keeps a way of reading, and lets it be renamed and taken out of use", async () => {
    const { fake } = await openPage("#/dock");
    await settle();
    await dockText(String((fake.state.spindles[0]!.last?.valueN ?? 0) / 1000));
    fireEvent.change(screen.getByLabelText("Name, such as the gauge's"), { target: { value: "Old gauge" } });
    await press(screen.getByText("Keep this way of reading").closest("button")!);
    const choices = () => within(screen.getByLabelText("How it is read")).getAllByRole("option").map(plain);
    expect(choices()).toEqual(["found out by itself", "Old gauge"]);
    fireEvent.change(screen.getByLabelText("Name of “Old gauge”"), { target: { value: "Hall B" } });
    await press(screen.getByLabelText("Rename “Old gauge”") as HTMLButtonElement);
    expect(choices()).toEqual(["found out by itself", "Hall B"]);
    const choice = screen.getByLabelText("How it is read") as HTMLSelectElement;
    fireEvent.change(choice, { target: { value: choice.options[1]!.value } });
    await press(screen.getByLabelText("Take “Hall B” out of use") as HTMLButtonElement);
    expect(choices()).toEqual(["found out by itself"]);
    expect(choice.value).toBe("");
    await press(screen.getByLabelText("Put “Hall B” in use again") as HTMLButtonElement);
    expect(choices()).toEqual(["found out by itself", "Hall B"]);
    expect(await faults()).toEqual([]);
  });

  it("speaks of one reading as of one", async () => {
    const { fake } = await openPage("#/dock");
    await settle();
    await dockText([(fake.state.spindles[0]!.last?.valueN ?? 0) / 1000, 0.03].join("\n"));
    expect(screen.getByText(/^Reading 2\s+looks as if nothing was clamped\.$/)).toBeTruthy();
  });

  it("sends readings elsewhere by the list beside them", async () => {
    const { fake } = await openPage("#/dock");
    await settle();
    await dockText(String((fake.state.spindles[0]!.last?.valueN ?? 0) / 1000));
    const select = screen.getAllByRole("combobox", { name: /^Belongs to/ })[0]!;
    fireEvent.change(select, { target: { value: "" } });
    expect(screen.getByRole("heading", { name: "Left out: 1" })).toBeTruthy();
  });
});

async function press(button: HTMLButtonElement) {
  await act(async () => {
    fireEvent.click(button);
  });
  await settle();
}
