import { describe, expect, it } from "vitest";
import { isLastKeeper, type PersonFacts, rolesCount } from "../../../app/people/keepers.ts";
import { askedEachTime, may, type Right, rights, roles } from "../../../app/people/rights.ts";

const person = (operatorId: string, over: Partial<PersonFacts> = {}): PersonFacts => ({
  operatorId,
  role: "keeper",
  state: "inUse",
  named: true,
  ...over,
});

describe("roles", () => {
  it("count from the first keeper on", () => {
    expect(rolesCount([])).toBe(false);
    expect(rolesCount([person("a", { role: "planner" }), person("b", { role: "lab" })])).toBe(false);
    expect(rolesCount([person("a", { role: "planner" }), person("b")])).toBe(true);
  });

  it("do not count for keepers who have left, or who only came along with records from elsewhere", () => {
    expect(rolesCount([person("a", { state: "retired" })])).toBe(false);
    expect(rolesCount([person("a", { named: false })])).toBe(false);
  });

  it("know the last keeper, whoever else is there", () => {
    const others = [person("b", { role: "planner" }), person("c", { state: "retired" }), person("d", { named: false })];
    expect(isLastKeeper([person("a"), ...others], "a")).toBe(true);
    expect(isLastKeeper([person("a"), ...others], "b")).toBe(false);
    expect(isLastKeeper([person("a"), person("e")], "a")).toBe(false);
  });

  it("leave nobody out of measuring, and nothing to nobody: a keeper may do all", () => {
    for (const role of roles) expect(may(role, "accept")).toBe(true);
    for (const right of Object.keys(rights) as Right[]) expect(may("keeper", right)).toBe(true);
  });

  it("ask for the PIN each time where an act weighs most, and only once in a while for filing", () => {
    expect(askedEachTime.has("void")).toBe(true);
    expect(askedEachTime.has("accept")).toBe(false);
  });
});
