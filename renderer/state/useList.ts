import { useEffect, useState } from "react";
import { useStore } from "zustand";
import type { Failure } from "../../app/contract/result.ts";
import type { Core } from "./Core.ts";
import { useCore } from "./CoreContext.ts";
import type { ListName, RegisterState } from "./registerStore.ts";

const methods = {
  spindles: "spindles.list",
  adapters: "adapters.list",
  gauges: "gauges.list",
  operators: "operators.list",
  references: "references.list",
  plans: "plans.list",
  tables: "proofs.tables",
  fleet: "spindles.fleet",
} as const satisfies Record<ListName, string>;

/** A list of the register, asked for when it is first shown and again when it has changed. */
export function useList<L extends ListName>(
  list: L,
): { readonly rows: RegisterState[L]; readonly failed: Failure | undefined } {
  const core = useCore();
  const rows = useStore(core.register, (state) => state[list]);
  const stale = useStore(core.register, (state) => state.stale[list]);
  const [failed, setFailed] = useState<Failure>();
  useEffect(() => {
    let gone = false;
    loadList(core, list, stale).then((failure) => {
      if (!gone) setFailed(failure);
    });
    return () => {
      gone = true;
    };
  }, [core, list, stale]);
  return { rows, failed };
}

const asked = new WeakMap<Core, Map<ListName, number>>();

/** Asks once for each state of a list, however many components show it. */
async function loadList(core: Core, list: ListName, stale: number): Promise<Failure | undefined> {
  const known = asked.get(core) ?? new Map<ListName, number>();
  asked.set(core, known);
  if (known.get(list) === stale && core.register.getState()[list] !== undefined) return undefined;
  known.set(list, stale);
  const answer = await core.client.call(methods[list], {});
  if (!answer.ok) return answer.error;
  core.register.setState({ [list]: answer.value });
  return undefined;
}
