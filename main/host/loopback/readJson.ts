import type { IncomingMessage } from "node:http";

export type Body = { readonly value: unknown } | { readonly refused: 400 | 413 | 415 };

/** The JSON body of a request, up to a limit; a body that is larger is not read to its end. */
export async function readJson(request: IncomingMessage, maxBytes: number): Promise<Body> {
  if (!/^application\/json\b/i.test(request.headers["content-type"] ?? "")) return { refused: 415 };
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request) {
    const bytes = chunk as Buffer; // no encoding is set on the request
    length += bytes.length;
    if (length > maxBytes) return { refused: 413 };
    chunks.push(bytes);
  }
  try {
    return { value: JSON.parse(Buffer.concat(chunks).toString("utf8")) };
  } catch {
    return { refused: 400 };
  }
}
