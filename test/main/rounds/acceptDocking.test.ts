import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import type { RoundView } from "../../../app/contract/roundViews.ts";
import { acceptDocking, Overtaken } from "../../../main/rounds/acceptDocking.ts";
import { type DockingRequest, toDockingView } from "../../../main/rounds/DockingWork.ts";
import { packWork, unpackWork } from "../../../main/rounds/packWork.ts";
import { readDocking } from "../../../main/rounds/readDocking.ts";
import { openStore } from "../../../main/store/open.ts";
import { readCheck } from "../../../main/store/records/checks.ts";
import { readWorks } from "../../../main/store/records/works.ts";
import type { Store } from "../../../main/store/Store.ts";
import { worksOutOfTheBox } from "../../../main/worksOutOfTheBox.ts";
import { coreInTemp } from "../../support/coreInTemp.ts";
import { roundWorks } from "../../support/roundWorks.ts";

let folder: string;
let store: Store;
let round: RoundView;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "holdfast-accept-"));
  const core = await coreInTemp({ folder });
  const { spindleIds } = await roundWorks(core);
  const stops = spindleIds.map((spindleId) => ({ spindleId }));
  const on = (await core.call("rounds.due")).today;
  round = await core.call("rounds.save", { name: "r", on, made: "byHand", stops });
  await core.close();
  store = openStore({ path: core.dataFile, now: Date.now });
});
afterEach(() => {
  store.close();
  rmSync(folder, { recursive: true, force: true });
});

/** A docking of one reading for each stop, read and packed as it comes out of its thread. */
function docked() {
  const request: DockingRequest = {
    dockingId: store.newId(),
    roundId: round.roundId,
    gaugeId: undefined,
    formatId: undefined,
    source: "file",
    fileName: "m.txt",
    text: round.stops.map((s, i) => `${i + 1};${s.location};${(s.expectedN! / 1000).toFixed(2)};kN\n`).join(""),
    allNew: false,
    hints: { columns: { 1: "location" } },
    gaugeNowMs: undefined,
    pcMs: Date.now(),
    typed: undefined,
  };
  const works = readWorks(store.db) ?? worksOutOfTheBox(round.roundId);
  const work = readDocking(request, { db: store.db, works, nowMs: Date.now(), progress: () => {}, goOn: () => {} });
  const packed = packWork(work);
  const input = {
    dockingId: request.dockingId,
    filings: packed.view.visits.map((v) => ({
      spindleId: packed.view.stops[v.stop!]!.spindleId,
      adapterId: null,
      takes: [...v.takes],
      factor: 1,
    })),
    leftOut: [],
    answers: [],
  };
  return { input, works, work, unpacked: unpackWork(packed, request) };
}

it("comes out of its thread as it went in", () => {
  const { work, unpacked } = docked();
  expect(unpacked).toEqual(work);
  expect(toDockingView(unpacked)).toEqual(toDockingView(work));
});

it("overtaken by another filing, nothing of it stands, and the second try files it", () => {
  const { input, works, unpacked } = docked();
  const facts = { works, nowMs: Date.now() + 1_000, version: "0" };
  const overtaken = new Proxy(store, {
    get(target, name) {
      if (name === "append")
        return (...args: Parameters<Store["append"]>) => {
          target.append([{ kind: "setting", body: { key: "of another connection", value: 1 } }]);
          return target.append(...args);
        };
      const member: unknown = Reflect.get(target, name);
      return typeof member === "function" ? member.bind(target) : member;
    },
  });
  const before = store.lastPlace();
  expect(() => acceptDocking(input, unpacked, { ...facts, store: overtaken })).toThrow(Overtaken);
  expect(store.lastPlace()).toBe(before + 1); // the other's
  const { checks, again } = acceptDocking(input, unpacked, { ...facts, store });
  expect({ filed: checks.length, again }).toEqual({ filed: round.stops.length, again: false });
  expect(acceptDocking(input, unpacked, { ...facts, store })).toMatchObject({ checks, again: true });
});

it("a reading whose date does not exist is filed with the docking's time, and the check says that its clock was in doubt", () => {
  const { input, works, work } = docked();
  const records = work.records.map((record, i) => ({ ...record, badDate: i === 0 }));
  const { checks } = acceptDocking(
    input,
    { ...work, records },
    { works, nowMs: Date.now() + 1_000, version: "0", store },
  );
  const filed = input.filings.map(({ takes }, i) => {
    const { check } = readCheck(store.db, checks[i]!.checkId)!;
    return { bad: takes.includes(0), clockDoubtful: check.clockDoubtful, at: Date.parse(check.measuredAt) };
  });
  expect(filed.map(({ clockDoubtful }) => clockDoubtful)).toEqual(filed.map(({ bad }) => bad));
  expect(filed.find(({ bad }) => bad)!.at).toBe(work.request.pcMs);
});
