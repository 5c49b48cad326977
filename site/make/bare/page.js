// The least that a page can do: start Pyodide as it comes, in a worker, and answer 1 + 1. Kept offline as ours is.
const worker = new Worker(new URL("worker.js", import.meta.url), { type: "module" });
worker.onmessage = async ({ data }) => {
  document.getElementById("answer").textContent = data;
  navigator.serviceWorker.addEventListener("message", ({ data: told }) => {
    if (told.whole) document.getElementById("kept").textContent = "whole";
  });
  await navigator.serviceWorker.register(new URL("sw.js", import.meta.url));
  (await navigator.serviceWorker.ready).active.postMessage({ say: "keep" });
};
