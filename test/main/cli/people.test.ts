import { describe, expect, it } from "vitest";
import { runCli } from "../../../main/cli/main.ts";
import { entriesOfKind } from "../../../main/store/ledger/readEntry.ts";
import { readOperator } from "../../../main/store/records/operators.ts";
import { idOf } from "../../support/aCheck.ts";
import { captureIo } from "../../support/captureIo.ts";
import { fillStore } from "../../support/fullStore.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

function filled(): string {
  const store = storeInTemp();
  fillStore(store, 2);
  store.close();
  return store.path;
}

describe("holdfast people", () => {
  it("lists people by number and initials, never a name or what is kept of a PIN", async () => {
    const path = filled();
    const out = captureIo();
    expect(await runCli(["people", "--data", path, "--json"], out.io)).toBe(0);
    expect(JSON.parse(out.text()).people).toEqual([
      { operatorId: idOf(4), initials: "IB", role: "keeper", state: "inUse", pin: true },
    ]);
    expect(out.text()).not.toMatch(/Ilse|scrypt/);
    const plain = captureIo();
    expect(await runCli(["people", "--data", path], plain.io)).toBe(0);
    expect(plain.text()).toContain("IB       keeper, with PIN");
  });

  it("takes a forgotten PIN away, keeps the name, and files that it was done", async () => {
    const path = filled();
    const out = captureIo();
    expect(await runCli(["people", "--data", path, "--take-pin", idOf(4)], out.io)).toBe(0);
    const store = storeInTemp({ path });
    expect(readOperator(store.db, idOf(4))?.person).toMatchObject({ name: "Ilse Brandt", pin: undefined });
    expect(entriesOfKind(store.db, "act").at(-1)?.body).toMatchObject({
      what: "pinSet",
      detail: `${idOf(4)}: taken away at the command line`,
    });
  });

  it.each([
    [["--take-pin", idOf(77)], "is nobody with a PIN"],
    [["--take-pin"], ""],
  ])("answers %j with exit 2", async (args, says) => {
    const out = captureIo();
    expect(await runCli(["people", "--data", filled(), ...args], out.io)).toBe(2);
    expect(out.errors()).toContain(says);
  });

  it("is refused while the program holds the file", async () => {
    const store = storeInTemp();
    fillStore(store, 2);
    const out = captureIo();
    expect(await runCli(["people", "--data", store.path, "--take-pin", idOf(4)], out.io)).toBe(2);
    expect(out.errors()).toContain("Another Holdfast is running");
  });
});
