import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import { captureIo } from "../../support/captureIo.ts";
import { tempFolder } from "../../support/storeInTemp.ts";

function prepared(text: string) {
  const folder = tempFolder();
  const file = join(folder, "old.csv");
  writeFileSync(file, text);
  const to = join(folder, "holdfast.sqlite");
  return async (...args: string[]) => {
    const { io, text: said, errors } = captureIo();
    const code = await runCli(["import", file, "--kind", "checks", "--data", to, ...args], io);
    return { code, said: said(), errors: errors() };
  };
}
const text = "Spindle,When,Result,x\nMill 3,03/04/2019,1792,a\nMill 4,05/04/2019,1700,b\n";
const all = ["--column", "When=day", "--unit", "daN", "--date-order", "day"];

describe("holdfast import of a spreadsheet", () => {
  it("says with --preview what would come of it, and files nothing", async () => {
    const run = prepared(text);
    const { code, said } = await run(...all, "--preview", "--json");
    expect(code).toBe(0);
    expect(JSON.parse(said)).toMatchObject({
      rowCount: 2,
      ready: 0,
      problemCount: 2,
      names: [{ name: "Mill 3" }, { name: "Mill 4" }],
    });
    expect((await run(...all, "--preview")).said).toMatch(
      /When: day[\s\S]*spindle "Mill 3" in 1 rows: not in the register/,
    );
  });

  it("files all rows once everything is said, and says that nothing is new the second time", async () => {
    const run = prepared(text);
    expect(await run(...all, "--new-spindles", "create")).toMatchObject({
      code: 0,
      said: "2 rows of old.csv were imported.\n",
    });
    const again = await run(...all, "--json");
    expect(JSON.parse(again.said)).toMatchObject({ imported: 0, passedOver: 2 });
    // What was said is known by now.
    expect((await run()).said).toBe("0 rows of old.csv were imported; 2 were there already and were passed over.\n");
  });

  it("takes names of spindles as the register knows them, and leaves the others out", async () => {
    const run = prepared(text);
    await run(...all, "--new-spindles", "create");
    const other = await run(...all, "--spindle", "Mill 4=Mill 3", "--preview", "--json");
    expect(JSON.parse(other.said)).toMatchObject({ ready: 1, passedOver: 1 });
  });

  it.each([
    [["--unit", "Nm"], /torque/],
    [["--unit", "furlong"], /no unit of force/],
    [["--date-order", "year"], /day or month/],
    [["--column", "Nothing=day"], /no column Nothing; there are Spindle, When, Result, x/],
    [["--column", "When=season"], /a column is one of spindle, day/],
    [["--spindle", "Mill 3=Mill 99"], /name of a spindle in the register/],
    [["--new-spindles", "maybe"], /create or leave-out/],
    [all, /Row 2, Spindle: "Mill 3" is no spindle/],
  ])("ends with 2 and one line for %j", async (args, why) => {
    const { code, errors } = await prepared(text)(...args);
    expect(code).toBe(2);
    expect(errors).toMatch(why);
    expect(errors.trim().split("\n")).toHaveLength(1);
  });

  it("knows its kinds, and needs a file that can be read", async () => {
    const { io, errors } = captureIo();
    expect(
      await runCli(["import", "/nowhere.csv", "--kind", "checks", "--data", join(tempFolder(), "a.sqlite")], io),
    ).toBe(2);
    expect(errors()).toContain("cannot be read");
    const odd = captureIo();
    expect(
      await runCli(["import", "x.csv", "--kind", "cheques", "--data", join(tempFolder(), "a.sqlite")], odd.io),
    ).toBe(2);
    expect(odd.errors()).toContain("spindles, adapters, gauges, checks");
  });
});
