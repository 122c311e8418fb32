import { checksumOf } from "../../gauge/checksums.ts";
import type { DumpFormat } from "./DumpFormat.ts";

const methods = ["xor", "sum256", "negativeSum256"] as const;

/** Two hexadecimal digits behind a mark at the end of nearly all lines, that agree with a known check. */
export function findDumpCheck(lines: readonly string[]): DumpFormat["checksum"] {
  for (const mark of ["*", "#", " ", ";", ","]) {
    for (const method of methods) {
      const right = lines.filter((raw) => {
        const found = /^(.+)([*# ;,])([0-9A-F]{2}|[0-9a-f]{2})$/.exec(raw);
        if (found === null || found[2] !== mark) return false;
        const bytes = Uint8Array.from(found[1]!, (c) => c.charCodeAt(0) & 0xff);
        return checksumOf(method, bytes, 0, bytes.length) === Number.parseInt(found[3]!, 16);
      });
      if (right.length >= 3 && right.length >= 0.7 * lines.length) return { method, mark };
    }
  }
  return undefined;
}
