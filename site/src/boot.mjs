// Starting Python. One way in, for the worker and for the tests in Node, so that another way of starting (from a picture of
// the started interpreter's memory) can take its place: nothing here depends on the clock, on chance or on the browser,
// every module is imported once, and Python is handed no JavaScript object to keep.
import { loadPyodide } from "pyodide";

const HOME = "/lib/tenpenny";

/**
 * @typedef {object} Parts What Python is started from.
 * @property {import("pyodide").PyodideConfig} config where the interpreter's own files are
 * @property {Promise<Record<string, string>[]>} files our modules, and those that they need: texts by name
 */

/**
 * Start Python and open calc's door: JSON text in, JSON text out.
 * @param {Parts} parts
 * @returns {Promise<(request: string) => string>}
 */
export async function boot({ config, files }) {
  const env = { PYTHONHASHSEED: "0", PYTHONDONTWRITEBYTECODE: "1", ...config.env };
  const python = await loadPyodide({ ...config, env });
  for (const [name, text] of Object.entries(Object.assign({}, ...(await files)))) {
    python.FS.mkdirTree(`${HOME}/${name}`.replace(/\/[^/]*$/, ""));
    python.FS.writeFile(`${HOME}/${name}`, text);
  }
  python.runPython(`import sys; sys.path.append("${HOME}")`);
  return python.pyimport("calc.door").handle;
}
