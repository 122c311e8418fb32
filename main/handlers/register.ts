import type { Handlers } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { By } from "../people/guarded.ts";
import { judgingActs } from "../people/judgingActs.ts";
import { adapterList, readAdapter } from "../store/records/adapters.ts";
import { checkCountsByTool, gaugeList, readGauge } from "../store/records/gauges.ts";
import { foundOffOn } from "../store/records/proofs.ts";
import { hasRegistered, registeredNames } from "../store/records/register.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { Context } from "./Context.ts";
import { programView } from "./program.ts";
import { toAdapterRow, toGaugeRow, toSpindleRow } from "./rows.ts";
import { spindleRows } from "./spindleRows.ts";
import { today } from "./today.ts";

type Part = Pick<
  Handlers,
  | "works.save"
  | "spindles.list"
  | "spindles.save"
  | "adapters.list"
  | "adapters.save"
  | "gauges.list"
  | "gauges.save"
  | "register.preview"
  | "register.import"
>;

/** Places, tools and people: lists, and saving one as a whole. */
export function registerHandlers(context: Context): Part {
  const { store, hub, jobs } = context;
  const changed = (what: "spindles" | "adapters" | "gauges" | "operators" | "works") => {
    hub.say("register.changed", { what });
    context.series.refresh();
  };

  return {
    "works.save": (works, by?: By) => {
      store.append([{ kind: "works", body: works }, ...judgingActs(works.worksId, context.works(), works, by)]);
      changed("works");
      return works;
    },

    "spindles.list": () => spindleRows(store),
    "spindles.save": (input, by?: By) => {
      const spindleId = input.spindleId ?? store.newId();
      const before = readSpindle(store.db, spindleId)?.spindle;
      const first = !hasRegistered(store.db, "spindle");
      refuseTwin(
        registeredNames(store.db, "spindle"),
        { id: spindleId, state: input.state, label: input.name },
        "name",
        "A spindle of this name is there already. Names must tell spindles apart: add the machine or the side.",
      );
      store.append([
        { kind: "spindle", body: { ...input, spindleId } },
        ...(before === undefined ? [] : judgingActs(spindleId, before, input, by)),
      ]);
      changed("spindles");
      const row = toSpindleRow(readSpindle(store.db, spindleId)!); // just filed
      hub.say("spindle.changed", row);
      if (first) hub.say("program.changed", programView(context)); // no page leads by the hand any more
      return row;
    },

    "adapters.list": () => {
      const counts = checkCountsByTool(store.db);
      return adapterList(store.db).map((a) => toAdapterRow(a, counts.get(a.adapterId) ?? 0, today(context)));
    },
    "adapters.save": (input) => {
      const adapterId = input.adapterId ?? store.newId();
      refuseTwins(
        adapterList(store.db).map((a) => ({ id: a.adapterId, ...a })),
        { id: adapterId, ...input },
        "An adapter",
      );
      store.append([{ kind: "adapter", body: { ...input, adapterId } }]);
      changed("adapters");
      return toAdapterRow(readAdapter(store.db, adapterId)!, 0, today(context)); // just filed
    },

    "gauges.list": () => {
      const counts = checkCountsByTool(store.db);
      return gaugeList(store.db).map((g) =>
        toGaugeRow(g, counts.get(g.gaugeId) ?? 0, today(context), foundOffOn(store.db, g) !== undefined),
      );
    },
    "gauges.save": (input) => {
      const gaugeId = input.gaugeId ?? store.newId();
      refuseTwins(
        gaugeList(store.db).map((g) => ({ id: g.gaugeId, ...g })),
        { id: gaugeId, ...input },
        "A gauge",
      );
      store.append([{ kind: "gauge", body: { ...input, gaugeId } }]);
      changed("gauges");
      const saved = readGauge(store.db, gaugeId)!; // just filed
      return toGaugeRow(saved, 0, today(context), foundOffOn(store.db, saved) !== undefined);
    },

    "register.preview": (file) => jobs.run("listPreview", file),
    "register.import": (file, by?: By) => {
      const { jobId, ended } = jobs.begin("listImport", { ...file, operatorId: by?.operatorId });
      ended.then(
        () => {
          changed(file.what === "checks" ? "spindles" : file.what); // checks change how spindles stand
          hub.say("program.changed", programView(context));
        },
        () => {}, // `job.finished` tells why
      );
      return { jobId };
    },
  };
}

type Twin = { readonly id: string; readonly state: string; readonly label: string };

/** Two records in use may not bear the same label: the wrong one would be picked some day. */
function refuseTwin(others: readonly Twin[], one: Twin, field: string, message: string): void {
  const same = (a: string, b: string) => a.trim().toLocaleLowerCase() === b.trim().toLocaleLowerCase();
  if (one.state !== "inUse") return;
  if (others.some((o) => o.id !== one.id && o.state === "inUse" && same(o.label, one.label))) {
    throw new AppError("invalid", message, { key: `twin.${field}`, field });
  }
}

type Tool = {
  readonly id: string;
  readonly state: string;
  readonly name: string;
  readonly serial?: string | undefined;
};

function refuseTwins(others: readonly Tool[], one: Tool, what: string): void {
  const by = (t: Tool, label: string): Twin => ({ id: t.id, state: t.state, label });
  refuseTwin(
    others.map((t) => by(t, t.name)),
    by(one, one.name),
    "name",
    `${what} of this name is there already. Give this one another name.`,
  );
  if (one.serial === undefined || one.serial === "") return;
  refuseTwin(
    others.filter((t) => t.serial !== undefined).map((t) => by(t, t.serial ?? "")),
    by(one, one.serial),
    "serial",
    `${what} with this serial number is there already. Look at the plate again, or retire the old record.`,
  );
}
