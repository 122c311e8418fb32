import { useCallback, useEffect } from "react";

/** The whole screen for the figure: for a wall, or for eyes at two metres. Escape leads back, as everywhere. */
export function useWall(): () => void {
  useEffect(() => {
    const changed = () => document.documentElement.classList.toggle("wall", document.fullscreenElement !== null);
    document.addEventListener("fullscreenchange", changed);
    return () => {
      document.removeEventListener("fullscreenchange", changed);
      document.documentElement.classList.remove("wall");
    };
  }, []);
  return useCallback(() => {
    const done =
      document.fullscreenElement === null
        ? document.documentElement.requestFullscreen?.()
        : document.exitFullscreen?.();
    done?.catch(() => {}); // a browser that refuses leaves everything as it is
  }, []);
}
