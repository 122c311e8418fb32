import { randomBytes } from "node:crypto";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it, onTestFinished } from "vitest";
import { fileLog } from "../../../main/log.ts";
import { redact } from "../../../main/support/redact.ts";

const names = ["Tilda Reeve", "Jörg Müller-Ölßner", "Bo"];
const here = { names, home: "/srv/bench", user: "benchuser" };

describe("what a log may not hold", () => {
  it.each([
    ["Unexpected token 'T', \"Tilda Reeve\" is not valid JSON", "Tilda"],
    ["saved by REEVE, checked", "REEVE"],
    ["Müller-Ölßner hat abgelegt", "Müller"],
    ["at /srv/bench/holdfast/holdfast.sqlite", "/srv/bench"],
    ["EACCES: /home/tilda.r/Holdfast/spool", "tilda.r"],
    ["C:\\Users\\reeve.t\\AppData\\Local\\Holdfast", "reeve.t"],
    ["benchuser may not write", "benchuser"],
    ['{"operatorId":"x","pin":"97531"}', "97531"],
    ["oldPin: 97531, given", "97531"],
    ["GET /#code=Zk3v_9aQpL0sT-xYw2bNcA came late", "Zk3v_9aQpL0sT-xYw2bNcA"],
    ["Authorization: Bearer abcDEF123456", "abcDEF123456"],
  ])("goes out of %s", (text, secret) => {
    expect(redact(text, here)).not.toContain(secret);
  });

  it("holds no token of 256 bits, whatever it stands in", () => {
    for (let i = 0; i < 500; i += 1) {
      const token = randomBytes(32).toString("base64url");
      for (const text of [`socket ${token} left`, `{"x":"${token}"}`, `?t=${token}&y=1`])
        expect(redact(text, here)).not.toContain(token);
    }
  });

  it("leaves what helps: hashes, numbers, places in the program, words", () => {
    const useful = [
      "entry 7 of chain 3b1f0c52-8d3e-4f0a-9a37-1c2d3e4f5a6b is damaged",
      `head ${"0123456789abcdef".repeat(4)}`,
      "TypeError: x is undefined\n    at Series.formed (main/bench/Series.ts:42:7)",
      "series.accept took 81 ms",
      "Boring bar reeves", // a name's word inside another word
    ];
    for (const text of useful) expect(redact(text, here)).toBe(text);
  });
});

describe("the log file", () => {
  it("holds neither planted names nor tokens, though the cause of an error quotes them", () => {
    const folder = mkdtempSync(join(tmpdir(), "holdfast-log-"));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    const log = fileLog(
      folder,
      () => 0,
      () => names,
    );
    const token = randomBytes(32).toString("base64url");
    log.error("operators.save failed", new SyntaxError(`"Tilda Reeve" with token ${token}`));
    log.warn(`slow for Reeve`);
    log.info(`pin=1234`);
    const text = readFileSync(join(folder, "holdfast.log"), "utf8");
    for (const secret of ["Tilda", "Reeve", token, "1234"]) expect(text).not.toContain(secret);
    expect(text).toContain("operators.save failed: SyntaxError");
  });
});
