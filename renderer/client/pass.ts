const KEY = "holdfast.token";

/** The parts of a page that letting it in touches. */
export type Door = {
  readonly location: { readonly hash: string; readonly pathname: string; readonly search: string };
  readonly history: Pick<History, "replaceState">;
  readonly storage: Pick<Storage, "getItem" | "setItem" | "removeItem">;
  readonly fetch: typeof fetch;
};

/**
 * The page's token: exchanged for the one-time code in the address, else kept from before in this tab. The code is
 * wiped from the address before anything else, so it stands in no history. Undefined: the page was not let in.
 */
export async function takePass(door: Door): Promise<string | undefined> {
  const code = /^#code=([\w-]+)$/.exec(door.location.hash)?.[1];
  if (code === undefined) return door.storage.getItem(KEY) ?? undefined;
  door.history.replaceState(null, "", `${door.location.pathname}${door.location.search}`);
  const answer = await door.fetch("/session", {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ code }),
  });
  // A code used up by a reload leaves the token of the first load standing.
  if (!answer.ok) return door.storage.getItem(KEY) ?? undefined;
  const { token } = (await answer.json()) as { token: string }; // our own host's answer
  door.storage.setItem(KEY, token);
  return token;
}

export function forgetPass(door: Door): void {
  door.storage.removeItem(KEY);
}
