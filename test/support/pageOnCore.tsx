import { render } from "@testing-library/react";
import { PageFeed } from "../../main/host/PageFeed.ts";
import type { Transport } from "../../renderer/client/Client.ts";
import { createClient } from "../../renderer/client/createClient.ts";
import { App } from "../../renderer/screens/shell/App.tsx";
import type { Core } from "../../renderer/state/Core.ts";
import { CoreContext } from "../../renderer/state/CoreContext.ts";
import { createCore } from "../../renderer/state/createCore.ts";
import type { CoreInTemp } from "./coreInTemp.ts";

/** The whole page on the whole core, with nothing between them but a host's wiring; what crosses is JSON, as on a socket. */
export async function pageOnCore({ program }: CoreInTemp, hash: string): Promise<Core> {
  const plain = <T,>(value: T) => (value === undefined ? value : (JSON.parse(JSON.stringify(value)) as T)); // the same, as it arrives
  let feed: PageFeed | undefined;
  const transport: Transport = {
    call: async (name, input) => plain(await program.core.call(name, plain(input))),
    open: (heard, changed) => {
      feed = new PageFeed((push) => heard(plain(push)), {
        now: () => performance.now(),
        later: (run, ms) => {
          const timer = setTimeout(run, ms);
          return () => clearTimeout(timer);
        },
      });
      program.core.hub.join(feed);
      changed("open");
    },
    acknowledge: () => feed?.acknowledge(),
    close: () => feed?.close(),
  };
  location.hash = hash;
  const core: Core = createCore(createClient(transport), () => void core.refresh());
  await core.refresh();
  render(
    <CoreContext value={core}>
      <App />
    </CoreContext>,
  );
  // What the core pushes comes by itself, as in a browser; React need not be told of each.
  (globalThis as { IS_REACT_ACT_ENVIRONMENT?: boolean }).IS_REACT_ACT_ENVIRONMENT = false; // React's own switch
  return core;
}
