import { expect, it } from "vitest";
import { roomForWords } from "../../../renderer/chart/strip/roomForWords.ts";

it("leaves out the word that would lie on a weightier one, and only that", () => {
  expect(roomForWords([100, 60, 20])).toEqual([true, true, true]);
  expect(roomForWords([100, 92, 84])).toEqual([true, false, true]);
  expect(roomForWords([100, undefined, 113])).toEqual([true, false, true]);
  expect(roomForWords([100, 112.9])).toEqual([true, false]);
});
