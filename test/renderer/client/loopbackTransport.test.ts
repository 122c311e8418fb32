import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { loopbackTransport } from "../../../renderer/client/loopbackTransport.ts";
import type { Door } from "../../../renderer/client/pass.ts";

/** A socket that does what the test says. */
class StandInSocket {
  sent: string[] = [];
  readyState = 1;
  onopen: (() => void) | undefined;
  onmessage: ((message: { data: string }) => void) | undefined;
  onclose: ((event: { code: number }) => void) | undefined;
  send(text: string) {
    this.sent.push(text);
  }
  close() {
    this.readyState = 3;
  }
}

function partsWith(status: number, body: unknown = { ok: true, value: 1 }) {
  const sockets: StandInSocket[] = [];
  const door: Door = {
    location: { hash: "", pathname: "/", search: "" },
    history: { replaceState: () => {} },
    storage: { getItem: () => "T", setItem: () => {}, removeItem: vi.fn() },
    fetch: vi.fn(async () => ({ ok: status === 200, status, json: async () => body }) as Response),
  };
  const socket = () => {
    const one = new StandInSocket();
    sockets.push(one);
    return one as unknown as WebSocket; // the parts of one that the transport uses
  };
  return { door, socket, sockets };
}

const settle = () => vi.advanceTimersByTimeAsync(0);

describe("loopbackTransport", () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it("sends the token first and is open once it hears something", async () => {
    const parts = partsWith(200);
    const states: string[] = [];
    loopbackTransport(parts).open(
      () => {},
      (state) => states.push(state),
    );
    await settle();
    parts.sockets[0]!.onopen!();
    expect(parts.sockets[0]!.sent).toEqual(['{"token":"T"}']);
    parts.sockets[0]!.onmessage!({ data: '{"seq":0,"event":"page.joined","data":null}' });
    expect(states).toEqual(["open"]);
  });

  it("looks for a lost program again and again, later each time", async () => {
    const parts = partsWith(200);
    const states: string[] = [];
    loopbackTransport(parts).open(
      () => {},
      (state) => states.push(state),
    );
    await settle();
    parts.sockets[0]!.onclose!({ code: 1006 });
    await vi.advanceTimersByTimeAsync(250);
    expect(parts.sockets).toHaveLength(2);
    parts.sockets[1]!.onclose!({ code: 1006 });
    await vi.advanceTimersByTimeAsync(250);
    expect(parts.sockets).toHaveLength(2);
    await vi.advanceTimersByTimeAsync(250);
    expect(parts.sockets).toHaveLength(3);
    expect(states).toEqual(["lost"]);
  });

  it("gives up and says so when the program does not know the page", async () => {
    const parts = partsWith(401);
    const states: string[] = [];
    const transport = loopbackTransport(parts);
    transport.open(
      () => {},
      (state) => states.push(state),
    );
    await settle();
    expect(await transport.call("state.snapshot", {})).toMatchObject({ ok: false, error: { key: "pageRefused" } });
    expect(states).toEqual(["refused"]);
    expect(parts.door.storage.removeItem).toHaveBeenCalled();
  });

  it("answers a call at once when the program cannot be reached", async () => {
    const parts = partsWith(200);
    vi.mocked(parts.door.fetch).mockRejectedValue(new TypeError("Failed to fetch"));
    expect(await loopbackTransport(parts).call("series.clear", {})).toMatchObject({
      ok: false,
      error: { key: "coreAway" },
    });
  });
});
