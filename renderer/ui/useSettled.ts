import { useEffect, useState } from "react";

/**
 * A value once it has stood for a while, so that what flickers is never seen.
 * @param how  `wait`: it must stand for `ms`; `atOnce`: it need not; `pass`: it is gone over, however long it stands
 */
export function useSettled<T>(value: T, ms: number, how: "wait" | "atOnce" | "pass" = "wait"): T | undefined {
  const [settled, setSettled] = useState<T>();
  useEffect(() => {
    if (how === "pass") return;
    if (how === "atOnce") {
      setSettled(value);
      return;
    }
    const timer = setTimeout(() => setSettled(value), ms);
    return () => clearTimeout(timer);
  }, [value, ms, how]);
  return settled;
}
