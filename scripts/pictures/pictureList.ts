/** One picture of the running program: where it is written, what of the screen it shows, and which sources draw it. */
export type Picture = {
  readonly name: string;
  /** Folders and files under the checkout whose change makes the picture old. */
  readonly sources: readonly string[];
};

const shell = ["renderer/screens/shell/NavRail.tsx", "renderer/screens/shell/shell.css", "renderer/ui"];
const of = (name: string, ...folders: string[]): Picture => ({
  name,
  sources: [...shell, ...folders.map((folder) => `renderer/${folder}`)],
});

/** The screens whose pictures stand in docs and help; what is not listed has none. */
export const pictures: readonly Picture[] = [
  of("measure", "screens/measure", "chart/strip"),
  of("spindles", "screens/spindles"),
  of("spindle", "screens/spindle", "chart/trend"),
  of("dock", "screens/dock"),
  of("rounds", "screens/rounds"),
  of("gauges", "screens/gauges"),
  of("records", "screens/records"),
  of("setup", "screens/setup", "screens/link"),
  of("help", "screens/help/Help.tsx", "screens/help/texts.ts", "screens/help/help.css"),
  of("import", "screens/importList"),
];
