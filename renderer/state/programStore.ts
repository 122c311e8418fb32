import { createStore } from "zustand/vanilla";
import type { BackupView } from "../../app/contract/backupViews.ts";
import type { PcSettings, ProgramView } from "../../app/contract/programViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Connection } from "../client/Client.ts";

/** The program, the works and this PC's settings; all undefined until the first snapshot. */
export type ProgramState = {
  readonly connection: Connection;
  readonly program: ProgramView | undefined;
  readonly works: Works | undefined;
  readonly settings: PcSettings;
  readonly backup: BackupView | undefined;
  /** The check that one act can still take back. */
  readonly undo: { readonly checkId: string; readonly untilMs: number } | undefined;
};

/** What holds before the program has said otherwise. */
const firstSettings: PcSettings = { theme: "system", language: "system", sound: true, initials: false };

export const createProgramStore = () =>
  createStore<ProgramState>(() => ({
    connection: "connecting",
    program: undefined,
    works: undefined,
    settings: firstSettings,
    backup: undefined,
    undo: undefined,
  }));
