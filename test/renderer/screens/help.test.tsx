import { act, cleanup, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { glossary } from "../../../renderer/screens/help/glossaryTexts.ts";
import { helpFor } from "../../../renderer/screens/help/helpFor.ts";
import { helpTexts } from "../../../renderer/screens/help/texts.ts";
import { taskTexts, taskTopics } from "../../../renderer/screens/help/topics/taskTopics.ts";
import { hrefOf, parseRoute } from "../../../renderer/state/routeStore.ts";
import { closePage, faults, openPage, settle, standInBrowser } from "../../support/page.tsx";

/** Help is read when it is wanted: the first time its code comes a moment later. */
async function openHelp(hash: string) {
  const page = await openPage(hash);
  await screen.findByRole("heading", { name: /^(Help|Hilfe)$/ }, { timeout: 5_000 });
  return page;
}

describe("Help", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it.each(taskTopics)("has a page for %s in both languages: why, steps, a picture in words", (topic) => {
    for (const language of ["en", "de"] as const) {
      const page: Record<string, string> = taskTexts[topic][language];
      expect(page.title).toBe(helpTexts[language][topic]);
      expect(page.lead).toBeTruthy();
      expect(page.picture).toBeTruthy();
      expect(Object.keys(page).filter((key) => key.startsWith("step")).length).toBeGreaterThanOrEqual(3);
    }
  });

  it("puts the cautions where a hand is about to act", () => {
    for (const topic of ["measure", "verdicts", "round", "proof", "service"] as const)
      expect("caution" in taskTexts[topic].en && "caution" in taskTexts[topic].de).toBe(true);
  });

  it.each([
    ["#/measure", "Measure and file"],
    ["#/dock", "Walk and dock a round"],
    ["#/rounds", "Walk and dock a round"],
    ["#/spindles", "What the verdicts mean"],
    ["#/gauges", "Prove a gauge"],
    ["#/records", "Backup and restore"],
    ["#/setup", "Connect a gauge"],
  ])("opens from %s with F1 on the page that fits", async (hash, title) => {
    await openPage(hash);
    await act(async () => {
      fireEvent.keyDown(document.body, { key: "F1" });
    });
    await settle();
    expect(await screen.findByRole("heading", { name: title, level: 2 }, { timeout: 5_000 })).toBeTruthy();
  });

  it("opens with a question mark, but leaves one that is typed into a field", async () => {
    await openPage("#/spindles");
    const search = screen.getByPlaceholderText(/Search by name/);
    fireEvent.keyDown(search, { key: "?" });
    await settle();
    expect(location.hash).toBe("#/spindles");
    fireEvent.keyDown(document.body, { key: "?" });
    expect(location.hash).toBe("#/help/verdicts");
  });

  it("explains the statistics with the figures of the spindle it was opened from", async () => {
    const page = await openPage("#/spindles");
    const { spindleId, name } = page.fake.state.spindles[0]!.spindle;
    expect(hrefOf(helpFor({ place: "spindle", spindleId }))).toBe(`#/help/statistics/${spindleId}`);
    cleanup();
    await openHelp(`#/help/statistics/${spindleId}`);
    await settle();
    expect(screen.getByText(`The figures are those of ${name}.`, { exact: false })).toBeTruthy();
    expect(screen.getByText(/^Here: S = /)).toBeTruthy();
    expect(screen.getByText(/checks since the history last began anew; .* kN a year/)).toBeTruthy();
  });

  it("names each term of a standard by its entry, once", () => {
    const numbers = glossary.flatMap(({ source }) => (source === undefined ? [] : [source.split(" · ")[0]!]));
    expect(new Set(numbers).size).toBe(numbers.length);
    for (const number of numbers) expect(number).toMatch(/^VIM [1-5]\.\d+$/);
    for (const { term, meaning } of glossary) {
      expect(term[0]).not.toBe(term[1]);
      expect(meaning[0]).not.toBe(meaning[1]);
    }
  });

  it("has an entry in the nav on every screen", async () => {
    for (const hash of ["#/measure", "#/records", "#/help"]) {
      await openPage(hash);
      const nav = screen.getByRole("navigation");
      expect(within(nav).getByRole("link", { name: "Help" }).getAttribute("href")).toBe(
        hrefOf(helpFor(parseRoute(hash))),
      );
      cleanup();
    }
  });

  it.each(["#/help", "#/help/measure", "#/help/statistics", "#/help/glossary"])(
    "has nothing that axe finds wrong on %s",
    async (hash) => {
      await openHelp(hash);
      expect(await faults()).toEqual([]);
    },
  );
});
