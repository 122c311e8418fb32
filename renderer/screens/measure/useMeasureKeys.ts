import { useCore } from "../../state/CoreContext.ts";
import { useKeys } from "../../ui/keys/useKeys.ts";
import type { Place } from "./round/useGoTo.ts";
import { useSimulated } from "./simulated/useSimulated.ts";
import { type TagPart, tagKeys } from "./tag/TagBar.tsx";
import type { MeasureActs } from "./useMeasureActs.ts";
import { useScan } from "./useScan.ts";

/** The keys of Measure: the space bar files, letters do what the buttons beside them do, a scanned label tags. */
export function useMeasureKeys(
  acts: MeasureActs,
  open: (part: TagPart) => void,
  simulated: boolean,
  wall: () => void,
  goTo: (place: Place) => Promise<boolean>,
): void {
  const core = useCore();
  const onScan = useScan(goTo);
  const tagged = Object.entries(tagKeys).map(([part, key]) => [key, () => open(part as TagPart)]); // its own keys
  const command = useSimulated();
  const clampOrRelease = () => {
    const { word } = core.live.getState().live;
    command(word === "holding" || word === "rising" ? "release" : "clamp");
  };
  useKeys({
    keys: {
      ...Object.fromEntries(tagged),
      " ": acts.file,
      z: acts.zero,
      r: acts.takeAgain,
      d: acts.dropLast,
      t: acts.typeIn,
      f: wall,
      ...(simulated && { c: clampOrRelease }),
    },
    onScan,
  });
}
