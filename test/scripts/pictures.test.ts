import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { taskTopics } from "../../renderer/screens/help/topics/taskTopics.ts";
import { pictures } from "../../scripts/pictures/pictureList.ts";
import { sourceHash } from "../../scripts/pictures/sourceHash.ts";
import { recordPath, stalePictures } from "../../scripts/pictures/stalePictures.ts";

const root = resolve(import.meta.dirname, "..", "..");

describe("pictures of the running program", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-stale-"));
  mkdirSync(join(folder, "screen", "part"), { recursive: true });
  mkdirSync(join(folder, "docs"));
  writeFileSync(join(folder, "screen", "A.tsx"), "one\ntwo\n");
  writeFileSync(join(folder, "screen", "part", "b.css"), "a {}\n");
  const picture = { name: "screen", sources: ["screen"] };
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("are old once a source of their screen has changed, and not for another line end", () => {
    const record = { screen: sourceHash(folder, picture.sources) };
    writeFileSync(join(folder, recordPath), JSON.stringify(record));
    expect(stalePictures(folder, [picture])).toEqual([]);
    writeFileSync(join(folder, "screen", "A.tsx"), "one\r\ntwo\r\n");
    expect(stalePictures(folder, [picture])).toEqual([]);
    writeFileSync(join(folder, "screen", "part", "b.css"), "b {}\n");
    expect(stalePictures(folder, [picture])).toEqual(["screen"]);
  });

  it("are old when they were never taken, and a source that is gone is not passed over", () => {
    expect(stalePictures(folder, [{ name: "other", sources: ["screen"] }])).toEqual(["other"]);
    expect(() => stalePictures(folder, [{ name: "screen", sources: ["gone"] }])).toThrow();
  });

  it("name sources that are there", () => {
    for (const { sources } of pictures) expect(sourceHash(root, sources)).toMatch(/^[0-9a-f]{16}$/);
  });

  it("are there for every task of the help, in both languages, and for the README", () => {
    const wanted = taskTopics.flatMap((topic) =>
      ["en", "de"].map((language) => `renderer/screens/help/pictures/${topic}-${language}.png`),
    );
    const readme = readFileSync(join(root, "README.md"), "utf8");
    const shown = [...readme.matchAll(/\((docs\/[\w-]+\.png)\)/g)].map((m) => m[1]!);
    expect(shown.length).toBeGreaterThan(0);
    expect([...wanted, ...shown].filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});
