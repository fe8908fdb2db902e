import { appendFileSync, existsSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { serve } from "@hono/node-server";
import { Hono } from "hono";

// The smallest house that the harness can be proved on: one page that keeps a count on the device and one on the disk,
// works without its server, and has one fault per thing that the harness should find (asked for by its address).
const { values } = parseArgs({
  options: { port: { type: "string" }, file: { type: "string", default: "count.log" } },
});
const written = () =>
  existsSync(values.file) ? readFileSync(values.file, "utf8").trim().split("\n").length : 0;

const page = (faults: URLSearchParams) => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="description" content="A page to prove the harness on">
<title>Trial</title>
<link rel="icon" href="data:,">
<style>
  body { font: 17px sans-serif; color: #1d1a15; background: #faf7f0; margin: 16px; }
  button { min-width: 62px; min-height: 62px; font: inherit; }
  main { min-height: 92vh; display: flex; flex-direction: column; }
  #done { margin-top: auto; }
  ${faults.has("wide") ? "main { width: 150vw; }" : ""}
  ${faults.has("clipped") ? "h1 { width: 40px; overflow: hidden; white-space: nowrap; }" : ""}
  ${faults.has("pale") ? "p { color: #e5e0d5; }" : ""}
  ${faults.has("small") ? "button { min-width: 0; min-height: 0; width: 20px; height: 20px; padding: 0; overflow: hidden; }" : ""}
  @media (prefers-color-scheme: dark) { body { color: #eee9de; background: #15140f; } }
</style>
</head>
<body>
<main>
  <h1>Trial of the harness</h1>
  <p>Kept here: <output id="kept">0</output>. Last typed: <output id="typed">nothing</output></p>
  <div>${[..."0123456789"].map((digit) => `<button type="button" class="pad">${digit}</button>`).join("")}</div>
  <label>Value <input id="value" inputmode="decimal" style="min-height:62px"></label>
  <button type="button" id="done">DONE</button>
</main>
<script>
  const kept = document.getElementById("kept");
  const opened = new Promise((resolve, reject) => {
    const request = indexedDB.open("trial", 1);
    request.onupgradeneeded = () => request.result.createObjectStore("entries", { autoIncrement: true });
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const show = async () => {
    const count = (await opened).transaction("entries").objectStore("entries").count();
    count.onsuccess = () => { kept.textContent = String(count.result); };
  };
  document.getElementById("done").addEventListener("click", async () => {
    const step = (await opened).transaction("entries", "readwrite", { durability: "strict" });
    step.objectStore("entries").add({ at: Date.now() });
    step.oncomplete = show;
    fetch("/entries", { method: "POST" }).catch(() => {});
    ${faults.has("error") ? 'console.error("planted");' : ""}
    ${faults.has("throw") ? 'throw new Error("planted throw");' : ""}
  });
  for (const button of document.querySelectorAll(".pad")) {
    button.addEventListener("click", () => { document.getElementById("typed").textContent += button.textContent; });
  }
  show();
  navigator.serviceWorker.register("/worker.js");
</script>
</body>
</html>`;

const serviceWorker = `
self.addEventListener("install", (event) => event.waitUntil(caches.open("trial").then((all) => all.add("/")).then(() => skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(clients.claim()));
self.addEventListener("fetch", (event) => {
  if (event.request.mode === "navigate") event.respondWith(fetch(event.request).catch(() => caches.match("/")));
});`;

const app = new Hono();
app.get("/", (context) => context.html(page(new URL(context.req.url).searchParams)));
app.get("/worker.js", (context) => context.body(serviceWorker, 200, { "content-type": "text/javascript" }));
app.get("/entries", (context) => context.text(String(written())));
app.post("/entries", (context) => {
  appendFileSync(values.file, "one\n");
  return context.text(String(written()));
});
const server = serve({ fetch: app.fetch, hostname: "127.0.0.1", port: Number(values.port) });
process.on("SIGTERM", () => server.close(() => process.exit(0)));
