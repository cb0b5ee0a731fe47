import "@fontsource-variable/source-sans-3/wght.css";
import "./look/tokens.css";
import "./look/sheet.css";
import "./look/stick.css";
import "./look/fields.css";
import "./look/sums.css";
import "./look/answer.css";
import "./look/words.css";
import "./look/working.css";
import "./look/drawings.css";
import "./look/leaf-section.css";
import "./look/model.css";
import "./look/piece.css";
import "./look/parts.css";
import "./look/narrow.css";
import "./look/sizes.css";
import "./look/pieces.css";
import "./look/papers.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./index.ts";

const sheet = document.getElementById("sheet");
if (!sheet) throw new Error("the page has no sheet to draw on");
createRoot(sheet).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
