import type { SerialSetting } from "../../../app/contract/linkViews.ts";

const KEY = "holdfast.ports";
export const usualSetting: SerialSetting = { baud: 9600, dataBits: 8, parity: "none", stopBits: 1 };

type Kept = Readonly<Record<string, SerialSetting>>;

/** The setting each port was last used with, kept by this browser; it affects no verdict. */
export const portMemory = {
  of: (path: string): SerialSetting | undefined => all()[path],
  keep: (path: string, setting: SerialSetting): void =>
    localStorage.setItem(KEY, JSON.stringify({ ...all(), [path]: setting })),
};

function all(): Kept {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "{}");
    return typeof kept === "object" && kept !== null ? (kept as Kept) : {}; // only this file writes there
  } catch {
    return {};
  }
}

/** "9600 8N1", as the trade writes it. */
export function settingText(setting: SerialSetting): string {
  return `${setting.baud} ${setting.dataBits}${setting.parity[0]!.toUpperCase()}${setting.stopBits}`;
}
