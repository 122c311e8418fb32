import type { Handlers } from "../../app/contract/methods.ts";
import type { Context } from "./Context.ts";

type Part = Pick<
  Handlers,
  | "ports.list"
  | "ports.find"
  | "link.open"
  | "link.close"
  | "link.learn"
  | "link.usePattern"
  | "link.tail"
  | "zero.take"
  | "simulated.command"
>;

/** The port, the gauge behind it, and what its lines say. */
export function linkHandlers({ bench, ports }: Context): Part {
  return {
    "ports.list": () => ports(),
    "ports.find": ({ path }) => bench.findSetting(path),
    "link.open": (input) => bench.open(input),
    "link.close": () => bench.close(),
    "link.learn": (input) => bench.learn(input),
    "link.usePattern": (input) => bench.adoptPattern(input),
    "link.tail": () => ({ lines: bench.tail() }),
    "zero.take": () => bench.takeZero(),
    "simulated.command": async (input) => {
      await bench.simulated(input);
      return { done: true };
    },
  };
}
