import type { Works } from "../../../app/ledger/register.ts";
import type { RuleName } from "../../../app/verdict/Judgement.ts";
import { figureText, parseNumber } from "../../words/parseNumber.ts";

/** The works' form as it is being filled in. Shares stand in percent. */
export type WorksDraft = {
  readonly name: string;
  readonly timeZone: string;
  readonly unitShown: string;
  readonly intervalDays: string;
  readonly rule: RuleName;
  readonly coverageFactor: string;
  readonly guardFactor: string;
  readonly threshold: string;
  readonly caution: string;
  readonly act: string;
  /** What enters every budget where nothing better is known; empty: a default nobody has confirmed. */
  readonly unprovedShare: string;
  readonly driftPerYear: string;
  readonly perKelvin: string;
  readonly misalignment: string;
  /** The laboratory's own text; empty: reports of proofs say that they are no accredited certificate. */
  readonly accreditation: string;
};

export const assumptionNames = ["unprovedShare", "driftPerYear", "perKelvin", "misalignment"] as const;

const text = (value: number | undefined) => figureText(value, 6);

export function worksDraftOf(works: Works): WorksDraft {
  return {
    name: works.name,
    timeZone: works.timeZone,
    unitShown: works.unitShown,
    intervalDays: String(works.intervalDays),
    rule: works.rule.rule,
    coverageFactor: text(works.rule.coverageFactor),
    guardFactor: text(works.rule.guardFactor),
    threshold: text(works.rule.threshold && works.rule.threshold * 100),
    caution: text(works.cautionDrop * 100),
    act: text(works.actDrop * 100),
    ...assumptionTexts(works),
    accreditation: works.accreditation ?? "",
  };
}

function assumptionTexts({ assumptions }: Works): Pick<WorksDraft, (typeof assumptionNames)[number]> {
  const percent = (name: (typeof assumptionNames)[number]) => text(times100(assumptions?.[name]));
  return {
    unprovedShare: percent("unprovedShare"),
    driftPerYear: percent("driftPerYear"),
    perKelvin: percent("perKelvin"),
    misalignment: percent("misalignment"),
  };
}

const times100 = (share: number | undefined) => share && share * 100;

/** Least and greatest of each figure; an empty one of the rule's own takes its default. */
export const worksRanges = {
  intervalDays: [1, 3650],
  coverageFactor: [1, 5],
  guardFactor: [0, 3],
  threshold: [50.1, 99.9],
  caution: [0, 100],
  act: [0, 100],
  unprovedShare: [0.001, 20],
  driftPerYear: [0.001, 20],
  perKelvin: [0.001, 20],
  misalignment: [0.001, 20],
} as const;
export type WorksFigure = keyof typeof worksRanges;
const mayBeEmpty: readonly WorksFigure[] = ["coverageFactor", "guardFactor", "threshold", ...assumptionNames];

type WorksFault = {
  readonly field: WorksFigure | "name" | "timeZone";
  readonly what: "range" | "needed" | "order" | "zone";
};

export function worksFaults(draft: WorksDraft): readonly WorksFault[] {
  const faults: WorksFault[] = [];
  if (draft.name.trim() === "") faults.push({ field: "name", what: "needed" });
  if (!isTimeZone(draft.timeZone)) faults.push({ field: "timeZone", what: "zone" });
  for (const field of Object.keys(worksRanges) as WorksFigure[]) {
    const value = parseNumber(draft[field]);
    if (value === undefined && mayBeEmpty.includes(field)) continue;
    const [low, high] = worksRanges[field];
    const whole = field !== "intervalDays" || Number.isInteger(value);
    if (typeof value !== "number" || value < low || value > high || !whole) faults.push({ field, what: "range" });
  }
  const [caution, act] = [parseNumber(draft.caution), parseNumber(draft.act)];
  if (typeof caution === "number" && typeof act === "number" && act < caution)
    faults.push({ field: "act", what: "order" });
  return faults;
}

function isTimeZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
    return zone !== "";
  } catch {
    return false;
  }
}

/** @throws RangeError  a form with faults */
export function worksOf(draft: WorksDraft, before: Works): Works {
  if (worksFaults(draft).length > 0) throw new RangeError("worksOf requires a form without faults");
  const figure = (field: WorksFigure) => {
    const value = parseNumber(draft[field]);
    return typeof value === "number" ? value : undefined;
  };
  const [k, r, threshold] = [figure("coverageFactor"), figure("guardFactor"), figure("threshold")];
  return {
    worksId: before.worksId,
    name: draft.name.trim(),
    timeZone: draft.timeZone,
    unitShown: draft.unitShown,
    intervalDays: figure("intervalDays") ?? before.intervalDays,
    rule: {
      rule: draft.rule,
      ...(k === undefined ? {} : { coverageFactor: k }),
      ...(r === undefined ? {} : { guardFactor: r }),
      ...(threshold === undefined ? {} : { threshold: threshold / 100 }),
    },
    cautionDrop: (figure("caution") ?? 10) / 100,
    actDrop: (figure("act") ?? 20) / 100,
    ...assumptionsOf(figure),
    ...(draft.accreditation.trim() === "" ? {} : { accreditation: draft.accreditation.trim().slice(0, 2_000) }),
  };
}

function assumptionsOf(figure: (field: WorksFigure) => number | undefined): Pick<Works, "assumptions"> {
  const given = assumptionNames.flatMap((name) => {
    const value = figure(name);
    return value === undefined ? [] : [[name, value / 100] as const];
  });
  return given.length === 0 ? {} : { assumptions: Object.fromEntries(given) };
}
