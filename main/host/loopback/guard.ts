import type { IncomingHttpHeaders } from "node:http";

/**
 * Why a request is not ours, or undefined when it may be read. Comes before everything else, the socket's upgrade too:
 * a page of a strange site can send requests to this machine, and a name that is pointed at 127.0.0.1 reaches
 * it as well, so both the name that was asked for and the page that asks must be ours.
 */
export function refusal(headers: IncomingHttpHeaders, port: number, needsOrigin: boolean): string | undefined {
  const own = [`127.0.0.1:${port}`, `localhost:${port}`];
  if (headers.host === undefined || !own.includes(headers.host)) return "wrong host";
  if (headers.origin === undefined) return needsOrigin ? "no origin" : undefined;
  return own.some((host) => headers.origin === `http://${host}`) ? undefined : "wrong origin";
}
