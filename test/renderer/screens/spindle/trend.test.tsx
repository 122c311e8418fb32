import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { closePage, faults, openPage, settle, standInBrowser } from "../../../support/page.tsx";

const plain = (element: Element | null | undefined) => element?.textContent?.replace(/\u00a0/g, " ") ?? "";

async function openSpindle(name: string) {
  const page = await openPage("#/measure");
  const { spindleId } = page.fake.state.spindles.find((row) => row.spindle.name === name)!.spindle;
  await act(async () => {
    location.hash = `#/spindles/${spindleId}`;
    dispatchEvent(new HashChangeEvent("hashchange"));
  });
  await settle();
  return { page, spindleId };
}

const picture = () => document.querySelector<HTMLCanvasElement>(".trend canvas")!;
const shown = () => /shown from (.*) to (.*)\. Arrow/.exec(picture().getAttribute("aria-label")!)!.slice(1, 3);
const days = () => shown().map((day) => Date.parse(day) / 86_400_000);
const trend = () => screen.getByRole("region", { name: "Trend" });

describe("the trend of one spindle", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("comes nearer by key and by button, and shows all again", async () => {
    await openSpindle("Lathe 4");
    const [from, to] = days() as [number, number];
    fireEvent.keyDown(picture(), { key: "+" });
    const [nearFrom, nearTo] = days() as [number, number];
    expect((nearTo - nearFrom) / (to - from)).toBeCloseTo(0.5, 1);
    expect(nearFrom).toBeGreaterThan(from);
    fireEvent.click(screen.getByRole("button", { name: "Nearer" }));
    expect(days()[1]! - days()[0]!).toBeLessThan(0.3 * (to - from));
    fireEvent.keyDown(picture(), { key: "0" });
    expect(days()).toEqual([from, to]);
    expect((screen.getByRole("button", { name: "Show all" }) as HTMLButtonElement).disabled).toBe(true);
  });

  it("walks to a check that is out of sight by bringing it in", async () => {
    await openSpindle("Lathe 4");
    for (let i = 0; i < 3; i += 1) fireEvent.keyDown(picture(), { key: "+" });
    fireEvent.keyDown(picture(), { key: "Home" });
    const first = plain(trend().querySelector(".picked b"));
    const [from, to] = days() as [number, number];
    expect(Date.parse(first) / 86_400_000).toBeGreaterThanOrEqual(from);
    expect(Date.parse(first) / 86_400_000).toBeLessThan(to);
  });

  it("tells figures, counter and a changed gauge of the check under the keys", async () => {
    const { page, spindleId } = await openSpindle("Lathe 4");
    const checks = page.fake.state.checks.filter((check) => check.spindleId === spindleId);
    const changed = checks.findIndex((check, i) => i > 0 && check.gaugeId !== checks[i - 1]!.gaugeId);
    fireEvent.keyDown(picture(), { key: "Home" });
    for (let i = 0; i < changed; i += 1) fireEvent.keyDown(picture(), { key: "ArrowRight" });
    const picked = plain(trend().querySelector(".picked"));
    const gauge = page.fake.state.gauges.find((row) => row.gauge.gaugeId === checks[changed]!.gaugeId)!.gauge.name;
    expect(picked).toMatch(/\d\.\d+ ± \d\.\d+ kN/);
    expect(picked).toContain(`now with ${gauge}`);
    expect(picked).toContain(`${12_000 + 900 * changed} changes`);
  });

  it("goes by tool changes when asked to", async () => {
    await openSpindle("Lathe 4");
    fireEvent.click(screen.getByLabelText("By tool changes"));
    await settle();
    expect(shown()[0]).toMatch(/^\d+ changes$/);
    fireEvent.click(screen.getByText("The figures behind it"));
    expect(plain(trend())).toContain("kN per 10000 changes");
    fireEvent.click(screen.getByLabelText("By date"));
    expect(days()[0]).toBeGreaterThan(0);
  });

  it("holds the same data as a table: every check, with its robust line, and every service", async () => {
    const { page, spindleId } = await openSpindle("Mill 1");
    fireEvent.click(screen.getByRole("button", { name: "As a table" }));
    const table = within(screen.getByRole("region", { name: "As a table" }));
    const checks = page.fake.state.checks.filter((check) => check.spindleId === spindleId);
    expect(table.getAllByRole("link")).toHaveLength(checks.length);
    const rows = table.getAllByRole("row").slice(1).map(plain);
    expect(rows[0]).toMatch(/\d\.\d+ ± \d\.\d+\d+\.\d+/);
    expect(await faults()).toEqual([]);
  });
});

describe("control charts of one spindle", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);
  const panel = () => screen.getByRole("region", { name: "Control charts" });

  it("say which check signals and why, and how often that would be a false alarm", async () => {
    await openSpindle("Lathe 4");
    expect(plain(within(panel()).getByRole("status"))).toMatch(
      /^Signal at the check of .* \(\d+\.\d+ kN\): what adds up off the level is beyond its limit, on the low side\./,
    );
    expect(plain(panel())).toContain("4 % of unchanged spindles give one within the next forty checks");
    fireEvent.click(screen.getByLabelText("Single values and ranges"));
    expect(plain(panel())).toContain("once in 370 checks on average (average run length)");
    expect(within(panel()).getAllByRole("img")).toHaveLength(2);
  });

  it("signal by the rules chosen, as a set or one by one", async () => {
    await openSpindle("Lathe 4");
    fireEvent.click(screen.getByLabelText("Single values and ranges"));
    fireEvent.change(within(panel()).getByLabelText("Set of rules"), { target: { value: "zone" } });
    expect((within(panel()).getByLabelText("eight in a row on one side") as HTMLInputElement).checked).toBe(true);
    expect(plain(panel())).toContain("once in 92 checks");
    fireEvent.change(within(panel()).getByLabelText("Set of rules"), { target: { value: "one" } });
    fireEvent.click(within(panel()).getByLabelText("one value beyond three sigma"));
    expect(plain(within(panel()).getByRole("status"))).toBe("No rule is chosen: this chart cannot signal.");
    fireEvent.click(within(panel()).getByLabelText("a jump between two checks above its limit"));
    expect(plain(panel())).toContain("is not worked out");
    expect(await faults()).toEqual([]);
  });

  it("tell each check's figures by arrow keys, both plots together, and open it by Enter", async () => {
    const { page, spindleId } = await openSpindle("Lathe 4");
    const checks = page.fake.state.checks.filter((check) => check.spindleId === spindleId);
    const told = () => plain(panel().querySelector(".picked-line"));
    expect(told()).toMatch(/^Arrow keys/);
    const [first, second] = within(panel()).getAllByRole("img") as [HTMLElement, HTMLElement];
    fireEvent.keyDown(first, { key: "End" });
    expect(told()).toMatch(/kN · Sum downwards \d+\.\d+ · Sum upwards \d+\.\d+ · signals: what adds up/);
    expect(panel().querySelectorAll(".picked-at")).toHaveLength(2);
    fireEvent.keyDown(second, { key: "ArrowLeft" });
    const day = new Date(checks.at(-2)!.measuredAtMs).toISOString().slice(0, 10);
    expect(new Date(Date.parse(`${told().split(" · ")[0]} UTC`)).toISOString().slice(0, 10)).toBe(day);
    fireEvent.keyDown(second, { key: "Escape" });
    expect(told()).toMatch(/^Arrow keys/);
    fireEvent.keyDown(first, { key: "Home" });
    fireEvent.keyDown(first, { key: "Enter" });
    await settle();
    expect(location.hash).toContain(checks[0]!.checkId);
  });

  it("wait for the ninth check", async () => {
    const page = await openPage("#/measure");
    const { spindleId } = page.fake.state.spindles.find((row) => row.spindle.name === "Lathe 4")!.spindle;
    const own = page.fake.state.checks.filter((check) => check.spindleId === spindleId);
    const dropped = new Set(own.slice(5).map((check) => check.checkId));
    page.fake.state.checks = page.fake.state.checks.filter((check) => !dropped.has(check.checkId));
    await act(async () => {
      location.hash = `#/spindles/${spindleId}`;
      dispatchEvent(new HashChangeEvent("hashchange"));
    });
    await settle();
    expect(plain(panel())).toContain("charts begin with the ninth. So far there are 5.");
  });
});

describe("services, scatter and like spindles", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("report a service after the next check, not before", async () => {
    const { page, spindleId } = await openSpindle("Lathe 4");
    const last = page.fake.state.checks.findLast((check) => check.spindleId === spindleId)!;
    const between = new Date(last.measuredAtMs - 40 * 86_400_000).toISOString().slice(0, 10);
    const after = new Date(last.measuredAtMs + 2 * 86_400_000).toISOString().slice(0, 10);
    const event = { eventId: "e-1", spindleId, at: after, kind: "lubricated" as const, newBaseline: false };
    page.fake.state.events = [event];
    await act(async () => page.fake.state.say("spindle.changed", page.fake.state.refile(spindleId)));
    await settle();
    expect(plain(screen.getByRole("main"))).toContain("What it did is reported after the next check.");
    page.fake.state.events = [{ ...event, at: between }];
    await act(async () => page.fake.state.say("spindle.changed", page.fake.state.refile(spindleId)));
    await settle();
    expect(plain(screen.getByRole("main"))).toMatch(/\d+\.\d+ before, \d+\.\d+ kN after: /);
  });

  it("draw the scatter within checks with a course of its own", async () => {
    await openSpindle("Lathe 4");
    const plot = screen.getByRole("img", { name: /^Scatter from clamping to clamping/ });
    expect(plot.getAttribute("aria-label")!.replace(/\u00a0/g, " ")).toMatch(
      /16 checks: 0\.30 % at first, 0\.30 % at last/,
    );
    expect(plain(screen.getByRole("main"))).toMatch(/No trend in \d+ checks \(p/);
    fireEvent.keyDown(plot, { key: "ArrowRight" });
    expect(plain(plot.parentElement!.querySelector(".picked-line"))).toMatch(/ · 0\.30 %$/);
  });

  it("compare with spindles of the same taper and nominal force", async () => {
    await openSpindle("Lathe 4");
    expect(plain(screen.getByRole("main"))).toMatch(
      /Of 5 spindles with HSK-A63, 18\.0 kN, the usual level is \d+ % of nominal; this one is at 8\d %\./,
    );
  });
});
