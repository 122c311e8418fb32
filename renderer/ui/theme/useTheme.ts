import { createContext, useContext, useEffect, useState } from "react";
import type { PcSettings } from "../../../app/contract/programViews.ts";
import { applyTheme } from "./applyTheme.ts";
import type { Theme } from "./roles.ts";

/** Charts paint with it; everything else follows by style sheet. */
export const ThemeContext = createContext<Theme>("light");
export const useTheme = () => useContext(ThemeContext);

/** The theme to show for what was chosen, kept up with the machine's own when that is the choice. */
export function useChosenTheme(choice: PcSettings["theme"]): Theme {
  const [machine, setMachine] = useState<Theme>(() => (query()?.matches ? "dark" : "light"));
  useEffect(() => {
    const dark = query();
    const follow = () => setMachine(dark?.matches ? "dark" : "light");
    dark?.addEventListener("change", follow);
    return () => dark?.removeEventListener("change", follow);
  }, []);
  const theme = choice === "system" ? machine : choice;
  useEffect(() => applyTheme(document.documentElement, theme), [theme]);
  return theme;
}

const query = (): MediaQueryList | undefined => globalThis.matchMedia?.("(prefers-color-scheme: dark)");
