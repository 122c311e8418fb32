import type { MadeFile } from "../../../app/contract/roundViews.ts";
import { saveBytes } from "../../ui/saveBytes.ts";

/** Hands a file the core has made to the browser, which asks or keeps it where it keeps downloads. */
export function saveFile({ fileName, mime, base64 }: MadeFile): void {
  saveBytes(
    fileName,
    mime,
    Uint8Array.from(atob(base64), (c) => c.charCodeAt(0)),
  );
}
