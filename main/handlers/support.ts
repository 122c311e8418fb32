import { readdir, stat } from "node:fs/promises";
import { release } from "node:os";
import { basename, dirname, join } from "node:path";
import type { Handlers } from "../../app/contract/methods.ts";
import type { DataPlace } from "../../app/contract/supportViews.ts";
import { headKeyFile } from "../store/ledger/headKey.ts";
import type { Context } from "./Context.ts";
import { today } from "./today.ts";

type Part = Pick<Handlers, "places.list" | "people.export" | "support.collect">;

/** What lies where, what leaves the house, and help. */
export function supportHandlers(context: Context): Part {
  const { store, jobs } = context;
  const folder = dirname(store.path);
  return {
    "places.list": async () => {
      const places: [DataPlace["what"], string, Promise<number | undefined>][] = [
        ["dataFile", store.path, sizeOf([store.path, `${store.path}-wal`])],
        [
          "spool",
          join(folder, store.demo ? "spool-demo" : "spool"),
          sizeIn(join(folder, store.demo ? "spool-demo" : "spool")),
        ],
        ["log", join(folder, "holdfast.log"), sizeIn(folder, /^holdfast\.log(\.\d)?$/)],
        ["key", headKeyFile(store.path), sizeOf([headKeyFile(store.path)])],
        ["settings", context.settings.path, sizeOf([context.settings.path])],
        ["before", join(folder, "before-restore-*.sqlite"), sizeIn(folder, /^before-restore-.*\.sqlite$/)],
      ];
      const { folder: backups } = context.backup.view;
      if (backups !== undefined) places.push(["backups", backups, sizeIn(backups, /^(holdfast|demo)-.*\.sqlite$/)]);
      const found = await Promise.all(places.map(async ([what, path, bytes]) => ({ what, path, bytes: await bytes })));
      return found.filter(({ what, bytes }) => what !== "before" || bytes !== undefined);
    },

    "people.export": ({ operatorId, folder: to }) => {
      const time = new Date(context.now()).toISOString().slice(11, 19).replaceAll(":", "");
      const file = join(to, `holdfast-person-${operatorId.slice(-4)}-${today(context)}-${time}.zip`);
      return { jobId: jobs.start("person", { operatorId, file, atMs: context.now() }) };
    },

    "support.collect": () => ({
      jobId: jobs.start("support", { about: aboutText(context), atMs: context.now() }),
    }),
  };
}

function aboutText({ store, bench, backup, version, host, now }: Context): string {
  const link = bench.linkView();
  const { late, problem } = backup.view;
  return [
    `Holdfast ${version}, ${host}, ${store.demo ? "demo" : "own records"}`,
    `collected ${new Date(now()).toISOString()}`,
    `${process.version} on ${process.platform} ${process.arch} ${release()}`,
    `data file ${basename(store.path)}: ${store.refusal === undefined ? "written" : `only read: ${store.refusal.message}`}`,
    `gauge: ${link.state}, ${link.source?.kind ?? "none"}, ${link.rateHz ?? "no"} readings a second`,
    `lines ${link.counters.lines}, readings ${link.counters.readings}, rejected ${link.counters.rejected}`,
    `last trouble of the link: ${link.problem?.message ?? "none"}`,
    `daily backup: ${late ?? "in order"}; ${problem ?? "no trouble"}`,
  ].join("\n");
}

async function sizeOf(paths: readonly string[]): Promise<number | undefined> {
  const sizes = await Promise.all(
    paths.map((path) =>
      stat(path).then(
        ({ size }) => size,
        () => undefined,
      ),
    ),
  );
  return sizes[0] === undefined ? undefined : sizes.reduce<number>((sum, size) => sum + (size ?? 0), 0);
}

/** Files of a folder whose names fit; undefined where there is none. */
async function sizeIn(folder: string, named = /./): Promise<number | undefined> {
  const names = await readdir(folder).catch(() => []);
  const sizes = await Promise.all(names.filter((name) => named.test(name)).map((name) => sizeOf([join(folder, name)])));
  return sizes.length === 0 ? undefined : sizes.reduce<number>((sum, size) => sum + (size ?? 0), 0);
}
