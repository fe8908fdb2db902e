import "./styles/tokens.css";
import "./styles/base.css";
import "./effects-at-once.ts";
import { createRoot } from "react-dom/client";
import { settings } from "./device/settings.ts";
import { engineOver, type Port } from "./engine/client.ts";
import { needTemporal } from "./engine/temporal.ts";
import { AnswersContext, answersOf } from "./engine/use-ask.ts";
import { App } from "./shell/app.tsx";
import { guardTouches } from "./shell/guard.ts";
import { listenToKeys } from "./shell/keyboard.ts";
import { keepPaper } from "./shell/paper.ts";
import { loadWords } from "./words/words.ts";

const root = document.getElementById("page") as HTMLElement;

keepPaper();
guardTouches(document.body);
listenToKeys();
const worker = new Worker(new URL("./engine/worker.ts", import.meta.url), { type: "module", name: "engine" });
const engine = engineOver(worker as unknown as Port, new URL(".", location.href).href.replace(/\/$/, ""));
await Promise.all([loadWords(settings()), needTemporal()]);
createRoot(root).render(
  <AnswersContext value={answersOf(engine)}>
    <App />
  </AnswersContext>,
);
