import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { answer, filingsOf, move, placedOf } from "../../../renderer/screens/dock/Placed.ts";
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

describe("docking", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("says what belongs here, and files nothing before questions are answered", async () => {
    const { fake } = await openPage("#/dock");
    await settle();
    expect(screen.getByRole("heading", { name: "Nothing docked yet" })).toBeTruthy();
    const values = fake.state.spindles.slice(0, 3).map((row) => (row.last?.valueN ?? 0) / 1000);
    await dockText([...values, 0.03].join("\n"));
    expect(screen.getByText(/The gauge's clock is 1 h 2 min behind/)).toBeTruthy();
    expect(screen.getByText(/look as if nothing was clamped|fit no spindle/)).toBeTruthy();
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

describe("arranging a docking", () => {
  const view = {
    takes: [1, 2, 3].map((n) => ({ number: String(n) })),
    stops: [{ spindleId: "a" }, { spindleId: "b" }],
    visits: [
      { takes: [0], meanN: 1, stop: 0, runnerUp: 1, confidence: "open", factor: 10, leftOut: false },
      { takes: [1], meanN: 1, stop: 1, runnerUp: 0, confidence: "open", factor: 10, leftOut: false },
    ],
    questions: [
      { code: "unitFactor", takes: [0, 1], stops: [0, 1], proposal: "scale", factor: 10 },
      { code: "swapped", takes: [0, 1], stops: [0, 1], proposal: "swap" },
    ],
  } as unknown as Parameters<typeof placedOf>[0]; // the members it looks at

  it("begins with the proposal; what is in no visit is left out", () => {
    const { filings, left, mixed } = filingsOf(view, placedOf(view));
    expect(filings.map((f) => [f.spindleId, f.takes, f.factor])).toEqual([
      ["a", [0], 10],
      ["b", [1], 10],
    ]);
    expect(left).toEqual([2]);
    expect(mixed).toBe(false);
  });

  it("takes a conversion or an exchange back when the answer is no", () => {
    const plainly = answer(placedOf(view), 0, view.questions[0]!, "asStored");
    expect(filingsOf(view, plainly).filings.map((f) => f.factor)).toEqual([1, 1]);
    const back = answer(placedOf(view), 1, view.questions[1]!, "asStored");
    expect(
      filingsOf(view, back)
        .filings.map((f) => [f.spindleId, f.takes])
        .sort(),
    ).toEqual([
      ["a", [1]],
      ["b", [0]],
    ]);
  });

  it("puts readings of one spindle together in one filing, and says when they are converted differently", () => {
    const both = move(placedOf(view), 1, 0, view.questions);
    expect(filingsOf(view, both).filings).toEqual([expect.objectContaining({ spindleId: "a", takes: [0, 1] })]);
    const third = move(both, 2, 0, view.questions);
    expect(filingsOf(view, third).mixed).toBe(true);
  });

  it("leaves out what the answer leaves out", () => {
    const none = answer(placedOf(view), 0, view.questions[0]!, "leftOut");
    expect(filingsOf(view, none)).toMatchObject({ filings: [], left: [0, 1, 2] });
  });
});
