// The JSON Schema of the report's file, from the declarations that the Rust structs gave: written to
// public/report.schema.json by `cargo xtask types`, held to them by tests/node/schema.test.mjs.

import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { createGenerator } from "ts-json-schema-generator";

const file = (path) => fileURLToPath(new URL(path, import.meta.url));

/** What a file of this version says of itself. Another version has a schema of its own. */
const FORMAT = "straight-answer-report";
const VERSION = 1;

/** The schema as text. Nothing passes that it does not name. */
export function schema() {
  const path = file("../crates/boundary/types.d.ts");
  const made = createGenerator({
    path,
    type: "ReportFile",
    skipTypeCheck: true,
    additionalProperties: false,
  }).createSchema("ReportFile");
  const { format, version } = made.definitions.ReportFile.properties;
  Object.assign(format, { const: FORMAT });
  Object.assign(version, { const: VERSION });
  return `${JSON.stringify({ title: `A report of Straight Answer with what it was made from, version ${VERSION}`, ...made }, null, 1)}\n`;
}

if (process.argv[1] === file("schema.mjs")) writeFileSync(file("public/report.schema.json"), schema());
