// Packs a file by gzip and prints the hash of what is in it: Node brings both.
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { constants, gzipSync } from "node:zlib";

const [from, to] = process.argv.slice(2);
const bytes = readFileSync(from);
writeFileSync(to, gzipSync(bytes, { level: constants.Z_BEST_COMPRESSION, memLevel: constants.Z_MAX_MEMLEVEL }));
process.stdout.write(createHash("sha256").update(bytes).digest("hex"));
