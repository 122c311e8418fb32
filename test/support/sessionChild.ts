import { systemClock } from "../../main/link/Clock.ts";
import { sourceMaker } from "../../main/link/makeSource.ts";
import { Session } from "../../main/link/Session.ts";
import type { SessionSettings } from "../../main/link/SessionTypes.ts";

/**
 * A program of its own that measures until it is killed or its input ends: `sessionChild.ts SPOOL_FOLDER SETTINGS`.
 * Each cycle it finds goes out as one line of JSON; how many bytes it has read, on standard error.
 */
const [spoolFolder, settings] = process.argv.slice(2);
let told = 0;
const session: Session = new Session(
  JSON.parse(settings!) as SessionSettings, // the test that starts it has written it
  {
    clock: systemClock,
    makeSource: sourceMaker(() => undefined),
    listPorts: async () => ({ ports: [] }),
    spoolFolder: spoolFolder!,
    retryMs: 10,
    onFault: (cause) => process.stderr.write(`${cause}\n`),
  },
  {
    changed: (status) => process.stderr.write(`${status.state}\n`),
    readings: () => {
      const { bytes } = session.status().counters;
      if (bytes - told < 8_192) return;
      told = bytes;
      process.stderr.write(`read ${bytes}\n`);
    },
    cycle: (cycle) => process.stdout.write(`${JSON.stringify(cycle)}\n`),
    gap: () => {},
  },
);
await session.open();
process.stdin.resume().once("end", async () => {
  await session.close();
  process.exit(0);
});
