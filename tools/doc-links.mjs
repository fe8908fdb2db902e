// node tools/doc-links.mjs: every link between our documents leads to a file and a heading that exist.
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, realpathSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { root } from "./run-program.mjs";

/** The anchor that a heading gets where Markdown is shown. */
const anchorOf = (heading) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, "")
    .trim()
    .replace(/\s/g, "-");

const withoutCode = (text) => text.replace(/^(```|~~~)[\s\S]*?^\1/gm, "").replace(/`[^`\n]*`/g, "");
const headingsOf = (text) =>
  [...text.replace(/^(```|~~~)[\s\S]*?^\1/gm, "").matchAll(/^#{1,6}\s+(.*)$/gm)].map(([, words]) =>
    anchorOf(words),
  );

/** What the text of a document links to, as written. */
export function linksOf(text) {
  const prose = withoutCode(text);
  const inline = [...prose.matchAll(/\]\(\s*<?([^)\s>]+)>?(?:\s+"[^"]*")?\s*\)/g)].map(
    ([, target]) => target,
  );
  const pictures = [...prose.matchAll(/<(?:img|a)\s[^>]*?(?:src|href)="([^"]+)"/g)].map(
    ([, target]) => target,
  );
  return [...inline, ...pictures];
}

/** The links of one document that lead nowhere. */
export function brokenLinks(path, text, { exists, read }) {
  return linksOf(text).filter((target) => {
    if (/^[a-z][a-z+.-]*:/i.test(target)) return false;
    const [file = "", anchor] = decodeURI(target).split("#");
    const to = file === "" ? path : normalize(join(dirname(path), file));
    if (to.startsWith("..") || !exists(to)) return true;
    if (!anchor || !to.endsWith(".md")) return false;
    return !headingsOf(file === "" ? text : read(to)).includes(anchor);
  });
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const listed = spawnSync(
    "git",
    ["ls-files", "-z", "--cached", "--others", "--exclude-standard", "--", "*.md"],
    { cwd: root, encoding: "utf8" },
  );
  const disk = {
    exists: (path) => existsSync(join(root, path)),
    read: (path) => readFileSync(join(root, path), "utf8"),
  };
  const documents = listed.stdout.split("\0").filter((path) => path !== "" && disk.exists(path));
  let broken_n = 0;
  for (const path of documents) {
    for (const target of brokenLinks(path, disk.read(path), disk)) {
      console.error(`${path}: the link to ${target} leads nowhere`);
      broken_n += 1;
    }
  }
  console.log(`${documents.length} documents, ${broken_n} broken links`);
  if (broken_n > 0) process.exit(1);
}
