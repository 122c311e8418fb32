/** A number of bytes for people. */
export const sizeText = (bytes: number): string =>
  bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} KB` : `${(bytes / 1e6).toFixed(1)} MB`;
