import { describe, expect, it } from "vitest";
import { freshRecords, type StoredReading } from "../../../../app/round/memory/freshRecords.ts";

const stamped = (minute: number, figure = `${10 + minute / 100} kN`): StoredReading => ({
  figure,
  stamp: `2026-03-02 08:${String(minute).padStart(2, "0")}`,
  location: undefined,
  kind: "held",
});
const bare = (figure: number): StoredReading => ({
  figure: `${figure} kN`,
  stamp: undefined,
  location: undefined,
  kind: undefined,
});
const day = [1, 2, 3, 4, 5, 6].map((m) => stamped(m));
const figures = [17.9, 22.1, 9.8, 22.1, 30.4, 12].map(bare);

describe("a memory docked again", () => {
  it.each([
    ["with stamps", day],
    ["without stamps", figures],
  ])("%s adds nothing", (_, memory) => {
    expect(freshRecords(memory, memory)).toEqual({ fresh: [], known: 6, doubtful: false });
  });

  it.each([
    ["with stamps", day],
    ["without stamps", figures],
  ])("%s that grew adds what is new, also when its oldest are gone", (_, memory) => {
    expect(freshRecords(memory.slice(0, 4), memory).fresh).toEqual([4, 5]);
    expect(freshRecords(memory.slice(0, 5), memory.slice(1)).fresh).toEqual([4]);
  });

  it("keeps two readings of one minute and figure apart by their count", () => {
    expect(freshRecords([stamped(1)], [stamped(1), stamped(1)]).fresh).toEqual([1]);
  });

  it("finds readings lost on the line the last time, and asks where no stamp proves it", () => {
    expect(
      freshRecords(
        day.filter((_, i) => i !== 2),
        day,
      ),
    ).toEqual({ fresh: [2], known: 5, doubtful: false });
    expect(
      freshRecords(
        figures.filter((_, i) => i !== 2),
        figures,
      ),
    ).toEqual({ fresh: [2], known: 5, doubtful: true });
  });

  it("takes a memory that was cleared and filled anew as new", () => {
    const next = [18.1, 21.9, 10, 22.3].map(bare);
    expect(freshRecords(figures, next)).toEqual({ fresh: [0, 1, 2, 3], known: 0, doubtful: false });
  });

  it("asks when one figure alone agrees", () => {
    expect(freshRecords(figures, [12, 18.1, 21.9].map(bare))).toEqual({ fresh: [1, 2], known: 1, doubtful: true });
  });

  it("of one or two readings without stamps that equal the last ones is taken as known, and said to be in doubt", () => {
    for (const count of [1, 2])
      expect(freshRecords(figures, figures.slice(-count))).toEqual({ fresh: [], known: count, doubtful: true });
    expect(freshRecords(figures, figures.slice(-3))).toEqual({ fresh: [], known: 3, doubtful: false });
    expect(freshRecords(day, day.slice(-1))).toEqual({ fresh: [], known: 1, doubtful: false }); // its stamp proves it
  });

  it("takes all of a first docking, and nothing of an empty memory", () => {
    expect(freshRecords([], figures).fresh).toHaveLength(6);
    expect(freshRecords(figures, []).fresh).toEqual([]);
  });
});
