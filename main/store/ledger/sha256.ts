import { hash } from "node:crypto";

/** SHA-256 (FIPS 180-4), lower-case hex; a text is hashed as UTF-8. */
export const sha256 = (data: string | Uint8Array): string => hash("sha256", data, "hex");
