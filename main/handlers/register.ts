import type { Handlers } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import { adapterList, readAdapter } from "../store/records/adapters.ts";
import { checkCountsByTool, gaugeList, readGauge } from "../store/records/gauges.ts";
import { operatorList, putPerson, readOperator } from "../store/records/operators.ts";
import { hasRegistered } from "../store/records/register.ts";
import { readSpindle, spindleList } from "../store/records/spindles.ts";
import type { Context } from "./Context.ts";
import { programView } from "./program.ts";
import { toAdapterRow, toGaugeRow, toOperatorView, toSpindleRow } from "./rows.ts";
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
  | "operators.list"
  | "operators.save"
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
    "works.save": (works) => {
      store.append([{ kind: "works", body: works }]);
      changed("works");
      return works;
    },

    "spindles.list": () => spindleList(store.db).map(toSpindleRow),
    "spindles.save": (input) => {
      const spindleId = input.spindleId ?? store.newId();
      const first = !hasRegistered(store.db, "spindle");
      refuseTwin(
        spindleList(store.db).map((s) => ({ id: s.spindle.spindleId, state: s.spindle.state, label: s.spindle.name })),
        { id: spindleId, state: input.state, label: input.name },
        "name",
        "A spindle of this name is there already. Names must tell spindles apart: add the machine or the side.",
      );
      store.append([{ kind: "spindle", body: { ...input, spindleId } }]);
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
      return gaugeList(store.db).map((g) => toGaugeRow(g, counts.get(g.gaugeId) ?? 0, today(context)));
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
      return toGaugeRow(readGauge(store.db, gaugeId)!, 0, today(context)); // just filed
    },

    "register.preview": (file) => jobs.run("listPreview", file),
    "register.import": (file) => {
      const { jobId, ended } = jobs.begin("listImport", file);
      ended.then(
        () => changed(file.what),
        () => {}, // `job.finished` tells why
      );
      return { jobId };
    },

    "operators.list": () => operatorList(store.db).map(toOperatorView),
    "operators.save": ({ name, ...input }) => {
      const operatorId = input.operatorId ?? store.newId();
      const pin = readOperator(store.db, operatorId)?.person?.pin;
      store.append([{ kind: "operator", body: { ...input, operatorId } }], {
        alsoInTransaction: (db) => putPerson(db, { operatorId, name, initials: initialsOf(name), pin }),
      });
      changed("operators");
      return toOperatorView(readOperator(store.db, operatorId)!); // just filed
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

/** First letters of the first and last word of a name: what is shown when names are hidden. */
function initialsOf(name: string): string {
  const words = name.trim().split(/\s+/);
  return [...new Set([words[0], words.at(-1)])]
    .map((word) => [...(word ?? "")][0] ?? "")
    .join("")
    .toLocaleUpperCase();
}
