import type { Handlers } from "../../app/contract/methods.ts";
import type { Context } from "./Context.ts";

type Part = Pick<
  Handlers,
  | "series.tag"
  | "series.describe"
  | "series.drop"
  | "series.takeAgain"
  | "series.override"
  | "series.type"
  | "series.clear"
  | "series.accept"
>;

/** The series in work. */
export function seriesHandlers({ series, bench, accept, people }: Context): Part {
  return {
    "series.tag": (input) => {
      const draft = series.tag(input);
      if (input.operatorId !== undefined) people.begin(input.operatorId ?? undefined);
      return draft;
    },
    "series.describe": (input) => series.describe(input),
    "series.drop": (input) => series.drop(input),
    "series.takeAgain": (input) => series.takeAgain(input),
    "series.override": (input) => series.override(input),
    "series.type": (input) => series.type(input),
    "series.clear": (input) => {
      const draft = series.clear(input);
      bench.followInto(series);
      return draft;
    },
    "series.accept": accept,
  };
}
