import type { ChangedCheck } from "../../app/contract/recordViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Verdict } from "../../app/verdict/Judgement.ts";
import { rejudge } from "../../app/verdict/rejudge.ts";
import { termsOf } from "../../app/verdict/termsOf.ts";
import type { Db } from "../store/db.ts";
import { type Judgeable, judgeable } from "../store/records/judgeable.ts";
import { registered } from "../store/records/register.ts";

/** What threads that re-judge together share. */
export type RejudgeWork = {
  /** One 32-bit number: which stretch is to be taken next. */
  readonly next: SharedArrayBuffer;
  /** First places of the stretches, and the end of the last one. */
  readonly places: readonly number[];
  readonly works: Works;
};

/** What one thread has found. `counts` by "filed today". */
export type RejudgedPart = {
  readonly counts: Readonly<Record<string, number>>;
  readonly changed: readonly ChangedCheck[];
  readonly changedCount: number;
  readonly notJudged: number;
};

/** So many changed checks are listed; the counts are of all. */
export const LISTED = 1_000;

/** Takes stretches of checks until none is left and says of each check what today's limits and rules would say. */
export function rejudgeStretches(
  db: Db,
  { next, places, works }: RejudgeWork,
  watch: { readonly goOn: () => void; readonly progress: (done: number, total: number) => void },
): RejudgedPart {
  const spindles = new Map(registered(db, "spindle").map((s) => [s.spindleId, termsOf(s, works)]));
  const counter = new Int32Array(next);
  const counts: Record<string, number> = {};
  const changed: ChangedCheck[] = [];
  let notJudged = 0;
  for (let i = Atomics.add(counter, 0, 1); i < places.length - 1; i = Atomics.add(counter, 0, 1)) {
    watch.goOn();
    for (const check of judgeable(db, places[i]!, places[i + 1]!)) {
      const terms = spindles.get(check.spindleId);
      const today = terms && quietly(() => rejudge(check.figures, terms, "untold"));
      if (today === undefined) {
        notJudged += 1;
        continue;
      }
      const key = `${check.verdict} ${today.verdict}`;
      counts[key] = (counts[key] ?? 0) + 1;
      if (today.verdict !== check.verdict) changed.push(changedCheck(check, today));
    }
    watch.progress(i + 1, places.length - 1);
  }
  return { counts, changed: gravest(changed), changedCount: changed.length, notJudged };
}

/** The gravest of today's answers first, of equal ones the newest. */
export function gravest(changed: readonly ChangedCheck[]): ChangedCheck[] {
  return changed
    .toSorted((a, b) => order.indexOf(a.today) - order.indexOf(b.today) || b.measuredAtMs - a.measuredAtMs)
    .slice(0, LISTED);
}

const order: readonly Verdict[] = ["stop", "act", "cannotTell", "watch", "good"];

function changedCheck(
  { checkId, spindleId, measuredAtMs, verdict, figures }: Judgeable,
  today: ReturnType<typeof rejudge>,
): ChangedCheck {
  return {
    checkId,
    spindleId,
    measuredAtMs,
    valueN: figures.valueN ?? undefined,
    filed: verdict,
    today: today.verdict,
    reason: today.reasons[0],
  };
}

/** A check from elsewhere may hold figures no judgement takes; it is counted, and stops nobody. */
function quietly<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (cause) {
    if (cause instanceof RangeError) return undefined;
    throw cause;
  }
}
