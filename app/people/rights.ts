/** What a person is here for. */
export const roles = ["technician", "planner", "lab", "keeper"] as const;
export type Role = (typeof roles)[number];

/**
 * The acts that not everybody may do once somebody keeps the works' people, and whose they are. Measuring itself is open
 * to all; so is everything while there is no keeper.
 */
export const rights = {
  /** File a check, and take back the one just filed. */
  accept: ["technician", "planner", "lab", "keeper"],
  /** Take a filed check out of the count, or mark checks to be measured again. */
  void: ["planner", "lab", "keeper"],
  /** Limits, decision rule, baseline: what checks are judged by. */
  limits: ["planner", "keeper"],
  releaseStop: ["planner", "keeper"],
  /** Proofs, curves, scales, references: what readings are corrected by. */
  proof: ["lab", "keeper"],
  /** Put a copy in the place of the records, or take others' records over. */
  restore: ["keeper"],
  /** Names, roles, PINs of others. */
  people: ["keeper"],
} as const satisfies Readonly<Record<string, readonly Role[]>>;
export type Right = keyof typeof rights;

export const may = (role: Role, right: Right): boolean => (rights[right] as readonly Role[]).includes(role);

/** The PIN is asked for anew at each such act; for the others a right one holds for a while. */
export const askedEachTime: ReadonlySet<Right> = new Set(["void", "releaseStop", "restore", "people"]);
