import type { Handlers } from "../../app/contract/methods.ts";
import type { ProofDesk } from "../proofs/ProofDesk.ts";
import type { DemoRound } from "../rounds/DemoRound.ts";
import type { FetchDeps } from "../rounds/fetchMemory.ts";
import { backupHandlers } from "./backups.ts";
import type { Context } from "./Context.ts";
import { checkHandlers } from "./checks.ts";
import { dockingHandlers } from "./docking.ts";
import { linkHandlers } from "./link.ts";
import { peopleHandlers } from "./people.ts";
import { programHandlers } from "./program.ts";
import { proofHandlers } from "./proofs.ts";
import { registerHandlers } from "./register.ts";
import { reportHandlers } from "./reports.ts";
import { roundLeadHandlers } from "./roundLead.ts";
import { roundHandlers } from "./rounds.ts";
import { seriesHandlers } from "./series.ts";
import { supportHandlers } from "./support.ts";
import { trendHandlers } from "./trend.ts";

/** Every call of the contract on one data file. */
export function allHandlers(
  context: Context,
  {
    desk,
    makeSource,
    demoRound,
  }: { readonly desk: ProofDesk; readonly makeSource: FetchDeps["makeSource"]; readonly demoRound: DemoRound },
): Handlers {
  return {
    ...programHandlers(context),
    ...linkHandlers(context),
    ...seriesHandlers(context),
    ...registerHandlers(context),
    ...checkHandlers(context),
    ...trendHandlers(context),
    ...reportHandlers(context),
    ...backupHandlers(context),
    ...roundHandlers(context),
    ...roundLeadHandlers(context),
    ...dockingHandlers(context, makeSource, demoRound),
    ...proofHandlers({ ...context, desk }),
    ...peopleHandlers(context),
    ...supportHandlers(context),
  };
}
