import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { Core } from "./Core.ts";
import type { ProgramState } from "./programStore.ts";

export const CoreContext = createContext<Core | undefined>(undefined);

/** The page's core. @throws Error  outside the page's root */
export function useCore(): Core {
  const core = useContext(CoreContext);
  if (core === undefined) throw new Error("useCore needs a CoreContext around it");
  return core;
}

export const useProgram = <T>(select: (state: ProgramState) => T): T => useStore(useCore().program, select);
