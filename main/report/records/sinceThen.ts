import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { type Db, prepared } from "../../store/db.ts";

/** What became of a spindle since a day. */
export type Moved = {
  readonly before: Verdict | undefined;
  readonly now: Verdict | undefined;
  readonly checks: number;
};

/** Each spindle's last verdict before an instant and now, among checks that count, and how many were measured since. */
export function sinceThen(db: Db, thenMs: number): Map<string, Moved> {
  const rows = prepared<{ spindle_id: string; measured_at_ms: number; verdict: Verdict }>(
    db,
    "SELECT spindle_id, measured_at_ms, verdict FROM check_row WHERE state = 'valid' ORDER BY spindle_id, measured_at_ms, n",
  );
  const found = new Map<string, Moved>();
  for (const { spindle_id: id, measured_at_ms: atMs, verdict } of rows.iterate()) {
    const known = found.get(id) ?? { before: undefined, now: undefined, checks: 0 };
    const isNew = atMs >= thenMs;
    found.set(id, { before: isNew ? known.before : verdict, now: verdict, checks: known.checks + Number(isNew) });
  }
  return found;
}
