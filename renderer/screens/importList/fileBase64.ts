/** A file's bytes for a call. @throws what the platform says when it cannot be read */
export function fileBase64(file: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onerror = () => reject(reader.error);
    // A data address is asked for below: the result is a text.
    reader.onload = () => resolve((reader.result as string).slice((reader.result as string).indexOf(",") + 1));
    reader.readAsDataURL(file);
  });
}
