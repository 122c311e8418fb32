import { join } from "node:path";
import { openStore } from "../../../main/store/open.ts";
import { aSpindle } from "../../support/aSpindle.ts";

/** Files so many spindles into the data file of a home folder, before the program opens it. */
export function manySpindles(home: string, count: number): void {
  const store = openStore({ path: join(home, "holdfast.sqlite"), now: Date.now });
  store.append(
    Array.from({ length: count }, (_, i) => ({
      kind: "spindle",
      body: aSpindle({ spindleId: store.newId(), name: `Larch ${i + 1}`, area: `Hall ${i % 9}` }),
    })),
  );
  store.close();
}
