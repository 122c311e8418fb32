import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Handlers } from "../../../app/contract/methods.ts";
import { AppError } from "../../../app/contract/result.ts";
import { dispatch } from "../../../main/handlers/dispatch.ts";
import { fileLog, type Log, silentLog } from "../../../main/log.ts";
import { StoreError } from "../../../main/store/StoreError.ts";

const handlersThat = (closeLink: () => unknown) =>
  ({ "link.close": closeLink, "series.clear": () => ({}) }) as unknown as Handlers; // the two the tests call
const call = (handlers: Handlers, name: unknown, raw?: unknown, log: Log = silentLog) =>
  dispatch(handlers, name, raw, log);

describe("the one door into the services", () => {
  it("answers what the handler answers", async () => {
    expect(
      await call(
        handlersThat(() => ({ state: "closed" })),
        "link.close",
      ),
    ).toEqual({ ok: true, value: { state: "closed" } });
  });

  it.each(["no.such", "__proto__", "constructor", "toString", 7, null])("knows no call named %s", async (name) => {
    expect(
      await call(
        handlersThat(() => 1),
        name,
      ),
    ).toMatchObject({ ok: false, error: { code: "badRequest" } });
  });

  it("refuses what the schema does not know, and names the field", async () => {
    const wrong = await call(
      handlersThat(() => 1),
      "series.clear",
      { seriesId: "not an id" },
    );
    expect(wrong).toMatchObject({ ok: false, error: { code: "invalid", field: "seriesId" } });
    expect(
      await call(
        handlersThat(() => 1),
        "link.close",
        { more: 1 },
      ),
    ).toMatchObject({ ok: false, error: { code: "invalid" } });
  });

  it.each([
    [
      new AppError("conflict", "somebody was first", { key: "seriesGone" }),
      { code: "conflict", message: "somebody was first", key: "seriesGone" },
    ],
    [new StoreError("full", "the disk is full"), { code: "diskFull", message: "the disk is full", key: "store.full" }],
    [new StoreError("damaged", "torn"), { code: "damaged", message: "torn", key: "store.damaged" }],
  ])("carries a refusal across as what it is", async (cause, error) => {
    const result = await call(
      handlersThat(() => {
        throw cause;
      }),
      "link.close",
    );
    expect(result).toEqual({ ok: false, error });
  });
});

describe("a fault of the program", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "holdfast-log-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  it("reaches the page as words and the log as its cause", async () => {
    const log = fileLog(folder, () => 0);
    const result = await call(
      handlersThat(() => Promise.reject(new TypeError("x is undefined"))),
      "link.close",
      {},
      log,
    );
    expect(result).toMatchObject({ ok: false, error: { code: "internal" } });
    expect(JSON.stringify(result)).not.toContain("undefined");
    expect(readFileSync(join(folder, "holdfast.log"), "utf8")).toContain("TypeError: x is undefined");
  });

  it("turns the log over before it grows without end", () => {
    const log = fileLog(folder, () => 0);
    const line = "x".repeat(60_000);
    for (let i = 0; i < 60; i += 1) log.info(line);
    const sizes = ["", ".1", ".2", ".3"].map((end) => readFileSync(join(folder, `holdfast.log${end}`)).length);
    expect(Math.max(...sizes)).toBeLessThan(600_000);
    expect(() => readFileSync(join(folder, "holdfast.log.4"))).toThrow();
  });
});
