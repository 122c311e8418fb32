import { useCallback } from "react";
import type { Input } from "../../../../app/contract/methods.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { useReport } from "../../shell/useReport.ts";

type Command = Input<"simulated.command">["command"];

/** Tells the simulated gauge what to do. */
export function useSimulated(): (command: Command) => void {
  const core = useCore();
  const report = useReport();
  return useCallback((command) => void report(core.client.call("simulated.command", { command })), [core, report]);
}
