const KEY = "holdfast.singleKeys";

/** Whether single letters act on this page; a choice of this browser, on unless turned off. */
export const singleKeys = {
  on: (): boolean => localStorage.getItem(KEY) !== "off",
  set: (on: boolean): void => localStorage.setItem(KEY, on ? "on" : "off"),
};
