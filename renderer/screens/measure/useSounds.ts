import { useEffect } from "react";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { tone } from "../../ui/sound.ts";

/** A short high tone when a clamping is taken, a long low one on overload; a setting of this PC turns both off. */
export function useSounds(): void {
  const core = useCore();
  const on = useProgram((state) => state.settings.sound);
  useEffect(() => {
    if (!on) return;
    const taken = core.client.on("cycle.closed", () => tone(1_320, 0.18));
    const moved = core.live.subscribe(({ live }, before) => {
      if (live.word === "overload" && before.live.word !== "overload") tone(220, 0.9);
    });
    return () => {
      taken();
      moved();
    };
  }, [core, on]);
}
