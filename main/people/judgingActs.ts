import type { EntryDraft } from "../store/Store.ts";
import type { By } from "./guarded.ts";

/** What checks are judged by, of a spindle or of the works. */
type Judging = {
  readonly limits?: object | undefined;
  readonly rule?: object | undefined;
  readonly cautionDrop?: number;
  readonly actDrop?: number;
  readonly assumptions?: object | undefined;
};

const parts = ["limits", "rule", "cautionDrop", "actDrop", "assumptions"] as const;

/**
 * The act of somebody known who changed what checks are judged by; nothing where nobody is known, since the new record
 * itself stands in the ledger.
 * @param id  the spindle's or the works'
 */
export function judgingActs(id: string, before: Judging, after: Judging, by: By | undefined): EntryDraft[] {
  if (by?.operatorId === undefined) return [];
  const changes = parts.flatMap((part) => changesOf(part, before[part], after[part]));
  if (changes.length === 0) return [];
  const detail = `${id}: ${changes.join(", ")}`.slice(0, 500);
  return [{ kind: "act", body: { what: "limitsChanged", detail, operatorId: by.operatorId } }];
}

function changesOf(name: string, before: unknown, after: unknown): string[] {
  if (typeof before !== "object" && typeof after !== "object")
    return before === after ? [] : [`${name} ${said(before)} to ${said(after)}`];
  const [a, b] = [before ?? {}, after ?? {}] as [Record<string, unknown>, Record<string, unknown>]; // objects or absent
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) => changesOf(key, a[key], b[key]));
}

const said = (value: unknown) => (value === undefined ? "none" : String(value));
