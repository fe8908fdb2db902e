import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { extname, join } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants } from "node:zlib";

const compress = promisify(brotliCompress);
const packed = new Set([".js", ".css", ".html", ".svg", ".json", ".webmanifest"]);
/** Below this a packed file saves less than its header costs. */
const LEAST_B = 1024;

/**
 * Lays a packed copy (RFC 7932) beside each text of a built app, for the server to send to whoever takes it: done once here, since the
 * best packing is too slow to be done for each visitor.
 */
export async function packAssets(folder) {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile() && packed.has(extname(file.name)))
    .map((file) => join(file.parentPath, file.name));
  await Promise.all(
    paths.map(async (path) => {
      const bytes = readFileSync(path);
      if (bytes.length < LEAST_B) return;
      const params = {
        [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT,
        [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
      };
      writeFileSync(`${path}.br`, await compress(bytes, { params }));
    }),
  );
}
