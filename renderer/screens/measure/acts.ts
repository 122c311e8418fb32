import type { Input, Output } from "../../../app/contract/methods.ts";
import type { Result } from "../../../app/contract/result.ts";
import type { Draft } from "../../../app/contract/seriesViews.ts";
import type { Core } from "../../state/Core.ts";

/** The acts of Measure on the core. Each answers the call's result; the draft it brings is shown at once. */

type DraftCall =
  | "series.tag"
  | "series.describe"
  | "series.drop"
  | "series.takeAgain"
  | "series.override"
  | "series.type"
  | "series.clear";
type Rest<M extends DraftCall> = Omit<Input<M>, "seriesId">;

/** Calls on the series that is shown; what was filed on another page meanwhile is refused by the core, by its id. */
export async function changeSeries<M extends DraftCall>(core: Core, method: M, rest: Rest<M>): Promise<Result<Draft>> {
  const seriesId = core.draft.getState().draft?.seriesId ?? "";
  const input = { ...rest, seriesId } as Input<M>; // the rest and its id make the input whole
  const result = (await core.client.call(method, input)) as Result<Draft>; // each of these answers the draft
  if (result.ok) core.draft.setState({ draft: result.value });
  return result;
}

export const takeZero = (core: Core): Promise<Result<Output<"zero.take">>> => core.client.call("zero.take", {});

/** The last clamping that counts. */
export const lastCounting = (draft: Draft) => draft.cycles.findLast((cycle) => cycle.dropped === undefined);

/** Files the series to the spindle that is shown. A second press while the first is on its way does nothing. */
export async function fileSeries(
  core: Core,
  clockConfirmed = false,
): Promise<Result<Output<"series.accept">> | undefined> {
  const { draft, filing } = core.draft.getState();
  if (filing || draft?.tag.spindleId === undefined || draft.cannotFile !== undefined) return undefined;
  core.draft.setState({ filing: true });
  try {
    const result = await core.client.call("series.accept", {
      seriesId: draft.seriesId,
      spindleId: draft.tag.spindleId,
      ...(clockConfirmed ? { clockConfirmed } : {}),
    });
    if (result.ok) core.draft.setState({ draft: result.value.draft });
    return result;
  } finally {
    core.draft.setState({ filing: false });
  }
}

/** Takes the check just filed back, within its minute. */
export async function takeBack(core: Core): Promise<Result<unknown> | undefined> {
  const undo = core.program.getState().undo;
  if (undo === undefined) return undefined;
  const result = await core.client.call("checks.undo", { checkId: undo.checkId });
  if (result.ok) core.program.setState({ undo: undefined });
  return result;
}
