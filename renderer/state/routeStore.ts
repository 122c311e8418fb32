import { useSyncExternalStore } from "react";

/** Where in the page one is; it stands in the address, so that back, forward and reload work. */
export type Route =
  | { readonly place: "measure" }
  | { readonly place: "spindles" }
  | { readonly place: "spindle"; readonly spindleId: string; readonly checkId?: string | undefined }
  | { readonly place: "rounds" }
  | { readonly place: "dock"; readonly roundId?: string | undefined }
  | { readonly place: "gauge"; readonly gaugeId: string; readonly part?: "prove" | undefined }
  /** The proof in work. */
  | { readonly place: "proving" }
  | { readonly place: "proof"; readonly proofId: string; readonly part?: "affected" | undefined }
  | { readonly place: "factor"; readonly adapterId: string }
  | { readonly place: "gauges"; readonly find?: string | undefined }
  | { readonly place: "records" }
  | { readonly place: "setup" }
  /** `about`: the spindle whose figures the statistics are explained with. */
  | { readonly place: "help"; readonly topic?: string | undefined; readonly about?: string | undefined };

export function parseRoute(hash: string): Route {
  const [place, id, part, checkId] = hash
    .replace(/^#\/?/, "")
    .replace(/\?.*$/, "") // filters of a list
    .split("/");
  if (place === "spindles" && id !== undefined && id !== "") {
    return { place: "spindle", spindleId: id, checkId: part === "checks" ? checkId : undefined };
  }
  if (place === "gauges" && id !== undefined && id !== "") return ofGauges(id, part, checkId);
  if (place === "gauges") return { place, find: /[?&]find=([^&]+)/.exec(hash)?.[1] };
  if (place === "dock") return { place, roundId: id === "" ? undefined : id };
  if (place === "help") return { place, topic: id === "" ? undefined : id, about: part };
  if (place === "rounds" || place === "spindles" || place === "records" || place === "setup") return { place };
  return { place: "measure" };
}

/** The places that belong to Gauges. */
function ofGauges(id: string, part: string | undefined, more: string | undefined): Route {
  if (id === "proving") return { place: "proving" };
  if (id === "proofs" && part !== undefined)
    return { place: "proof", proofId: part, part: more === "affected" ? more : undefined };
  if (id === "factor" && part !== undefined) return { place: "factor", adapterId: part };
  return { place: "gauge", gaugeId: id, part: part === "prove" ? part : undefined };
}

export function hrefOf(route: Route): string {
  if (route.place === "gauges" && route.find !== undefined) return `#/gauges?find=${route.find}`;
  if (route.place === "dock" && route.roundId !== undefined) return `#/dock/${route.roundId}`;
  switch (route.place) {
    case "gauge":
      return `#/gauges/${route.gaugeId}${route.part === undefined ? "" : `/${route.part}`}`;
    case "proving":
      return "#/gauges/proving";
    case "proof":
      return `#/gauges/proofs/${route.proofId}${route.part === undefined ? "" : `/${route.part}`}`;
    case "factor":
      return `#/gauges/factor/${route.adapterId}`;
    case "help":
      return ["#/help", route.topic, route.about].filter((part) => part !== undefined).join("/");
  }
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
