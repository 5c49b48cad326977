// Starting Python. One way in, for the worker and for the tests in Node, so that another way of starting (from a picture of
// the started interpreter's memory) can take its place: nothing here depends on the clock, on chance or on the browser,
// every module is imported once, and Python is handed no JavaScript object to keep.
import { loadPyodide } from "pyodide";

/**
 * @typedef {object} Parts What Python is started from.
 * @property {import("pyodide").PyodideConfig} config where the interpreter's own files are
 * @property {Promise<Record<string, Uint8Array>>} zips our zips by name; their modules are imported from them as they are
 */

/**
 * Start Python and open calc's door: JSON text in, JSON text out.
 * @param {Parts} parts
 * @returns {Promise<(request: string) => string>}
 */
export async function boot({ config, zips }) {
  const python = await loadPyodide({ ...config, env: { PYTHONHASHSEED: "0", PYTHONDONTWRITEBYTECODE: "1", ...config.env } });
  const places = Object.entries(await zips).map(([name, bytes]) => {
    python.FS.writeFile(`/lib/${name}.zip`, bytes);
    return `/lib/${name}.zip`;
  });
  python.runPython(`import sys; sys.path += ${JSON.stringify(places)}`);
  return python.pyimport("calc.door").handle;
}
