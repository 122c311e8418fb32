import { readFileSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Failure } from "../../../app/contract/result.ts";
import type { Entry } from "../../../app/ledger/entry.ts";
import { may, type Right, type Role, roles } from "../../../app/people/rights.ts";
import { allEntries } from "../../../main/store/ledger/readEntry.ts";
import { openReader } from "../../../main/store/open.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";
import { jobEnded } from "../../support/jobEnded.ts";
import { ManualClock } from "../../support/ManualClock.ts";

let core: CoreInTemp;
let clock: ManualClock;
beforeEach(async () => {
  clock = new ManualClock();
  core = await coreInTemp({ clock });
});
afterEach(() => core.close());

const refusal = (call: Promise<unknown>): Promise<Failure | undefined> =>
  call.then(
    () => undefined,
    (cause: { failure: Failure }) => cause.failure,
  );
const person = async (name: string, role: Role) =>
  (await core.call("operators.save", { name, role, state: "inUse" })).operatorId;
const onShift = async (operatorId: string | null) => {
  const { seriesId } = (await core.call("state.snapshot")).draft;
  await core.call("series.tag", { seriesId, operatorId });
};
const entries = (): Entry[] => {
  const db = openReader(core.dataFile);
  try {
    return [...allEntries(db)];
  } finally {
    db.close();
  }
};
const acts = () =>
  entries()
    .filter((e): e is Entry<"act"> => e.kind === "act")
    .map((e) => e.body);

/** A works with people of every role; the keeper was made last, when nobody was there to ask. */
async function staffed() {
  const works = await smallWorks(core);
  const good = await fileTyped(core, works.spindleId, "18 kN");
  const stop = await fileTyped(core, works.spindleId, "9 kN");
  await new Promise((done) => setTimeout(done, 5)); // a stop is released with a later check
  const after = await fileTyped(core, works.spindleId, "18 kN", "afterService");
  const people: Record<Role, string> = {
    technician: await person("Tilda Reeve", "technician"),
    planner: await person("Paul Osterman", "planner"),
    lab: await person("Lara Quist", "lab"),
    keeper: await person("Kay Ashdown", "keeper"),
  };
  const spindle = (await core.call("spindles.list"))[0]!.spindle;
  const gauge = (await core.call("gauges.list"))[0]!.gauge;
  const adapter = (await core.call("adapters.list"))[0]!.adapter;
  const ids = { good: good.row.checkId, stop: stop.row.checkId, after: after.row.checkId };
  const reason = "as agreed on the floor";
  /** One call for each right, that would succeed but for the right. */
  const tries: Record<Right, () => Promise<unknown>> = {
    accept: async () => {
      const { draft } = await core.call("state.snapshot");
      await core.call("series.tag", { seriesId: draft.seriesId, spindleId: works.spindleId });
      await core.call("series.type", { seriesId: draft.seriesId, text: "18 kN" });
      return core.call("series.accept", { seriesId: draft.seriesId, spindleId: works.spindleId });
    },
    void: () => core.call("checks.void", { checkId: ids.good, reason }),
    limits: () => core.call("spindles.save", { ...spindle, limits: { ...spindle.limits, minimumN: 14_500 } }),
    releaseStop: () => {
      const released = { spindleId: works.spindleId, checkId: ids.after, reason };
      return onShiftNow === undefined
        ? Promise.reject(new Error("a release names its person"))
        : core.call("stop.release", { ...released, operatorId: onShiftNow });
    },
    proof: () => core.call("gauges.save", { ...gauge, dueOn: "2031-01-01" }),
    restore: () => core.call("records.import", { file: "/nowhere/archive.zip" }),
    people: () => core.call("operators.save", { name: "New Hand", role: "technician", state: "inUse" }),
  };
  let onShiftNow: string | undefined;
  const as = async (role: Role | undefined) => {
    onShiftNow = role && people[role];
    await onShift(onShiftNow ?? null);
  };
  return { ...works, people, tries, as, ids, reason, spindle, gauge, adapter };
}

describe("a works without a keeper", () => {
  it("lets one person do everything, with or without a name, whatever the role says", async () => {
    const { spindleId } = await smallWorks(core);
    const technician = await person("Tilda Reeve", "technician");
    const { row } = await fileTyped(core, spindleId, "18 kN");
    await onShift(technician);
    const spindle = (await core.call("spindles.list"))[0]!.spindle;
    await core.call("spindles.save", { ...spindle, limits: { minimumN: 12_000 } });
    await core.call("checks.void", { checkId: row.checkId, reason: "typed wrong" });
    expect(acts().map((act) => [act.what, act.operatorId])).toEqual([["limitsChanged", technician]]);
    expect(entries().findLast((e) => e.kind === "void")?.body).toMatchObject({ operatorId: technician });
  });

  it("files no act and no name where nobody is chosen", async () => {
    await smallWorks(core);
    const spindle = (await core.call("spindles.list"))[0]!.spindle;
    await core.call("spindles.save", { ...spindle, limits: { minimumN: 12_000 } });
    expect(acts()).toEqual([]);
  });

  it("has no PINs: nobody could reset one", async () => {
    const operatorId = await person("Tilda Reeve", "technician");
    expect(await refusal(core.call("people.setPin", { operatorId, pin: "1357" }))).toMatchObject({
      key: "people.needsKeeper",
    });
  });
});

describe("a works with a keeper", () => {
  it("lets those who set limits import old checks, which may become what later ones are compared with", async () => {
    const { as, spindle, people } = await staffed();
    const text = `Spindle,Date,Force_kN\n${spindle.name},2001-03-15,17.9\n`;
    const file = { what: "checks", fileName: "old.csv", base64: Buffer.from(text).toString("base64") } as const;
    await as("technician");
    expect(await refusal(core.call("register.import", file))).toMatchObject({
      key: "people.role",
      asks: { right: "limits" },
    });
    await as("planner");
    expect((await refusal(core.call("register.import", file)))?.asks).toBeUndefined();
    const filed = () => entries().find((entry) => entry.kind === "import")?.body;
    for (let i = 0; i < 2_000 && filed() === undefined; i += 1) await new Promise((done) => setTimeout(done, 5));
    expect(filed()).toMatchObject({ what: "checks", operatorId: people.planner });
  });

  it.each(roles)("lets a %s do what is its own and refuses the rest, saying whose it is", async (role) => {
    const { tries, as } = await staffed();
    await as(role);
    for (const right of Object.keys(tries) as Right[]) {
      const before = entries().length;
      const failure = await refusal(tries[right]());
      if (may(role, right)) {
        expect(failure?.asks, right).toBeUndefined();
        continue;
      }
      expect(failure, right).toMatchObject({ code: "refused", key: "people.role", asks: { what: "role", right } });
      expect(failure!.message).toContain(`not for a ${role}`);
      expect(entries(), right).toHaveLength(before);
    }
  });

  it("asks who it is where nobody is on shift", async () => {
    const { tries, as } = await staffed();
    await as(undefined);
    for (const right of ["accept", "void", "limits", "proof", "restore", "people"] as const)
      expect(await refusal(tries[right]())).toMatchObject({ asks: { what: "who", right } });
  });

  it("leaves open what needs no right: names, notes, new places without limits, reading", async () => {
    const { as, spindle, gauge } = await staffed();
    await as("technician");
    await core.call("spindles.save", { ...spindle, note: "door sticks" });
    await core.call("spindles.save", { name: "Mill 9", machine: "", area: "", taper: "", limits: {}, state: "inUse" });
    await core.call("gauges.save", { ...gauge, name: "Gauge 1b" });
    await core.call("gauges.save", { name: "Gauge 2", capacityN: 30_000, state: "inUse" });
    await core.call("spindles.fleet");
    const works = (await core.call("state.snapshot")).works;
    await core.call("works.save", { ...works, name: "Quarry Lane" });
    expect(await refusal(core.call("works.save", { ...works, actDrop: 0.3 }))).toMatchObject({
      asks: { what: "role", right: "limits" },
    });
  });

  it("files whose act it was", async () => {
    const { tries, as, people } = await staffed();
    await as("planner");
    for (const right of ["void", "limits", "releaseStop"] as const) await tries[right]();
    const filed = entries().slice(-4);
    expect(filed.map((e) => [e.kind, (e.body as { operatorId?: string }).operatorId])).toEqual([
      ["void", people.planner],
      ["spindle", undefined],
      ["act", people.planner],
      ["stopRelease", people.planner],
    ]);
    expect(acts().at(-1)).toMatchObject({
      what: "limitsChanged",
      detail: expect.stringContaining("minimumN 14400 to 14500"),
    });
  });

  it("lets somebody entitled do one act while another is on shift", async () => {
    const { tries, as, people } = await staffed();
    await as("technician");
    expect(await refusal(core.call("people.confirm", { operatorId: people.lab, right: "void" }))).toBeUndefined();
    await tries.void();
    expect(entries().at(-1)!.body).toMatchObject({ operatorId: people.lab });
    expect(await refusal(tries.limits())).toMatchObject({ asks: { what: "role", right: "limits" } });
    await core.call("people.confirm", { operatorId: people.planner, right: "limits" });
    await clock.advance(61_000);
    expect(await refusal(tries.limits())).toMatchObject({ asks: { what: "role" } }); // a minute is over
    expect(await refusal(core.call("people.confirm", { operatorId: people.technician, right: "void" }))).toMatchObject({
      key: "people.role",
    });
  });

  it("asks again who is on shift after twelve hours, and after a restart", async () => {
    const { tries, as } = await staffed();
    await as("technician");
    await tries.accept();
    await clock.advance(12 * 3_600_000);
    expect(await refusal(tries.accept())).toMatchObject({ asks: { what: "who" } });
    await as("technician");
    await tries.accept();
    await core.program.close();
    const again = await coreInTemp({ folder: core.folder, clock });
    const { draft } = await again.call("state.snapshot");
    expect(draft.tag.operatorId).toBeDefined();
    const { spindleId } = (await again.call("spindles.list"))[0]!.spindle;
    expect(await refusal(fileTyped(again, spindleId, "18 kN"))).toMatchObject({ asks: { what: "who" } });
    await again.close();
  });

  it("never loses its last keeper", async () => {
    const { as, people } = await staffed();
    await as("keeper");
    const keeper = { operatorId: people.keeper, name: "Kay Ashdown", state: "inUse" as const };
    const last = { key: "people.lastKeeper" };
    expect(await refusal(core.call("operators.save", { ...keeper, role: "planner" }))).toMatchObject(last);
    expect(await refusal(core.call("operators.save", { ...keeper, role: "keeper", state: "retired" }))).toMatchObject(
      last,
    );
    expect(await refusal(core.call("people.hide", { operatorId: people.keeper, how: "erase" }))).toMatchObject(last);
    await core.call("people.hide", { operatorId: people.keeper, how: "initials" });
    await core.call("operators.save", { operatorId: people.lab, name: "Lara Quist", role: "keeper", state: "inUse" });
    await core.call("operators.save", { ...keeper, role: "planner" });
    expect(
      acts()
        .filter((act) => act.what === "roleChanged")
        .map((act) => act.detail.split(": ")[1]),
    ).toEqual(["new to planner", "new to lab", "new to keeper", "lab to keeper", "keeper to planner"]);
  });

  it("does not obey keepers who only came along with others' records", async () => {
    const { spindleId } = await smallWorks(core);
    const elsewhere = await coreInTemp();
    await elsewhere.call("operators.save", { name: "Far Away", role: "keeper", state: "inUse" });
    const { jobId } = await elsewhere.call("records.export", { folder: elsewhere.folder, waveforms: false });
    const file = (await ended(elsewhere, jobId)) as { file: string };
    const { jobId: taken } = await core.call("records.import", { file: file.file });
    await ended(core, taken);
    await elsewhere.close();
    expect((await core.call("operators.list")).map(({ role, fullName }) => [role, fullName])).toEqual([
      ["keeper", undefined],
    ]);
    await fileTyped(core, spindleId, "18 kN"); // nobody is asked for
  });
});

describe("a PIN", () => {
  const withPin = async (role: Role = "planner") => {
    const staff = await staffed();
    await staff.as("keeper");
    await core.call("people.setPin", { operatorId: staff.people[role], pin: "1357" });
    await staff.as(role);
    return staff;
  };

  it("is asked for filing, holds for ten minutes after each filing, and is asked again", async () => {
    const { tries, people } = await withPin("technician");
    const wanted = { asks: { what: "pin", right: "accept", operatorId: people.technician } };
    expect(await refusal(tries.accept())).toMatchObject(wanted);
    await core.call("people.confirm", { operatorId: people.technician, right: "accept", pin: "1357" });
    for (let i = 0; i < 4; i += 1) {
      await tries.accept();
      await clock.advance(9 * 60_000);
    }
    await clock.advance(2 * 60_000);
    expect(await refusal(tries.accept())).toMatchObject(wanted);
  });

  it("is asked at every voiding, and a PIN given for filing is none for it", async () => {
    const { tries, people, ids, reason } = await withPin();
    await core.call("people.confirm", { operatorId: people.planner, right: "accept", pin: "1357" });
    await tries.accept();
    expect(await refusal(tries.void())).toMatchObject({ asks: { what: "pin", right: "void" } });
    await core.call("people.confirm", { operatorId: people.planner, right: "void", pin: "1357" });
    await tries.void();
    expect(await refusal(core.call("checks.void", { checkId: ids.stop, reason }))).toMatchObject({
      asks: { what: "pin", right: "void" },
    });
  });

  it("does not hold for the next person on shift, nor after the shift has ended", async () => {
    const { tries, as, people } = await withPin("technician");
    await core.call("people.confirm", { operatorId: people.technician, right: "accept", pin: "1357" });
    await tries.accept();
    await as("planner");
    await tries.accept();
    await as("technician");
    expect(await refusal(tries.accept())).toMatchObject({ asks: { what: "pin" } });
  });

  it("cannot be tried out: three wrong ones cost a wait, side by side too, and the right one does not help before", async () => {
    const { people } = await withPin();
    const confirm = (pin: string) =>
      refusal(core.call("people.confirm", { operatorId: people.planner, right: "void", pin }));
    const wrong = await Promise.all(["0000", "1111", "2222", "3333", "4444"].map(confirm));
    expect(wrong.map((failure) => failure?.key)).toEqual([
      "people.wrongPin",
      "people.wrongPin",
      "people.wrongPin",
      "people.wait",
      "people.wait",
    ]);
    expect((await confirm("1357"))?.message).toContain("Wait 30 seconds");
    await clock.advance(30_000);
    expect(await confirm("1357")).toBeUndefined();
  });

  it("is changed by whose it is with the old one, and reset by a keeper when it is forgotten", async () => {
    const { as, people } = await withPin();
    const operatorId = people.planner;
    expect(await refusal(core.call("people.setPin", { operatorId, pin: "8642" }))).toMatchObject({
      asks: { what: "role", right: "people" },
    });
    expect(await refusal(core.call("people.setPin", { operatorId, pin: "8642", oldPin: "0000" }))).toMatchObject({
      key: "people.wrongPin",
    });
    expect(await core.call("people.setPin", { operatorId, pin: "8642", oldPin: "1357" })).toMatchObject({
      hasPin: true,
    });
    await core.call("people.confirm", { operatorId, right: "void", pin: "8642" });
    await as("keeper");
    expect(await core.call("people.setPin", { operatorId, pin: null })).toMatchObject({ hasPin: false });
    expect(
      acts()
        .filter((act) => act.what === "pinSet")
        .map((act) => act.detail.split(": ")[1]),
    ).toEqual(["set by a keeper", "changed", "taken away by a keeper"]);
  });

  it.each(["123", "123456789", "12a4", " 1234", ""])("is not %j", async (pin) => {
    const { people } = await withPin();
    expect(await refusal(core.call("people.setPin", { operatorId: people.planner, pin }))).toMatchObject({
      code: "invalid",
    });
  });

  it("stands in no list, no push, no export and no log", async () => {
    const { as, people } = await withPin();
    await refusal(core.call("people.confirm", { operatorId: people.planner, right: "void", pin: "97531" }));
    await as("keeper");
    const { jobId } = await core.call("records.export", { folder: core.folder, waveforms: false });
    const { file } = (await ended(core, jobId)) as { file: string };
    const { unzipSync } = await import("fflate");
    const exported = Object.values(unzipSync(readFileSync(file))).map((bytes) => Buffer.from(bytes).toString("utf8"));
    const log = readFileSync(`${core.folder}/holdfast.log`, { flag: "a+" }).toString("utf8");
    const all = [JSON.stringify(core.pushes), JSON.stringify(await core.call("operators.list")), log, ...exported].join(
      "\n",
    );
    for (const secret of ["scrypt", "97531"]) expect(all).not.toContain(secret);
    for (const name of ["Tilda Reeve", "Paul Osterman"]) expect(exported.join("\n")).not.toContain(name);
    expect(
      entries()
        .map((e) => JSON.stringify(e))
        .join("\n"),
    ).not.toContain("scrypt");
  });
});

describe("a name", () => {
  it("can be replaced by initials or erased for good: not a byte of it is left, and the ledger holds", async () => {
    const { as, people } = await staffed();
    await as("keeper");
    expect(await core.call("people.hide", { operatorId: people.planner, how: "initials" })).toMatchObject({
      name: "PO",
      fullName: "PO",
    });
    expect(await core.call("people.hide", { operatorId: people.lab, how: "erase" })).toMatchObject({
      name: people.lab.slice(-4),
      fullName: undefined,
    });
    const bytes = () =>
      ["", "-wal"].map((rest) => readFileSync(core.dataFile + rest, { flag: "a+" }).toString("latin1")).join("");
    expect(bytes()).toContain("Tilda Reeve");
    expect(bytes()).not.toContain("Paul Osterman");
    expect(bytes()).not.toContain("Lara Quist");
    const { jobId } = await core.call("records.verify");
    expect(await ended(core, jobId)).toMatchObject({ damaged: [] });
    expect(
      acts()
        .slice(-2)
        .map((act) => [act.what, act.operatorId]),
    ).toEqual([
      ["nameErased", people.keeper],
      ["nameErased", people.keeper],
    ]);
  });

  it("is shown as initials on a PC that says so, and can still be edited", async () => {
    await person("Tilda Reeve", "technician");
    await core.call("settings.save", { initials: true });
    expect((await core.call("operators.list"))[0]).toMatchObject({ name: "TR", fullName: "Tilda Reeve" });
    const { operatorId } = (await core.call("operators.list"))[0]!;
    await core.call("operators.save", {
      operatorId,
      name: "Tilda Reeve",
      initials: "TiRe",
      role: "technician",
      state: "inUse",
    });
    expect((await core.call("operators.list"))[0]).toMatchObject({ name: "TiRe" });
  });
});

const ended = async (where: CoreInTemp, jobId: string): Promise<unknown> => (await jobEnded(where, jobId)).result;
