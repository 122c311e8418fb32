import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, faults, openPage, settle, standInBrowser } from "../../support/page.tsx";

const plain = (element: Element | null | undefined) => element?.textContent?.replace(/\u00a0/g, " ") ?? "";

async function goTo(hash: string) {
  await act(async () => {
    location.hash = hash;
    dispatchEvent(new HashChangeEvent("hashchange"));
  });
  await settle();
}

const idOf = ({ fake }: Awaited<ReturnType<typeof openPage>>, name: string) =>
  fake.state.spindles.find((row) => row.spindle.name === name)!.spindle.spindleId;

describe("the list of spindles", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("opens with the sentence a colleague would say, and ranks the lines", async () => {
    await openPage("#/spindles");
    expect(screen.getByText("Grinder 5 first.")).toBeTruthy();
    const lines = screen.getAllByRole("row").slice(1);
    expect(plain(lines[0])).toContain("Grinder 5");
    expect(plain(lines[0])).toMatch(/act.*5\.5 ± 0\.6 kN/);
  });

  it("narrows by text and says how many are shown", async () => {
    await openPage("#/spindles");
    fireEvent.change(screen.getByRole("textbox", { name: /Search/ }), { target: { value: "lathe" } });
    expect(screen.getAllByRole("row")).toHaveLength(2);
    expect(screen.getByText("1 of 10")).toBeTruthy();
  });

  it("keeps its filters in the address, and takes them from there", async () => {
    const page = await openPage("#/spindles?verdict=never");
    expect(screen.getAllByRole("row")).toHaveLength(2);
    fireEvent.change(screen.getByLabelText("verdict"), { target: { value: "" } });
    fireEvent.change(screen.getByLabelText("Area"), { target: { value: "hall A" } });
    expect(location.hash).toBe("#/spindles?area=hall+A");
    await goTo("#/spindles?text=lathe");
    expect(screen.getAllByRole("row")).toHaveLength(2);
    await goTo(`#/spindles/${idOf(page, "Lathe 4")}`);
    expect(screen.getByText("← All spindles").getAttribute("href")).toBe("#/spindles?text=lathe");
  });

  it("names a gauge gone off before any spindle, says what to do, and marks the spindles that moved", async () => {
    const page = await openPage("#/measure");
    const handlers: Record<string, unknown> = page.fake.handlers;
    const spindleIds = ["Mill 1", "Mill 3", "Lathe 4"].map((name) => idOf(page, name));
    const gaugeId = page.fake.state.gauges[0]!.gauge.gaugeId;
    const fleet = await page.fake.handlers["spindles.fleet"]({});
    handlers["spindles.fleet"] = () => ({
      ...fleet,
      commonMode: [
        {
          by: "gauge",
          id: gaugeId,
          or: [],
          sinceMs: Date.UTC(2026, 8, 1),
          spindles: 4,
          spindleIds,
          shift: -0.031,
          p: 1e-4,
        },
      ],
    });
    await goTo("#/spindles");
    const notice = screen.getByRole("region", { name: `Look at ${page.fake.state.gauges[0]!.gauge.name} first.` });
    expect(plain(notice)).toMatch(/3 of the 4 spindles .* fell together, by about 3\.1 %.*Prove this gauge/);
    const marked = screen.getAllByRole("row").filter((row) => /moved along with others/.test(plain(row)));
    expect(marked).toHaveLength(3);
    expect(screen.getByText("Grinder 5 first.")).toBeTruthy();
    expect(await faults()).toEqual([]);
  });

  it("names the risk at the next round from five in a hundred on", async () => {
    await openPage("#/spindles");
    const said = screen.getAllByText(/below minimum by the next round/).map((element) => plain(element));
    expect(said.length).toBeGreaterThan(0);
    for (const text of said) expect(Number(/(\d+) %/.exec(text)![1])).toBeGreaterThanOrEqual(5);
  });

  it("makes only the lines in sight of a list of thousands", async () => {
    const page = await openPage("#/measure");
    const many = Array.from({ length: 5_000 }, (_, i) => ({
      ...page.fake.state.spindles[i % 10]!,
      spindle: { ...page.fake.state.spindles[i % 10]!.spindle, spindleId: `s-${i}`, name: `Mill ${i}` },
    }));
    page.fake.state.spindles = many;
    page.core.register.setState({ spindles: many });
    await goTo("#/spindles");
    expect(screen.getAllByRole("row").length).toBeLessThan(200);
    expect(screen.getByRole("table").getAttribute("aria-rowcount")).toBe("5001");
  });

  it("explains itself when it is empty, and adds the first spindle", async () => {
    const page = await openPage("#/spindles", { empty: true });
    fireEvent.click(screen.getByRole("button", { name: "Add a spindle" }));
    const dialog = screen.getByRole("dialog");
    fireEvent.submit(dialog.querySelector("form")!);
    expect(within(dialog).getByText("A name is needed.")).toBeTruthy();
    fireEvent.change(within(dialog).getByLabelText("Name"), { target: { value: "Mill 1" } });
    fireEvent.change(within(dialog).getByLabelText("Minimum"), { target: { value: "14,4" } });
    fireEvent.submit(dialog.querySelector("form")!);
    await settle();
    expect(page.fake.state.spindles[0]!.spindle).toMatchObject({ name: "Mill 1", limits: { minimumN: 14_400 } });
    expect(location.hash).toContain(page.fake.state.spindles[0]!.spindle.spindleId);
  });
});

describe("one spindle", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("says verdict, fall, and when the limit is reached, with its interval", async () => {
    const page = await openPage("#/measure");
    await goTo(`#/spindles/${idOf(page, "Lathe 4")}`);
    expect(plain(screen.getByRole("main"))).toMatch(
      /Watch\. 15\.93 ± 0\.25 kN is 13 % below the baseline of 18\.28 kN\. At this rate it reaches its warning limit between \w+ 2027 and \w+ 2027\./,
    );
    expect(screen.getByText("Tiring springs")).toBeTruthy();
  });

  it("lists its checks with their uncertainty and opens one", async () => {
    const page = await openPage("#/measure");
    const id = idOf(page, "Mill 3");
    await goTo(`#/spindles/${id}`);
    const first = screen.getAllByRole("row").find((row) => row.querySelector("a[href*=checks]"))!;
    expect(plain(first)).toMatch(/17\.87 ± 0\.25/);
    await goTo(first.querySelector("a")!.getAttribute("href")!);
    expect(screen.getByText("Where the uncertainty comes from")).toBeTruthy();
    expect(plain(screen.getByRole("main"))).toContain("another gauge than last time");
  });

  it("makes a check void with a reason, and never without one", async () => {
    const page = await openPage("#/measure");
    const id = idOf(page, "Mill 3");
    const check = page.fake.state.checks.findLast((one) => one.spindleId === id)!;
    await goTo(`#/spindles/${id}/checks/${check.checkId}`);
    fireEvent.click(screen.getByRole("button", { name: "Make void" }));
    const form = screen.getByRole("dialog").querySelector("form")!;
    fireEvent.submit(form);
    await settle();
    expect(page.fake.state.checks.find((one) => one.checkId === check.checkId)!.voided).toBeUndefined();
    fireEvent.change(screen.getByLabelText("Reason"), { target: { value: "wrong adapter" } });
    fireEvent.submit(form);
    await settle();
    expect(page.fake.state.checks.find((one) => one.checkId === check.checkId)!.voided).toEqual({
      reason: "wrong adapter",
    });
    expect(screen.getByText("This check does not count: wrong adapter")).toBeTruthy();
  });

  it("notes a service, and proposes a new baseline where the level starts anew", async () => {
    const page = await openPage("#/measure");
    await goTo(`#/spindles/${idOf(page, "Lathe 4")}`);
    fireEvent.click(screen.getByRole("button", { name: "Note a service" }));
    const dialog = screen.getByRole("dialog");
    fireEvent.click(within(dialog).getByLabelText("springs renewed"));
    expect(
      (within(dialog).getByLabelText("The next check becomes the new baseline.") as HTMLInputElement).checked,
    ).toBe(true);
    fireEvent.submit(dialog.querySelector("form")!);
    await settle();
    expect(page.fake.state.events.at(-1)).toMatchObject({ kind: "springs", newBaseline: true });
  });

  it("has nothing that axe finds wrong: list, spindle, check, form", async () => {
    const page = await openPage("#/spindles");
    expect(await faults()).toEqual([]);
    const id = idOf(page, "Mill 3");
    await goTo(`#/spindles/${id}`);
    expect(await faults()).toEqual([]);
    fireEvent.click(screen.getByRole("button", { name: "Edit" }));
    expect(await faults()).toEqual([]);
    fireEvent.click(screen.getByRole("button", { name: "Cancel" }));
    await goTo(`#/spindles/${id}/checks/${page.fake.state.checks.find((one) => one.spindleId === id)!.checkId}`);
    expect(await faults()).toEqual([]);
  });
});
