import { plainTaper, readTaper } from "./readTaper.ts";

/**
 * Whether an adapter's taper goes into a spindle's. `unsure`: the cone is the same but the form differs or is not stated
 * (flange, keys, gripper or retention knob may not fit), or a name is none of the standard ones.
 * @param spindle  designation as it stands in the register, any spelling
 * @param adapter  likewise
 * @see ISO 12164-1, ISO 7388-1 and -2, ISO 26623-1 for the interfaces (from memory)
 */
export function taperFit(spindle: string, adapter: string): "fits" | "unsure" | "doesNotFit" {
  const [place, tool] = [readTaper(spindle), readTaper(adapter)];
  if (place === undefined || tool === undefined) {
    const same = plainTaper(spindle);
    return same !== "" && same === plainTaper(adapter) ? "fits" : "unsure";
  }
  if (place.designation === tool.designation) return "fits";
  return place.kind === tool.kind && place.coneSize === tool.coneSize ? "unsure" : "doesNotFit";
}
