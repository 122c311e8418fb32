import type { Handlers } from "../../app/contract/methods.ts";
import type { Context } from "./Context.ts";

/** The round in hand. */
export function roundLeadHandlers({ lead }: Context): Pick<Handlers, "rounds.lead" | "rounds.pass"> {
  return {
    "rounds.lead": ({ roundId }) => (roundId === null ? lead.putAway() : lead.take(roundId)),
    "rounds.pass": (input) => lead.pass(input),
  };
}
