import { useCallback, useEffect, useRef, useState } from "react";
import type { Output } from "../../../app/contract/methods.ts";
import { useCore } from "../../state/CoreContext.ts";

const LOOK_AGAIN_MS = 3_000;

/** The ports of this machine; looked for again while the list is in sight, so that plugging in is all one does. */
export function usePorts(): { readonly list: Output<"ports.list"> | undefined; readonly look: () => void } {
  const core = useCore();
  const [list, setList] = useState<Output<"ports.list">>();
  const inSight = useRef(false);
  const look = useCallback(async () => {
    const answer = await core.client.call("ports.list", {});
    if (answer.ok && inSight.current) setList(answer.value);
  }, [core]);
  useEffect(() => {
    inSight.current = true;
    look();
    const timer = setInterval(look, LOOK_AGAIN_MS);
    return () => {
      inSight.current = false;
      clearInterval(timer);
    };
  }, [look]);
  return { list, look };
}
