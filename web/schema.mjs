// The JSON Schema of the report's file, from the declarations that the Rust structs gave: written to
// public/report.schema.json by `cargo xtask types`, held to them by tests/node/schema.test.mjs.

import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { createGenerator } from "ts-json-schema-generator";

const file = (path) => fileURLToPath(new URL(path, import.meta.url));

/** The schema as text. More fields than it names are allowed: later versions may add some. */
export function schema() {
  const path = file("../crates/boundary/types.d.ts");
  const made = createGenerator({ path, type: "ReportFile", skipTypeCheck: true, additionalProperties: true }).createSchema("ReportFile");
  return `${JSON.stringify({ title: "A report of Straight Answer with what it was made from, version 1", ...made }, null, 1)}\n`;
}

if (process.argv[1] === file("schema.mjs")) writeFileSync(file("public/report.schema.json"), schema());
