import type { MadeFile } from "../../../app/contract/roundViews.ts";

/** Hands a file the core has made to the browser, which asks or keeps it where it keeps downloads. */
export function saveFile({ fileName, mime, base64 }: MadeFile): void {
  const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
  const address = URL.createObjectURL(new Blob([bytes], { type: mime }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(address);
}
