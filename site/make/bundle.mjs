// node bundle.mjs: reads {entry, format, define} and writes the bundled, minified file.
import fs from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const { entry, format, define } = JSON.parse(fs.readFileSync(0, "utf8"));
const built = await build({
  absWorkingDir: fileURLToPath(new URL("..", import.meta.url)),
  entryPoints: [entry],
  bundle: true,
  write: false,
  minify: true,
  format,
  define,
  target: ["es2022", "safari16.4", "firefox121"],
  legalComments: "none",
  external: ["node:*"],
  logLevel: "warning",
});
process.stdout.write(built.outputFiles[0].contents);
