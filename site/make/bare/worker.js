import { loadPyodide } from "./pyodide/pyodide.mjs";

const python = await loadPyodide({ indexURL: new URL("pyodide/", import.meta.url).href });
self.postMessage(String(python.runPython("1 + 1")));
