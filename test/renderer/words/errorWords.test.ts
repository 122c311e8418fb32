import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import type { TakeRefusal } from "../../../app/contract/proofViews.ts";
import type { ErrorCode } from "../../../app/contract/result.ts";
import type { Draft } from "../../../app/contract/seriesViews.ts";
import type { ZeroRefusal } from "../../../app/cycle/phase/steadyZero.ts";
import type { PlanProblem } from "../../../app/proof/plan/planProblems.ts";
import type { ParsedForce } from "../../../app/quantity/parseForce.ts";
import type { LinkProblemCode } from "../../../main/link/LinkProblem.ts";
import { refusals } from "../../../main/people/refusals.ts";
import type { StoreFault } from "../../../main/store/StoreError.ts";
import { errorWords, germanCodes, germanErrors } from "../../../renderer/words/errorWords.ts";
import { createSpeech } from "../../../renderer/words/Speech.ts";

const root = resolve(import.meta.dirname, "../../..");
const sources = ["main", "app"].flatMap((room) =>
  readdirSync(join(root, room), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(".ts"))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), "utf8")),
);
const throwing = sources.filter((text) => /\bAppError\b|\bFailure\b/.test(text));
const found = (pattern: RegExp, texts = throwing) =>
  new Set(texts.flatMap((text) => [...text.matchAll(pattern)].map((m) => m[1]!)));

/** A member that is added to one of these does not compile here before it stands in its list. */
const all = <K extends string>(members: Readonly<Record<K, true>>) => Object.keys(members);
const families: Readonly<Record<string, readonly string[]>> = {
  force: all<Exclude<ParsedForce["kind"], "force" | "bare">>({ mass: true, torque: true, unreadable: true }),
  cannotFile: all<NonNullable<Draft["cannotFile"]>>({
    nothingMeasured: true,
    noSpindle: true,
    noGauge: true,
    blocked: true,
    reasonWanted: true,
    readOnly: true,
  }),
  zero: all<ZeroRefusal>({ noReadings: true, moving: true, loaded: true, overload: true, held: true }),
  store: all<StoreFault>({
    locked: true,
    busy: true,
    newer: true,
    damaged: true,
    networkShare: true,
    readOnly: true,
    full: true,
    notFound: true,
    demoMismatch: true,
    conflict: true,
  }),
  link: all<LinkProblemCode>({
    portGone: true,
    portUnknown: true,
    portBusy: true,
    portForbidden: true,
    driverMissing: true,
    settingRefused: true,
    hostUnknown: true,
    refused: true,
    timeout: true,
    noAnswer: true,
    fileUnreadable: true,
    simulatorFailed: true,
    spoolFailed: true,
    aborted: true,
    linkFault: true,
  }),
  proof: all<TakeRefusal>({
    notNext: true,
    putDown: true,
    finished: true,
    notSteady: true,
    waiting: true,
    overload: true,
    linkLost: true,
    aboveCapacity: true,
    offTarget: true,
    notUnloaded: true,
    sameLoadTwice: true,
    reasonMissing: true,
    neverTaken: true,
    notPutDown: true,
    noLink: true,
    noReferenceLink: true,
    tooFewReadings: true,
    otherGauge: true,
  }),
  plan: all<PlanProblem["code"]>({
    noLoads: true,
    loadsNotRising: true,
    sameLoadTwice: true,
    aboveGaugeCapacity: true,
    aboveReferenceCapacity: true,
    noRuns: true,
    runTwice: true,
    tooFewRuns: true,
    tooFewPositions: true,
    noRepeat: true,
    noReversibilityOrCreep: true,
    tooFewLoads: true,
    referencePastDue: true,
    badTimes: true,
    notOnRig: true,
  }),
  "proof.no": ["gauge", "adapter", "reference"],
  "proof.retired": ["gauge", "adapter", "reference"],
  // Called with a text of its own in one file each: read from there.
  twin: [...found(/\brefuseTwin\([^;]*?"(\w+)",\s*[`"]/gs)],
  reference: [
    ...found(
      /\brefusal\(\s*"(\w+)",/g,
      sources.filter((text) => /`reference\.\$\{key\}`/.test(text)),
    ),
  ],
};

describe("words for what the core refuses", () => {
  const german = createSpeech("de", "de-DE");
  const english = createSpeech("en", "en-GB");

  it("finds the keys in the sources", () => {
    expect(found(/\bkey:\s*"([^"]+)"/g).size).toBeGreaterThan(50);
    expect(families.twin!.length).toBeGreaterThan(0);
    expect(families.reference!.length).toBeGreaterThan(5);
  });

  it("stand in German for every key that is written out", () => {
    expect([...found(/\bkey:\s*"([^"]+)"/g)].filter((key) => germanErrors[key] === undefined)).toEqual([]);
  });

  it("stand in German for every member of every family of keys, and no family is unknown here", () => {
    const prefixes = found(/\bkey:\s*`([\w.]+)\.\$\{/g);
    expect([...prefixes].filter((prefix) => families[prefix] === undefined)).toEqual([]);
    const keys = Object.entries(families).flatMap(([family, members]) => members.map((one) => `${family}.${one}`));
    expect(keys.filter((key) => germanErrors[key] === undefined)).toEqual([]);
  });

  it("are given for a failure without a key by its code, in each language", () => {
    const codes = Object.keys(germanCodes) as ErrorCode[]; // its own keys
    for (const code of codes) {
      const failure = { code, message: "It is not to be." };
      expect(errorWords(failure, german)).toBe(germanCodes[code]);
      expect(errorWords(failure, english)).toBe("It is not to be.");
      expect(errorWords({ ...failure, key: "aKeyNobodyKnows" }, german)).toBe(germanCodes[code]);
    }
  });

  it("name in German the seconds that are to be waited after too many wrong PINs, as in English", () => {
    const refused = refusals.wait(29_400);
    expect(errorWords(refused, english)).toMatch(/Wait 30 seconds/);
    expect(errorWords(refused, german)).toMatch(/^Zu viele falsche PINs\. 30 Sekunden warten/);
  });

  it("have a figure for every place holder: each that stands in German words is given with its key", () => {
    const holders = Object.entries(germanErrors).flatMap(([key, words]) =>
      [...words.matchAll(/\{(\w+)\}/g)].map(([, name]) => [key, name] as const),
    );
    expect(holders.length).toBeGreaterThan(0);
    for (const [key, name] of holders)
      expect(
        throwing.some((text) => new RegExp(`"${key}",\\s*figures: \\{[^}]*\\b${name}\\b`).test(text)),
        key,
      ).toBe(true);
  });

  it("are said in English with every refusal", () => {
    const empty = throwing.filter((text) => /new AppError\(\s*"\w+",\s*(""|``)/.test(text));
    expect(empty).toEqual([]);
  });
});
