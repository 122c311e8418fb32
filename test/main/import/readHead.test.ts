import { describe, expect, it } from "vitest";
import { readHead } from "../../../main/import/readHead.ts";

describe("a column's head", () => {
  it.each([
    ["minimum_kN", "minimum", "kN"],
    ["Minimum [kN]", "minimum", "kN"],
    ["Mindestkraft (daN)", "mindestkraft", "daN"],
    ["min in N", "min", "N"],
    ["Höchstkraft, kN", "hoechstkraft", "kN"],
    ["Warning limit/lbf", "warninglimit", "lbf"],
    ["Messgerät", "messgeraet", undefined],
    ["Spindle name", "spindlename", undefined],
    ["Serial no.", "serialno", undefined],
    ["kN", "kn", undefined], // a unit alone names nothing
  ])("%s means %s with unit %s", (text, plain, unit) => {
    expect(readHead(text)).toMatchObject({ plain, unit });
  });

  it("says why a torque or a mass is no unit of force", () => {
    expect(readHead("minimum [Nm]").wrongUnit).toMatchObject({
      code: "torque",
      message: expect.stringContaining("torque"),
    });
    expect(readHead("minimum_kg").wrongUnit).toMatchObject({ code: "mass", message: expect.stringContaining("kgf") });
  });

  it("notices percent", () => {
    expect(readHead("Unsicherheit %")).toMatchObject({ plain: "unsicherheit", percent: true });
    expect(readHead("Unsicherheit")).toMatchObject({ percent: false });
  });
});
