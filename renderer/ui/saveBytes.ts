/** Hands bytes or a text to the browser as a file, which asks or keeps it where it keeps downloads. */
export function saveBytes(fileName: string, mime: string, content: Uint8Array<ArrayBuffer> | string): void {
  const address = URL.createObjectURL(new Blob([content], { type: mime }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  URL.revokeObjectURL(address);
}
