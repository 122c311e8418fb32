import { describe, expect, it } from "vitest";
import { conditions } from "../../../simulator/truth/conditions.ts";
import { drawStream } from "../../../simulator/truth/drawStream.ts";
import { renderStream } from "../../../simulator/truth/renderStream.ts";
import { detect, type Score, score } from "../../../simulator/truth/score.ts";
import { sweep, tally } from "../../../simulator/truth/sweep.ts";

/** A small draw of the truth bench; the whole one is `npm run bench -- cycles`. */
const scores: Score[] = conditions.flatMap((condition, i) =>
  sweep(condition, condition.cycles === undefined ? 4 : 1, 4_000_000 + 9973 * i),
);
const all = tally("all", scores);

describe("the truth bench, small draw", () => {
  it("holds enough to mean something", () => {
    expect(all.cycles).toBeGreaterThan(800);
  });

  it("has no cycle invented, and at most one in a thousand missed, split or joined, rounded up", () => {
    expect(all.invented).toBe(0);
    expect(all.missed + all.split + all.joined).toBeLessThanOrEqual(Math.ceil(all.cycles / 1000));
  });

  // The limits are the bench's, with room for the scatter of a draw twenty times smaller (three standard errors).
  it("finds forces and times within what is allowed", () => {
    expect(all.settledWithin).toBeGreaterThan(0.988);
    expect(all.peakWithin).toBeGreaterThan(0.988);
    expect(all.startWithin).toBeGreaterThan(0.988);
    expect(all.endWithin).toBeGreaterThan(0.988);
  });

  it("states an uncertainty that holds what it says", () => {
    expect(all.coverageMany).toBeGreaterThan(0.91);
    expect(all.coverageMany).toBeLessThan(0.985);
    expect(all.coverageFew).toBeGreaterThan(0.92);
  });

  it("finds the flags and sets few wrong ones", () => {
    expect(all.flagsFound).toBeGreaterThan(0.98);
    expect(all.flagsWrong).toBeLessThan(0.012);
  });

  it("comes out the same from the same seed", () => {
    const plan = () => renderStream(drawStream(conditions[0]!, 17));
    expect(score(plan(), detect(plan()))).toEqual(score(plan(), detect(plan())));
  });

  it("can fail: a detector that finds nothing misses everything, one that finds a ghost invents it", () => {
    const stream = renderStream(drawStream(conditions[0]!, 17));
    expect(score(stream, []).missed).toBe(stream.cycles.filter((t) => t.sure).length);
    const found = detect(stream);
    const ghost = { ...found[0]!, startS: 0.01, endS: 0.5 };
    expect(score(stream, [...found, ghost]).invented).toBe(1);
    const doubled = { ...found[0]!, settledN: 1.01 * found[0]!.settledN! };
    expect(score(stream, [doubled, ...found.slice(1)]).settled[0]).toBeGreaterThan(1);
  });
});
