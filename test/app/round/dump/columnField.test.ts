import { describe, expect, it } from "vitest";
import { columnField } from "../../../../app/round/dump/columnField.ts";

describe("a column of whole numbers without a head", () => {
  it.each([
    ["that rises by one", ["1", "2", "3", "4", "5"]],
    ["that falls by one", ["205", "204", "203", "202"]],
    ["with lines lost in between", ["1", "2", "9", "10", "30"]],
    ["that begins anew once in many", ["7", "8", "9", "10", "1", "2", "3", "4"]],
  ])("%s counts the records", (_, cells) => {
    expect(columnField(cells, undefined)).toBe("number");
  });

  it.each([
    ["that stands still at first", ["4", "4", "5", "6", "7"]],
    ["that goes to and fro", ["1", "2", "1", "2", "1", "2"]],
    ["with a gap wider than lines are lost", ["1", "2", "23", "44", "65", "86"]],
  ])("%s names the places", (_, cells) => {
    expect(columnField(cells, undefined)).toBe("location");
  });

  it.each([
    ["1", "number"],
    ["001", "number"],
    ["2", "location"],
    ["01", "location"],
  ])("of one line, %s is its %s", (cell, field) => {
    expect(columnField([cell], undefined)).toBe(field);
  });
});
