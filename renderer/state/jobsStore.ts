import { createStore } from "zustand/vanilla";
import type { JobView } from "../../app/contract/programViews.ts";

/** Long work by its id. What is over stays until the page is loaded anew, so a screen opened later still finds it. */
export type JobsState = { readonly jobs: Readonly<Record<string, JobView>> };

export const createJobsStore = () => createStore<JobsState>(() => ({ jobs: {} }));
