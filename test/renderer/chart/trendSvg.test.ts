import { describe, expect, it } from "vitest";
import { coloursOf } from "../../../renderer/chart/colours.ts";
import { pictureName } from "../../../renderer/chart/saveDrawing.ts";
import { trendSvg } from "../../../renderer/chart/trend/savePicture.ts";
import { trendTexts } from "../../../renderer/screens/spindle/trend/trendTexts.ts";
import { trendViewOf } from "../../../renderer/screens/spindle/trend/trendViewOf.ts";
import { createSpeech } from "../../../renderer/words/Speech.ts";
import { FAKE_TODAY_MS } from "../../support/fake/fakeHistory.ts";
import { createFakeCore } from "../../support/fakeCore.ts";

const { handlers, state } = createFakeCore();

const shown = {
  unit: "kN",
  colours: coloursOf("light"),
  speech: createSpeech("en", "en-GB", "UTC"),
  words: { ...trendTexts.en, service: (kind: string) => kind },
  nowMs: FAKE_TODAY_MS,
  worksRule: undefined,
  toolName: (_: unknown, which: string) => which,
} as const;

async function svgOf(name: string, stretch?: { readonly from: number; readonly to: number }) {
  const { spindleId } = state.spindles.find((row) => row.spindle.name === name)!.spindle;
  const page = await handlers["spindles.page"]({ spindleId });
  const view = trendViewOf(page, page.checks, { ...shown, stretch })!;
  const text = trendSvg({ ...view, picked: undefined }, { title: "Mill", about: "a", unit: "kN" }, (t) => t.length * 7);
  const picture = new DOMParser().parseFromString(text, "image/svg+xml");
  expect(picture.querySelector("parsererror")).toBeNull();
  return { page, view, picture };
}

const whiskers = (picture: Document, colours: readonly string[]) =>
  [...picture.querySelectorAll("path")].filter(
    (path) => path.getAttribute("stroke-width") === "1.6" && colours.includes(path.getAttribute("stroke")!),
  );
const { good, watch, act, stop, cannotTell } = coloursOf("light");
const verdicts = [good, watch, act, stop, cannotTell];

describe("trendSvg", () => {
  it("draws every check with its whisker where the axes put it", async () => {
    const { view, picture } = await svgOf("Lathe 4");
    const drawn = whiskers(picture, verdicts);
    expect(drawn).toHaveLength(view.marks.length);
    for (const [i, path] of drawn.entries()) {
      const [x1, y1, x2, y2] = path
        .getAttribute("d")!
        .match(/[\d.]+/g)!
        .map(Number) as [number, number, number, number];
      const mark = view.marks[i]!;
      expect(x1).toBe(x2);
      expect(x1).toBeCloseTo(64 + ((mark.x - view.minX) / (view.maxX - view.minX)) * 1116, 1);
      const middleN = view.maxN - (((y1 + y2) / 2 - 84) / 516) * (view.maxN - view.minN);
      expect(Math.abs(middleN - mark.valueN)).toBeLessThan(0.0002 * mark.valueN);
    }
  });

  it("says limits, baseline and when the limit is reached in words", async () => {
    const { picture } = await svgOf("Lathe 4");
    const words = [...picture.querySelectorAll("text")].map((text) => text.textContent);
    expect(words.some((word) => word!.startsWith("baseline "))).toBe(true);
    expect(words.some((word) => /^warning: \w+ \d{4} to \w+ \d{4}$/.test(word!))).toBe(true);
  });

  it("holds a service beside its checks where the counter had begun anew before it", async () => {
    const { page } = await svgOf("Lathe 4");
    const restart = {
      lastMs: Date.UTC(2020, 0, 1),
      lastCounter: 20_000,
      firstMs: Date.UTC(2020, 3, 1),
      offset: 20_000,
    };
    const trend = { ...page.trend, axis: { kind: "counter", perDay: 10, restarts: [restart] } } as const;
    const service = {
      eventId: "e",
      kind: "springs",
      parts: "",
      note: "",
      newBaseline: true,
    } as const;
    const events = [{ ...service, spindleId: page.row.spindle.spindleId, at: "2020-06-01", counter: 500 }];
    const view = trendViewOf({ ...page, trend, events }, page.checks, { ...shown, stretch: undefined })!;
    expect(view.events.filter(({ kind }) => kind === "service").map(({ x }) => x)).toEqual([20_500]);
  });

  it("draws of a stretch only what lies in it, and closer", async () => {
    const all = await svgOf("Lathe 4");
    const middle = (all.view.minX + all.view.maxX) / 2;
    const part = await svgOf("Lathe 4", { from: middle - 120, to: middle + 120 });
    const inside = part.view.marks.filter(({ x }) => Math.abs(x - middle) <= 120).length;
    expect(inside).toBeGreaterThan(0);
    expect(whiskers(part.picture, verdicts)).toHaveLength(inside);
    expect(part.view.maxN - part.view.minN).toBeLessThan(all.view.maxN - all.view.minN);
  });

  it("tells a step by its sign, size and interval, and a changed tool by its name", async () => {
    const { spindleId } = state.spindles.find((row) => row.spindle.name === "Mill 4")!.spindle;
    const own = state.checks.filter((check) => check.spindleId === spindleId).map(({ checkId }) => checkId);
    state.checks = state.checks.map((check) =>
      own.indexOf(check.checkId) < 9 ? check : { ...check, valueN: check.valueN! * 0.93 },
    );
    const { view } = await svgOf("Mill 4");
    expect(view.events.find(({ kind }) => kind === "step")!.label.replace(/\u00a0/g, " ")).toMatch(
      /^step −\d+\.\d % \(−\d+\.\d to −\d+\.\d %\)$/,
    );
    const near = await svgOf("Mill 4", { from: view.marks[3]!.x - 5, to: view.marks[5]!.x + 5 });
    expect(near.view.events.filter(({ kind }) => kind === "tool").map(({ label }) => label)).toEqual([
      "now with gauge",
      "now with gauge",
    ]);
  });
});

describe("pictureName", () => {
  it("is one a file system takes", () => {
    expect(pictureName("Mill 3 / left: B", "2026-11-16")).toBe("Mill-3-left-B-2026-11-16");
    expect(pictureName("Fräse", "2026-11-16")).toBe("Fräse-2026-11-16");
    expect(pictureName("../..", "2026-11-16")).toBe("picture-2026-11-16");
  });
});
