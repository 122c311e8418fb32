import type { Source } from "../../app/contract/linkViews.ts";

/** What only one can have open at a time. */
export function placeOfSource(source: Source): string {
  return source.kind === "tcp" ? `${source.host}:${source.port}` : source.kind === "simulated" ? "" : source.path;
}
