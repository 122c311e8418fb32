import { describe, expect, it, vi } from "vitest";
import { type Door, takePass } from "../../../renderer/client/pass.ts";

function doorAt(hash: string, answer: { ok: boolean; token?: string }, kept?: string) {
  const store = new Map(kept === undefined ? [] : [["holdfast.token", kept]]);
  const calls: string[] = [];
  const door: Door = {
    location: { hash, pathname: "/", search: "" },
    history: { replaceState: (_state, _title, url) => calls.push(`wipe ${url}`) },
    storage: {
      getItem: (key) => store.get(key) ?? null,
      setItem: (key, value) => store.set(key, value),
      removeItem: (key) => store.delete(key),
    },
    fetch: vi.fn(async (url, init) => {
      calls.push(`${init?.method} ${url} ${init?.body}`);
      return { ok: answer.ok, json: async () => ({ token: answer.token }) } as Response;
    }),
  };
  return { door, calls, store };
}

describe("takePass", () => {
  it("wipes the code from the address before it exchanges it, and keeps the token", async () => {
    const { door, calls, store } = doorAt("#code=abc-1_2", { ok: true, token: "T" });
    expect(await takePass(door)).toBe("T");
    expect(calls).toEqual(["wipe /", 'POST /session {"code":"abc-1_2"}']);
    expect(store.get("holdfast.token")).toBe("T");
  });

  it("uses the token of this tab when the address carries no code", async () => {
    const { door, calls } = doorAt("#/spindles", { ok: true }, "kept");
    expect(await takePass(door)).toBe("kept");
    expect(calls).toEqual([]);
  });

  it("is not let in with a used code and nothing kept", async () => {
    expect(await takePass(doorAt("#code=used", { ok: false }).door)).toBeUndefined();
  });
});
