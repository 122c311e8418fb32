import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { connect } from "./client/connect.ts";
import { App } from "./screens/shell/App.tsx";
import { CoreContext } from "./state/CoreContext.ts";
import { createCore } from "./state/createCore.ts";

const root = document.getElementById("root");
if (root === null) throw new Error("index.html has lost its root");
const core = createCore(connect(window), () => location.reload());
createRoot(root).render(
  <StrictMode>
    <CoreContext value={core}>
      <App />
    </CoreContext>
  </StrictMode>,
);
