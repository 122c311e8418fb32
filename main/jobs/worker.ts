import { fileURLToPath } from "node:url";
import { registry } from "./registry.ts";
import { runOrder } from "./runOrder.ts";

await runOrder(registry, fileURLToPath(import.meta.url));
