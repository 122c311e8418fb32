import type { CoursePoint, ServiceKind, ServiceMark } from "./History.ts";

/** Work that changes what the springs, the gripper or the setting give: the history begins anew there. */
const renewing: ReadonlySet<ServiceKind> = new Set([
  "lubricated",
  "gripper",
  "springs",
  "unitExchanged",
  "setting",
  "taperGround",
]);

const DAY_MS = 86_400_000;

/** A service that cuts the history, and the first check after it. */
export type ServiceCut = {
  readonly mark: ServiceMark;
  /** Position of the first check after it; the number of checks when none came yet. */
  readonly firstAfter: number;
};

/**
 * Where services cut a history. A crash or another event cuts only when it set a new baseline. A check of the
 * service's own day counts as after it, unless it, or a later one of that day, was made as the check before the service.
 * @param points  in the order of time
 */
export function serviceCuts(points: readonly CoursePoint[], events: readonly ServiceMark[]): ServiceCut[] {
  return events
    .filter((mark) => mark.newBaseline || renewing.has(mark.kind))
    .sort((a, b) => a.atMs - b.atMs)
    .map((mark) => {
      const first = points.findIndex((p) => p.atMs >= mark.atMs);
      const lastBefore = points.findLastIndex((p) => isOfDay(p, mark) && p.reason === "beforeService");
      return { mark, firstAfter: Math.max(first < 0 ? points.length : first, lastBefore + 1) };
    });
}

function isOfDay(point: CoursePoint, mark: ServiceMark): boolean {
  return point.atMs >= mark.atMs && point.atMs < mark.atMs + DAY_MS;
}
