import { describe, expect, it } from "vitest";
import { type Act, afterActs, kindsOf, takenBack } from "../../../../renderer/screens/dock/acts.ts";
import { carriedOver } from "../../../../renderer/screens/dock/carriedOver.ts";
import { answer, filingsOf, move, placedOf } from "../../../../renderer/screens/dock/Placed.ts";

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
    const plainly = answer(placedOf(view), [0], view.questions, "asStored");
    expect(filingsOf(view, plainly).filings.map((f) => f.factor)).toEqual([1, 1]);
    const back = answer(placedOf(view), [1], view.questions, "asStored");
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
    const none = answer(placedOf(view), [0], view.questions, "leftOut");
    expect(filingsOf(view, none)).toMatchObject({ filings: [], left: [0, 1, 2] });
  });
});

describe("acts that can be taken back", () => {
  const stops = Array.from({ length: 4 }, (_, i) => ({ spindleId: `s${i}` }));
  const visits = stops.map((_, i) => ({
    takes: [i],
    meanN: 1,
    stop: i,
    factor: 1,
    confidence: "open",
    leftOut: false,
  }));
  const unsure = (take: number) => ({ code: "unsure", takes: [take], stops: [take], proposal: "fileAsShown" });
  const view = {
    takes: stops.map(() => ({})),
    stops,
    visits,
    questions: [
      unsure(0),
      { code: "swapped", takes: [0, 1], stops: [0, 1], proposal: "swap" },
      unsure(1),
      { code: "swapped", takes: [2, 3], stops: [2, 3], proposal: "swap" },
      unsure(2),
    ],
  } as unknown as Parameters<typeof placedOf>[0]; // the members they look at
  const placesOf = (acts: readonly Act[]) => afterActs(view, acts).groups.map((g) => g.stop);

  it("put questions alike together, in the order in which the first of each was asked", () => {
    expect(kindsOf(view.questions).map(({ like, at }) => [like.code, at])).toEqual([
      ["unsure", [0, 2, 4]],
      ["swapped", [1, 3]],
    ]);
    const factors = [10, 1000].map((factor) => ({
      code: "unitFactor",
      takes: [0],
      stops: [],
      proposal: "scale",
      factor,
    }));
    expect(kindsOf(factors as unknown as typeof view.questions)).toHaveLength(2);
  });

  it("answer all of a kind at once, each pair changed back by itself", () => {
    const no: Act = { kind: "answer", at: [1, 3], said: "asStored" };
    expect(placesOf([no])).toEqual([1, 0, 3, 2]);
    expect(afterActs(view, [no]).answers).toEqual({ 1: "asStored", 3: "asStored" });
    expect(placesOf([{ kind: "answer", at: [0, 2, 4], said: "leftOut" }])).toEqual([
      undefined,
      undefined,
      undefined,
      3,
    ]);
  });

  it("taken back leave what else was done, also when one of many answers is taken back", () => {
    const acts: readonly Act[] = [
      { kind: "answer", at: [0, 2, 4], said: "leftOut" },
      { kind: "move", group: 3, stop: undefined },
    ];
    const one = takenBack(view, acts, [2]);
    expect(placesOf(one)).toEqual([undefined, 1, undefined, undefined]);
    expect(afterActs(view, one).answers).toEqual({ 0: "leftOut", 4: "leftOut" });
    const all = takenBack(view, acts, [0, 2, 4]);
    expect(all).toEqual([{ kind: "move", group: 3, stop: undefined }]);
    expect(placesOf(all)).toEqual([0, 1, 2, undefined]);
  });

  it("taken back put readings that were moved where they were proposed", () => {
    const acts: readonly Act[] = [{ kind: "move", group: 0, stop: 3 }];
    expect(afterActs(view, acts).answers).toEqual({ 0: "moved" });
    expect(takenBack(view, acts, [0])).toEqual([]);
  });
});

describe("a docking matched anew", () => {
  const stop = (spindleId: string) => ({ spindleId });
  const visit = (take: number, at: number) => ({
    takes: [take],
    meanN: 1,
    stop: at,
    factor: 1,
    confidence: "open",
    leftOut: false,
  });
  const unsure = (take: number, at: number) => ({
    code: "unsure",
    takes: [take],
    stops: [at],
    proposal: "fileAsShown",
  });
  type View = Parameters<typeof placedOf>[0];
  const before = {
    takes: [{}, {}, {}],
    stops: ["a", "b", "c"].map(stop),
    visits: [visit(0, 0), visit(1, 1), visit(2, 2)],
    questions: [unsure(0, 0), unsure(1, 1), unsure(2, 2)],
  } as unknown as View; // the members they look at
  const acts: readonly Act[] = [
    { kind: "answer", at: [0, 1, 2], said: "proposed" },
    { kind: "move", group: 2, stop: 1 },
    { kind: "move", group: 1, stop: 0 },
  ];

  it("keeps answers and moves that still have their place, by reading and spindle and not by position", () => {
    const after = {
      takes: before.takes,
      stops: ["b", "c"].map(stop), // the first one was taken out of the round
      visits: [visit(2, 1), visit(1, 0)],
      questions: [unsure(2, 1), unsure(1, 0)],
    } as unknown as View;
    expect(carriedOver(before, acts, after)).toEqual([
      { kind: "answer", at: [1, 0], said: "proposed" },
      { kind: "move", group: 0, stop: 0 },
    ]);
  });

  it("asks all again where readings were filed meanwhile", () => {
    expect(carriedOver(before, acts, { ...before, takes: before.takes.slice(1) })).toEqual([]);
  });
});
