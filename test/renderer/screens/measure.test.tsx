import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, faults, openPage, press, scan, settle, standInBrowser } from "../../support/page.tsx";

const plain = (element: HTMLElement | null) => element?.textContent?.replace(/\u00a0/g, " ") ?? "";
const tag = (name: RegExp) => screen.getAllByRole("button", { name })[0]!;

async function connected() {
  const page = await openPage();
  await act(async () => {
    await page.core.client.call("link.open", { source: { kind: "simulated" } });
  });
  return page;
}

async function clampOnce({ fake }: Awaited<ReturnType<typeof openPage>>, forceN = 17_950) {
  await act(async () => {
    fake.state.gauge.clamp(forceN);
    fake.run(3);
    fake.state.gauge.release();
    fake.run(2);
  });
  await settle();
}

describe("Measure", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("shows the last value of a batch as the figure and its state as a word", async () => {
    const page = await connected();
    await act(async () => {
      page.fake.state.gauge.clamp(17_950);
      page.fake.run(2);
    });
    expect(plain(screen.getByLabelText("Force", { selector: "output" }))).toMatch(/^17\.9\dkN$/);
    expect(screen.getByText("holding")).toBeTruthy();
  });

  it.each([
    ["opening", false],
    ["listening", false],
    ["waiting", true],
  ] as const)("calls out a link that is %s only where it is no way to begin: %s", async (state, loud) => {
    const page = await connected();
    await act(async () => page.fake.state.say("link.changed", { ...page.fake.state.link, state }));
    await settle();
    const word = document.querySelector(".readout .state")!;
    expect(word.classList.contains("loud")).toBe(loud);
    expect(plain(screen.getByLabelText("Force", { selector: "output" }))).toBe("––kN");
  });

  it("names all that weakens the verdict where its uncertainty is explained", async () => {
    const page = await connected();
    await act(async () => {
      const { series } = page.fake.state;
      series.change({ tag: { ...series.draft.tag, spindleId: page.fake.state.spindles[0]!.spindle.spindleId } });
    });
    await clampOnce(page);
    const weakenedBy = ["gaugeChanged", "adapterChanged", "operatorChanged", "oneClamping"].map((code) => ({ code }));
    const { draft } = page.fake.state.series;
    await act(async () =>
      page.fake.state.say("draft.changed", { ...draft, forming: { ...draft.forming!, weakenedBy } }),
    );
    expect(screen.getByText(/and 2 more/)).toBeTruthy();
    fireEvent.click(screen.getByRole("button", { name: "How sure?" }));
    await settle();
    expect(within(screen.getByRole("dialog")).getAllByRole("listitem").map(plain)).toEqual([
      "another gauge than last time",
      "another adapter than last time",
      "another operator than last time",
      "one clamping only",
    ]);
  });

  it("tags the series with what is searched for and chosen by Enter", async () => {
    await connected();
    await press("s");
    const search = screen.getByRole("combobox");
    fireEvent.change(search, { target: { value: "lathe" } });
    fireEvent.submit(search.closest("form")!);
    await settle();
    expect(plain(tag(/^spindle/))).toContain("Lathe 4");
  });

  it("tags the series with a scanned label, and says so when nothing has that name", async () => {
    await connected();
    await scan("mill 3");
    expect(plain(tag(/^spindle/))).toContain("Mill 3");
    await scan("Mill 99");
    expect(screen.getByText(/Nothing here is called “Mill 99”/)).toBeTruthy();
    expect(plain(tag(/^spindle/))).toContain("Mill 3");
  });

  it("files the series to the spindle shown with the space bar, once, and takes it back with U", async () => {
    const page = await connected();
    await scan("Mill 3");
    await clampOnce(page);
    await clampOnce(page);
    expect(plain(screen.getByRole("button", { name: /^File/ }))).toMatch(/File 17\.9\d kN to Mill 3/);
    const before = page.fake.state.checks.length;
    await press(" ");
    await press(" ");
    expect(page.fake.state.checks.length).toBe(before + 1);
    expect(within(document.querySelector<HTMLElement>(".toast.filed")!).getByText(/filed to Mill 3/)).toBeTruthy();
    await press("u");
    expect(page.fake.state.checks.at(-1)!.voided).toBeDefined();
    expect(screen.getByText(/Taken back/)).toBeTruthy();
  });

  it("says what is missing when the space bar finds nothing to file", async () => {
    const page = await connected();
    await clampOnce(page);
    await press(" ");
    expect(screen.getAllByText("Choose the spindle first.").length).toBeGreaterThan(0);
  });

  it("drops a clamping, which no longer counts, and takes it in again by one act", async () => {
    const page = await connected();
    await scan("Mill 3");
    await clampOnce(page);
    await clampOnce(page);
    await press("d");
    expect(page.fake.state.series.draft.figures.n).toBe(1);
    fireEvent.click(screen.getByRole("button", { name: "Undo" }));
    await settle();
    expect(page.fake.state.series.draft.figures.n).toBe(2);
  });

  it("takes a typed value with decimal comma, and refuses a torque with the reason", async () => {
    const page = await openPage();
    await press("t");
    const field = screen.getByLabelText("Force with its unit");
    fireEvent.change(field, { target: { value: "22 Nm" } });
    fireEvent.submit(field.closest("form")!);
    await settle();
    expect(within(screen.getByRole("dialog")).getByRole("alert").textContent).toMatch(/torque/);
    fireEvent.change(field, { target: { value: "17,92 kN" } });
    expect(plain(screen.getByRole("dialog"))).toContain("That is 17.92 kN.");
    fireEvent.submit(field.closest("form")!);
    await settle();
    expect(page.fake.state.series.draft.typed?.valueN).toBe(17_920);
    expect(screen.queryByRole("dialog")).toBeNull();
  });

  it("shows the cautions before the first clamping and the one before release while it holds", async () => {
    const page = await connected();
    expect(screen.getByText("Before you clamp:")).toBeTruthy();
    await scan("Mill 3");
    await clampOnce(page);
    await act(async () => {
      page.fake.state.gauge.clamp();
      page.fake.run(1);
    });
    expect(screen.getByText("Before release:")).toBeTruthy();
  });

  it("asks for a reason where a warning wants one, and files no sooner", async () => {
    const page = await connected();
    await scan("Mill 3");
    await clampOnce(page);
    await act(async () => {
      const warnings = [{ code: "gaugePastDue", about: "Gauge 2", weight: "ask" }] as const;
      page.fake.state.say("draft.changed", page.fake.state.series.change({ warnings }));
    });
    expect(screen.getByRole("button", { name: /^File/ }).hasAttribute("disabled")).toBe(true);
    fireEvent.click(screen.getByRole("button", { name: "Go on, with a reason" }));
    const form = screen.getByRole("dialog").querySelector("form")!;
    fireEvent.submit(form);
    expect(screen.getByText("Please give a reason, a few words are enough.")).toBeTruthy();
    fireEvent.change(screen.getByLabelText("Reason"), { target: { value: "only gauge here" } });
    fireEvent.submit(form);
    await settle();
    expect(screen.getByRole("button", { name: /^File/ }).hasAttribute("disabled")).toBe(false);
  });

  it("keeps single letters quiet when they are turned off, the space bar not", async () => {
    localStorage.setItem("holdfast.singleKeys", "off");
    const page = await connected();
    await scan("Mill 3");
    await clampOnce(page);
    await press("s");
    expect(screen.queryByRole("dialog")).toBeNull();
    await press(" ");
    expect(within(document.querySelector<HTMLElement>(".toast.filed")!).getByText(/filed to Mill 3/)).toBeTruthy();
  });

  it("says in plain words that the program is lost, and that this page is not known", async () => {
    const page = await openPage();
    act(() => page.client.setConnection("lost"));
    expect(screen.getByRole("alert").textContent).toMatch(/does not answer/);
    act(() => page.client.setConnection("refused"));
    expect(screen.getByText(/Open a page from the program/)).toBeTruthy();
  });

  it("speaks German, with decimal comma", async () => {
    const page = await connected();
    await act(async () => {
      await page.core.client.call("settings.save", { language: "de" });
    });
    await scan("Mill 3");
    await clampOnce(page);
    expect(plain(screen.getByRole("button", { name: /ablegen/ }))).toMatch(/17,9\d kN bei Mill 3 ablegen/);
    expect(document.documentElement.lang).toBe("de");
  });

  it("has nothing that axe finds wrong, empty and with a series", async () => {
    const page = await openPage();
    expect(await faults()).toEqual([]);
    await act(async () => {
      await page.core.client.call("link.open", { source: { kind: "simulated" } });
    });
    await scan("Mill 3");
    await clampOnce(page);
    expect(await faults()).toEqual([]);
    await press("n");
    expect(await faults()).toEqual([]);
  });
});
