import { describe, expect, it } from "vitest";
import { likeWords } from "../../../app/words/likeWords.ts";
import { matchLabel } from "../../../renderer/screens/scan/matchLabel.ts";
import { addressOf, filterOf } from "../../../renderer/screens/spindles/filterAddress.ts";
import { filterRows, noFilter } from "../../../renderer/screens/spindles/filterRows.ts";
import { rankRows } from "../../../renderer/screens/spindles/rankRows.ts";
import { hrefOf, parseRoute } from "../../../renderer/state/routeStore.ts";
import { searchChoices } from "../../../renderer/ui/searchChoices.ts";
import { createSpeech } from "../../../renderer/words/Speech.ts";
import { fakeFleet } from "../../support/fake/fakePages.ts";
import { createFakeCore } from "../../support/fakeCore.ts";

const { state } = createFakeCore();
const names = (rows: readonly { readonly spindle: { readonly name: string } }[]) => rows.map((row) => row.spindle.name);

describe("matchLabel", () => {
  it("finds by name whatever the case, by serial number, and by the id inside a longer text", () => {
    expect(matchLabel("MILL 3", state.spindles, state.adapters)?.name).toBe("Mill 3");
    expect(matchLabel("a-a63-2", state.spindles, state.adapters)).toMatchObject({ part: "adapter", name: "A63-2" });
    const id = state.spindles[4]!.spindle.spindleId;
    expect(matchLabel(`holdfast:spindle:${id}`, state.spindles, state.adapters)?.name).toBe(names(state.spindles)[4]);
  });

  it("finds nothing for a part of a name: a wrong machine is worse than none", () => {
    expect(matchLabel("Mill", state.spindles, state.adapters)).toBeUndefined();
  });

  it("finds nothing where two things have that name, and no retired one", () => {
    const twin = { ...state.spindles[0]!, spindle: { ...state.spindles[0]!.spindle, spindleId: "other" } };
    expect(matchLabel("Mill 1", [...state.spindles, twin], [])).toBeUndefined();
    const retired = state.spindles.map((row) => ({ ...row, spindle: { ...row.spindle, state: "retired" as const } }));
    expect(matchLabel("Mill 1", retired, [])).toBeUndefined();
  });
});

describe("searchChoices", () => {
  const choices = [
    { name: "Mill 10", about: "hall B" },
    { name: "Turn-mill 1", about: "hall B" },
    { name: "Mill 1", about: "hall A" },
  ];
  it("puts the exact name first, then names that begin so", () => {
    expect(searchChoices(choices, "mill 1").map(({ name }) => name)).toEqual(["Mill 1", "Mill 10", "Turn-mill 1"]);
  });
  it("wants every word, in name or description", () => {
    expect(searchChoices(choices, "hall a mill").map(({ name }) => name)).toEqual(["Mill 1"]);
  });
});

describe("rankRows and filterRows", () => {
  it("follow the fleet's rank", () => {
    const fleet = fakeFleet(state.spindles, state.checks);
    const byRank = rankRows(state.spindles, fleet).map((row) => row.spindle.spindleId);
    expect(byRank).toEqual(fleet.rows.map((row) => row.spindleId));
  });
  it("put the worst verdict first while there is no ranking yet, the never measured last", () => {
    const ranked = rankRows(state.spindles, undefined);
    expect(ranked.at(-1)!.last).toBeUndefined();
    expect(["stop", "act"]).toContain(ranked[0]!.verdict);
  });
  it("narrow by text, taper and verdict together", () => {
    expect(names(filterRows(state.spindles, { ...noFilter, text: "hall a", taper: "HSK-A63" }))).toEqual(["Lathe 4"]);
    expect(names(filterRows(state.spindles, { ...noFilter, verdict: "never" }))).toEqual(["Mill 12"]);
  });
});

describe("the address of a filtered list", () => {
  it("gives the filter back, whatever was typed", () => {
    const filter = {
      text: "a&b=ü 1?",
      area: "Hall A",
      taper: "HSK-A63",
      verdict: "cannotTell",
      withRetired: true,
    } as const;
    expect(filterOf(addressOf(filter))).toEqual(filter);
    expect(parseRoute(addressOf(filter))).toEqual({ place: "spindles" });
    expect(addressOf(noFilter)).toBe("#/spindles");
  });
  it("takes no verdict that there is not", () => {
    expect(filterOf("#/spindles?verdict=fine&text=mill")).toEqual({ ...noFilter, text: "mill" });
  });
});

describe("likeWords", () => {
  const like = {
    spindleId: "a",
    group: "g",
    n: 6,
    level: 0.82,
    perYear: -0.01,
    medianLevel: 0.97,
    levelZ: -6,
    medianPerYear: -0.01,
    perYearZ: 0,
    standsOut: true,
  };
  const speech = createSpeech("en", "en-GB");
  it("say how a spindle stands out, by level or by speed, and nothing where it does not", () => {
    expect(likeWords(like, speech)).toBe("lower than its like: 82\u00a0% of nominal, 97\u00a0% is usual among these 6");
    expect(likeWords({ ...like, levelZ: 0, perYear: -0.08, perYearZ: -5 }, speech)).toMatch(/^changes by −8\.0/);
    expect(likeWords({ ...like, standsOut: false }, speech)).toBeUndefined();
  });
});

describe("routes", () => {
  it("come back from their address", () => {
    for (const route of [
      { place: "measure" },
      { place: "spindles" },
      { place: "spindle", spindleId: "a-1", checkId: undefined },
      { place: "spindle", spindleId: "a-1", checkId: "c-2" },
      { place: "setup" },
    ] as const) {
      expect(parseRoute(hrefOf(route))).toEqual(route);
    }
  });
  it("lead to Measure from an address that means nothing", () => {
    expect(parseRoute("#/elsewhere")).toEqual({ place: "measure" });
  });
});
