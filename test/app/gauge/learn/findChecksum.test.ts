import { describe, expect, it } from "vitest";
import { findChecksum } from "../../../../app/gauge/learn/findChecksum.ts";
import { tokenizer } from "../../../../app/gauge/learn/tokens.ts";
import { lcg } from "../formats.ts";

const split = tokenizer({ mark: ".", thousands: "", glued: false });
const find = (texts: readonly string[]) =>
  findChecksum(
    texts.map((text, order) => ({ text, order })),
    split,
    "",
  );
const xor = (text: string) =>
  [...text]
    .reduce((sum, c) => sum ^ c.charCodeAt(0), 0)
    .toString(16)
    .toUpperCase()
    .padStart(2, "0");
const many = (line: (i: number) => string) => Array.from({ length: 60 }, (_, i) => line(i));
const body = (i: number) => `${1000 + ((i * 37) % 900)} N*`;

describe("findChecksum", () => {
  it("finds method and span", () => {
    expect(find(many((i) => body(i) + xor(body(i))))).toMatchObject({
      sure: true,
      found: { method: "xor", as: "HEX", from: 0 },
    });
  });

  it("finds it though one line in five is damaged", () => {
    const lines = many((i) => (i % 5 === 2 ? `x${i}${body(i)}00` : body(i) + xor(body(i))));
    expect(find(lines)).toMatchObject({ sure: true, found: { method: "xor" } });
  });

  it("finds none in random digits, in a constant and in the digits of a number", () => {
    const random = lcg(3);
    expect(
      find(
        many(
          (i) =>
            body(i) +
            Math.floor(random() * 256)
              .toString(16)
              .toUpperCase()
              .padStart(2, "0"),
        ),
      ),
    ).toBeUndefined();
    expect(find(many((i) => `${body(i)}A5`))).toBeUndefined();
    expect(find(many((i) => `${1000 + ((i * 37) % 900)}`))).toBeUndefined();
  });

  it("is not sure where every line is the same", () => {
    expect(find(many(() => `0.00 N*${xor("0.00 N*")}`))).toMatchObject({ sure: false });
  });
});
