import { localDate } from "../store/localDate.ts";
import type { Context } from "./Context.ts";

/** Today's plain date where this PC stands. */
export function today({ now }: Pick<Context, "now">): string {
  const ms = now();
  return localDate(ms, -new Date(ms).getTimezoneOffset());
}
