import type { DockingView } from "../../../app/contract/roundViews.ts";
import type { Question } from "../../../app/round/match/RoundMatch.ts";

/** Readings that stay together, and where they are to go; `stop` undefined: left out. */
export type Group = {
  readonly takes: readonly number[];
  readonly stop: number | undefined;
  readonly factor: number;
  readonly confidence: "sure" | "likely" | "open";
};

export type Answer = "proposed" | "asStored" | "leftOut" | "moved";

/** The docking as the user has arranged it so far. */
export type Placed = {
  readonly groups: readonly Group[];
  /** By the question's position. */
  readonly answers: Readonly<Record<number, Answer>>;
};

/** What the core proposes: each visit at its stop, each reading that is in none of them left out on its own. */
export function placedOf(view: DockingView): Placed {
  const inVisit = new Set(view.visits.flatMap((v) => v.takes));
  return {
    groups: [
      ...view.visits.map(({ takes, stop, leftOut, factor, confidence }) => ({
        takes,
        stop: leftOut ? undefined : (stop ?? undefined),
        factor,
        confidence,
      })),
      ...view.takes.flatMap((_, i) =>
        inVisit.has(i) ? [] : [{ takes: [i], stop: undefined, factor: 1, confidence: "open" as const }],
      ),
    ],
    answers: {},
  };
}

/** Puts a group at another stop, or leaves it out; questions about it count as answered by that. */
export function move(placed: Placed, group: number, stop: number | undefined, questions: readonly Question[]): Placed {
  const moved = new Set(placed.groups[group]!.takes);
  const about = questions.flatMap((q, i) => (q.takes.every((t) => moved.has(t)) ? [i] : []));
  return {
    groups: placed.groups.map((g, i) => (i === group ? { ...g, stop } : g)),
    answers: {
      ...placed.answers,
      ...Object.fromEntries(about.map((i) => [i, stop === undefined ? "leftOut" : "moved"])),
    },
  };
}

/** Takes one answer to one question or to several alike; `proposed` is already how things stand. */
export function answer(placed: Placed, at: readonly number[], questions: readonly Question[], said: Answer): Placed {
  const answers = { ...placed.answers, ...Object.fromEntries(at.map((i) => [i, said])) };
  const about = new Set(at.flatMap((i) => questions[i]!.takes));
  const touched = (g: Group) => g.takes.some((t) => about.has(t));
  if (said === "leftOut")
    return { answers, groups: placed.groups.map((g) => (touched(g) ? { ...g, stop: undefined } : g)) };
  if (said !== "asStored") return { ...placed, answers };
  if (questions[at[0]!]?.code === "unitFactor")
    return { answers, groups: placed.groups.map((g) => (touched(g) ? { ...g, factor: 1 } : g)) };
  return { answers, groups: at.reduce((groups, i) => changedBack(groups, questions[i]!), placed.groups) };
}

/** The two spindles of a question, each with the other's readings again. */
function changedBack(groups: readonly Group[], { takes }: Question): readonly Group[] {
  const about = new Set(takes);
  const touched = (g: Group) => g.takes.some((t) => about.has(t));
  const [a, b] = [...new Set(groups.filter(touched).map((g) => g.stop))];
  const back = (g: Group) => (g.stop === a ? b : g.stop === b ? a : g.stop);
  return groups.map((g) => (touched(g) ? { ...g, stop: back(g) } : g));
}

/** What is filed, one filing a stop. `mixed`: readings of one stop are converted differently. */
export function filingsOf(view: DockingView, { groups }: Placed) {
  const byStop = Map.groupBy(
    groups.filter((g) => g.stop !== undefined),
    (g) => g.stop!, // just filtered
  );
  const filings = [...byStop].map(([stop, members]) => ({
    spindleId: view.stops[stop]!.spindleId,
    adapterId: view.stops[stop]!.adapterId ?? null,
    takes: members.flatMap((g) => g.takes).sort((x, y) => x - y),
    factor: members[0]!.factor,
  }));
  const mixed = [...byStop.values()].some((members) => members.some((g) => g.factor !== members[0]!.factor));
  return { filings, mixed, left: groups.filter((g) => g.stop === undefined).flatMap((g) => g.takes) };
}

/** What was asked and said, once for all that are alike, as it is filed. */
export function answersOf(view: DockingView, { answers }: Placed) {
  const alike = Map.groupBy(view.questions.keys(), (i) => `${view.questions[i]!.code} ${answers[i] ?? "none"}`);
  return [...alike.values()].map(([first, ...others]) => ({
    code: view.questions[first!]!.code,
    answer: answers[first!] ?? "none",
    ...(others.length === 0 ? {} : { count: others.length + 1 }),
  }));
}
