import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { derive, hashPin, isPin } from "../../../main/people/pinHash.ts";

describe("scrypt", () => {
  const { inputs, expected } = JSON.parse(readFileSync("test/published/rfc7914-scrypt.json", "utf8"));

  it.each([0, 1, 2])("gives the key of RFC 7914, vector %i", async (i) => {
    const { password, salt, n, r, p } = inputs[i];
    const key = await derive(password, Buffer.from(salt), { n, r, p }, 64);
    expect(key.toString("hex")).toBe(expected.keys.published[i]);
  });
});

describe("a PIN", () => {
  it("is known again, no other is, and it stands nowhere in what is kept", async () => {
    const kept = await hashPin("2468");
    expect(kept).not.toContain("2468");
    expect(await isPin("2468", kept)).toBe(true);
    expect(await isPin("2469", kept)).toBe(false);
    expect(await isPin("", kept)).toBe(false);
  });

  it("is kept differently each time", async () => {
    expect(await hashPin("2468")).not.toBe(await hashPin("2468"));
  });

  it.each([
    "",
    "2468",
    "scrypt$16384$salt$hash",
    "scrypt$32768$8$1$c2FsdA==$",
    "scrypt$32768$8$1$c2FsdA==$AAAA",
    "scrypt$1073741824$8$1$c2FsdHNhbHRzYWx0$AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=",
    "scrypt$32767$8$1$c2FsdHNhbHRzYWx0$AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=",
    "other$32768$8$1$c2FsdHNhbHRzYWx0$AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=",
  ])("is nobody's where %j is kept", async (stored) => {
    expect(await isPin("2468", stored)).toBe(false);
  });
});
