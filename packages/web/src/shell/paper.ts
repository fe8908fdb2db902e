import { onSettings, settings } from "../device/settings.ts";

const dark = matchMedia("(prefers-color-scheme: dark)");
const contrast = matchMedia("(prefers-contrast: more)");
const COLOURS = { paper: "#FAF7F0", dark: "#15140F", sun: "#FFFFFF", night: "#000000" } as const;

/** Which of the four papers is shown: the chosen one, else what the system asks for. */
function paperNow(): keyof typeof COLOURS {
  const { paper } = settings();
  if (paper !== "device") return paper;
  if (contrast.matches) return dark.matches ? "night" : "sun";
  return dark.matches ? "dark" : "paper";
}

function lay() {
  const root = document.documentElement;
  const paper = paperNow();
  root.dataset["paper"] = paper;
  root.dataset["hand"] = settings().wet ? "wet" : "dry";
  root.dataset["side"] = settings().hand;
  document.querySelector('meta[name="theme-color"]')?.setAttribute("content", COLOURS[paper]);
}

/** Puts paper, wet hand and side onto the page and keeps them so. */
export function keepPaper(): void {
  lay();
  onSettings(lay);
  dark.addEventListener("change", lay);
  contrast.addEventListener("change", lay);
}
