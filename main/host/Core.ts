import type { Handlers } from "../../app/contract/methods.ts";
import type { Result } from "../../app/contract/result.ts";
import { dispatch } from "../handlers/dispatch.ts";
import type { Log } from "../log.ts";
import type { PushHub } from "./PushHub.ts";

/** What a host needs of the program: one door for calls, one hub for pushes. */
export type Core = {
  readonly call: (name: unknown, input: unknown) => Promise<Result<unknown>>;
  readonly hub: PushHub;
};

/** Puts the door before the handlers; `handlers` is asked each time, since the program may change data files. */
export function coreOf(handlers: () => Handlers | Promise<Handlers>, hub: PushHub, log: Log): Core {
  return { hub, call: async (name, input) => dispatch(await handlers(), name, input, log) };
}
