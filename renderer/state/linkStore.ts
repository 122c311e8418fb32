import { createStore } from "zustand/vanilla";
import type { LinkView } from "../../app/contract/linkViews.ts";

/** Port and gauge as the program sees them. */
export type LinkState = { readonly link: LinkView | undefined };

export const createLinkStore = () => createStore<LinkState>(() => ({ link: undefined }));
