import type { Handlers } from "../../../app/contract/methods.ts";
import type { FakeState } from "../fakeCore.ts";

type Names = "places.list" | "people.export" | "support.collect";

export function supportHandlers(state: FakeState): Pick<Handlers, Names> {
  const finished = (what: string, result: unknown) => {
    const jobId = `job-${what}`;
    state.say("job.finished", { jobId, what, done: 1, total: 1, state: "finished", message: undefined, result });
    return { jobId };
  };
  return {
    "places.list": () => [
      { what: "dataFile", path: state.program.dataFile, bytes: 3_400_000 },
      { what: "spool", path: "/home/you/Holdfast/spool", bytes: 64_000_000 },
      { what: "log", path: "/home/you/Holdfast/holdfast.log", bytes: 12_000 },
      { what: "key", path: "/home/you/Holdfast/holdfast.key", bytes: 119 },
      { what: "settings", path: "/home/you/Holdfast/settings.json", bytes: undefined },
    ],
    "people.export": ({ folder }) =>
      finished("person", { file: `${folder}/holdfast-person-0001.zip`, bytes: 12_000, entries: 31 }),
    "support.collect": () =>
      finished("support", {
        files: [
          { name: "about.txt", bytes: 22, text: "Holdfast 0.1.0, loopback" },
          { name: "holdfast.log", bytes: 40, text: "2026-11-16T09:00:00.000Z warn link went silent" },
        ],
        zip: { fileName: "holdfast-support.zip", mime: "application/zip", base64: "UEsFBg==" },
      }),
  };
}
