import { useSyncExternalStore } from "react";

/** Where in the page one is; it stands in the address, so that back, forward and reload work. */
export type Route =
  | { readonly place: "measure" }
  | { readonly place: "spindles" }
  | { readonly place: "spindle"; readonly spindleId: string; readonly checkId?: string | undefined }
  | { readonly place: "rounds" }
  | { readonly place: "dock"; readonly roundId?: string | undefined }
  | { readonly place: "gauges" }
  | { readonly place: "records" }
  | { readonly place: "setup" };

export function parseRoute(hash: string): Route {
  const [place, id, part, checkId] = hash
    .replace(/^#\/?/, "")
    .replace(/\?.*$/, "") // filters of a list
    .split("/");
  if (place === "spindles" && id !== undefined && id !== "") {
    return { place: "spindle", spindleId: id, checkId: part === "checks" ? checkId : undefined };
  }
  if (place === "dock") return { place, roundId: id === "" ? undefined : id };
  if (place === "rounds" || place === "spindles" || place === "gauges" || place === "records" || place === "setup")
    return { place };
  return { place: "measure" };
}

export function hrefOf(route: Route): string {
  if (route.place === "dock" && route.roundId !== undefined) return `#/dock/${route.roundId}`;
  if (route.place !== "spindle") return `#/${route.place}`;
  const page = `#/spindles/${route.spindleId}`;
  return route.checkId === undefined ? page : `${page}/checks/${route.checkId}`;
}

export function go(route: Route): void {
  location.hash = hrefOf(route);
}

export function useRoute(): Route {
  const hash = useSyncExternalStore(subscribe, () => location.hash);
  return parseRoute(hash);
}

function subscribe(changed: () => void): () => void {
  addEventListener("hashchange", changed);
  return () => removeEventListener("hashchange", changed);
}
