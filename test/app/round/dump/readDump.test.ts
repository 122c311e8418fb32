import { describe, expect, it } from "vitest";
import { learnDump } from "../../../../app/round/dump/learnDump.ts";
import { readDump } from "../../../../app/round/dump/readDump.ts";
import type { StoredReading } from "../../../../simulator/memory/GaugeMemory.ts";
import { invented } from "../../../support/aCheck.ts";
import { memoryDumps } from "../../../support/memoryDumps.ts";

const CLOCK = Date.parse("2026-03-20T14:00:00Z");

/** What a gauge holds after a round of `n` visits. */
const filled = (n = 24): readonly StoredReading[] =>
  Array.from({ length: n }, (_, i) => ({
    number: i + 1,
    forceN: 12_000 + 370 * i,
    unit: "kN",
    clockMs: CLOCK - (n - i) * 300_000,
    location: 1 + (i % 20),
    held: i % 3 > 0,
  }));
const dump = (form: keyof typeof memoryDumps, n = 24) => memoryDumps[form](filled(n), CLOCK).join("");
/** The lines that `lost` takes out, and a live reading between where `live` says. */
function troubled(form: keyof typeof memoryDumps, chances: { lost?: number; live?: number }, seed: number): string {
  const next = invented(seed);
  const { lost = 0, live = 0 } = chances;
  return memoryDumps[form](filled(), CLOCK)
    .flatMap((line) => [...(next() < lost ? [] : [line]), ...(next() < live ? ["     0.02 kN\r\n"] : [])])
    .join("");
}
const learned = (text: string, hints = {}) => learnDump(text, hints).format!;
const steps = { list: 1_000, columns: 60_000, blocks: 1_000, table: 1_000, checked: 1_000, newestFirst: 60_000 };
const forms = Object.keys(memoryDumps) as (keyof typeof memoryDumps)[];

describe.each(forms)("a memory in the form %s", (form) => {
  const text = dump(form);
  const order = form === "newestFirst" ? [...filled()].reverse() : filled();

  it("is learned and read to the last figure, without a question", () => {
    const { format, undecided } = learnDump(text);
    const reading = readDump(text, format!);
    expect(undecided).toEqual([]);
    expect(reading.records.map((r) => r.valueN)).toEqual(order.map((s) => s.forceN));
    expect(reading).toMatchObject({ rejected: [], incomplete: false, tooMany: false });
  });

  it("gives back the gauge's own times, to what it sends of them", () => {
    const reading = readDump(text, learned(text));
    const step = steps[form];
    expect(reading.records.map((r) => r.gaugeMs)).toEqual(order.map((s) => Math.floor(s.clockMs / step) * step));
    if (["list", "table", "checked"].includes(form)) expect(reading.gaugeNowMs).toBe(CLOCK);
  });

  it("gives back location and kind where it sends them", () => {
    const { records } = readDump(text, learned(text));
    const located = !["checked", "newestFirst"].includes(form);
    expect(records.map((r) => r.location)).toEqual(order.map((s) => (located ? String(s.location) : undefined)));
    if (!["checked", "columns"].includes(form))
      expect(records.map((r) => r.kind)).toEqual(order.map((s) => (s.held ? "held" : "live")));
  });

  it("is read in spite of live readings between its lines", () => {
    if (form === "blocks") return; // a line between belongs to the block: it cannot be told from a further line of it
    const mixed = troubled(form, { live: 0.3 }, 3);
    expect(mixed).toContain("0.02 kN");
    expect(readDump(mixed, learned(text)).records.map((r) => r.valueN)).toEqual(order.map((s) => s.forceN));
  });

  it("is read in ten thousand records and no more", () => {
    const reading = readDump(dump(form, 10_050), learned(text));
    expect(reading.records).toHaveLength(10_000);
    expect(reading.tooMany).toBe(true);
  });

  it("read when empty holds nothing", () => {
    expect(readDump(dump(form, 0), learned(text)).records).toEqual([]);
  });
});

describe("a damaged dump", () => {
  it.each(["list", "columns", "table", "checked", "newestFirst"] as const)(
    "in the form %s with lines lost says so",
    (form) => {
      const lossy = readDump(troubled(form, { lost: 0.2 }, 5), learned(dump(form)));
      expect(lossy.records.length).toBeLessThan(24);
      expect(lossy.incomplete).toBe(true);
    },
  );

  it("cut in the middle of a record keeps what was whole, and says it is not all", () => {
    const text = dump("table");
    const cut = readDump(text.slice(0, 500), learned(text));
    expect(cut.incomplete).toBe(true);
    expect(cut.records.map((r) => r.valueN)).toEqual(
      filled()
        .map((s) => s.forceN)
        .slice(0, cut.records.length),
    );
  });

  it("has a line with a wrong check rejected, not read", () => {
    const text = dump("checked");
    const spoiled = text.replace(",1200,", ",1900,");
    const reading = readDump(spoiled, learned(text));
    expect(reading.rejected).toEqual([expect.objectContaining({ line: 2, why: "checksum" })]);
    expect(reading.records).toHaveLength(23);
    expect(reading.incomplete).toBe(true);
  });
});

describe("a file of readings", () => {
  it("with heads in any order, quoted cells and a machine's name as location", () => {
    const file =
      'Datum;Uhrzeit;Ort;Kraft;Einheit\r\n13.03.2026;08:05;"Mühle; links";17,92;kN\r\n13.03.2026;08:11;Nord;22,10;kN\r\n';
    const reading = readDump(file, learned(file));
    expect(reading.records.map((r) => [r.location, r.valueN])).toEqual([
      ["Mühle; links", 17_920],
      ["Nord", 22_100],
    ]);
  });

  it("asks which is the day when every date can be read both ways, and keeps the answer", () => {
    const file = "1,03/04/2026,08:05,17.92,kN\n2,03/05/2026,08:10,18.02,kN\n";
    expect(learnDump(file).undecided).toEqual([expect.objectContaining({ field: "dateOrder", proposal: "dmy" })]);
    const mdy = readDump(file, learned(file, { dateOrder: "mdy" })).records[0]!;
    const dmy = readDump(file, learned(file, { dateOrder: "dmy" })).records[0]!;
    expect(mdy.gaugeMs).toBe(Date.parse("2026-03-04T08:05:00Z"));
    expect(dmy.gaugeMs).toBe(Date.parse("2026-04-03T08:05:00Z"));
  });

  it("asks for the unit when there is none, and about a mass", () => {
    expect(learnDump("1;08:05;17.92\n2;08:10;18.02\n").undecided.map((q) => q.field)).toContain("unit");
    expect(learnDump("1;08:05;17.92 kg\n2;08:10;18.02 kg\n").undecided[0]).toMatchObject({
      field: "unit",
      proposal: "kgf",
    });
  });

  it("keeps a torque as refused and an overload as no force", () => {
    const file = "1;08:05;17.92;kN\n2;08:10;18.02;Nm\n3;08:12;OL;kN\n4;08:15;18.40;kN\n";
    expect(readDump(file, learned(file)).records.map((r) => r.refused)).toEqual([
      undefined,
      "torque",
      "overload",
      undefined,
    ]);
  });

  // ISO 8601: 24:00 is the end of its day; RFC 3339 section 5.7: February has no 31st.
  it("keeps a reading whose date is none, without a time, and takes 24:00 as the end of the day", () => {
    const file = "1;31.02.2026;08:05;17.92;kN\n2;13.03.2026;24:00;18.02;kN\n3;14.03.26;00:01;18.05;kN\n";
    const [none, midnight, short] = readDump(file, learned(file)).records;
    expect(none).toMatchObject({ badDate: true, gaugeMs: undefined, valueN: 17_920, stamp: "31.02.2026 08:05" });
    expect(midnight!.gaugeMs).toBe(Date.parse("2026-03-14T00:00:00Z"));
    expect(short!.gaugeMs).toBe(Date.parse("2026-03-14T00:01:00Z"));
  });

  it("with columns named by the user is read as they say", () => {
    const file = "17.92;4;3\n18.02;4;9\n";
    const format = learned(file, { unit: "kN", columns: { 0: "force", 1: "ignored", 2: "location" } });
    expect(readDump(file, format).records.map((r) => r.location)).toEqual(["3", "9"]);
  });

  it("that holds no readings gives no format", () => {
    expect(learnDump("Dear all,\nplease find attached\n").format).toBeUndefined();
    expect(learnDump("").format).toBeUndefined();
  });
});
