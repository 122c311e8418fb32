import type { StoreApi } from "zustand/vanilla";
import type { Asked } from "../../app/contract/result.ts";
import type { Client } from "../client/Client.ts";
import type { AskState } from "./askStore.ts";

/**
 * The client for the page: a call the program refuses for want of a name, a role or a PIN waits for the people in front of
 * it and is then made again. Without an answer the refusal comes back as it was.
 */
export function askingClient(client: Client, ask: StoreApi<AskState>): Client {
  return {
    ...client,
    call: async (name, input) => {
      for (;;) {
        const result = await client.call(name, input);
        if (result.ok || result.error.asks === undefined || ask.getState().open !== undefined) return result;
        if (!(await answered(ask, result.error.asks))) return result;
      }
    },
  };
}

function answered(ask: StoreApi<AskState>, asks: Asked): Promise<boolean> {
  return new Promise((done) => {
    const settle = (again: boolean) => {
      ask.setState({ open: undefined });
      done(again);
    };
    ask.setState({ open: { asks, settle } });
  });
}
