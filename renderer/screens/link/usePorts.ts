import { useCallback, useEffect, useState } from "react";
import type { Output } from "../../../app/contract/methods.ts";
import { useCore } from "../../state/CoreContext.ts";

const LOOK_AGAIN_MS = 3_000;

/** The ports of this machine; looked for again while the list is in sight, so that plugging in is all one does. */
export function usePorts(): { readonly list: Output<"ports.list"> | undefined; readonly look: () => void } {
  const core = useCore();
  const [list, setList] = useState<Output<"ports.list">>();
  const look = useCallback(async () => {
    const answer = await core.client.call("ports.list", {});
    if (answer.ok) setList(answer.value);
  }, [core]);
  useEffect(() => {
    look();
    const timer = setInterval(look, LOOK_AGAIN_MS);
    return () => clearInterval(timer);
  }, [look]);
  return { list, look };
}
