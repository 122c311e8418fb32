import type { Route } from "../../state/routeStore.ts";

/** The help that fits a screen; a spindle's own explains the statistics with its figures. */
export function helpFor(route: Route): Route {
  switch (route.place) {
    case "measure":
      return { place: "help", topic: "measure" };
    case "dock":
    case "rounds":
      return { place: "help", topic: "round" };
    case "spindles":
      return { place: "help", topic: "verdicts" };
    case "spindle":
      return route.checkId === undefined
        ? { place: "help", topic: "statistics", about: route.spindleId }
        : { place: "help", topic: "verdicts" };
    case "gauges":
    case "gauge":
    case "proving":
    case "proof":
    case "factor":
      return { place: "help", topic: "proof" };
    case "records":
      return { place: "help", topic: "backup" };
    case "setup":
      return { place: "help", topic: "connect" };
    case "help":
      return route;
  }
}
