import { expect, it } from "vitest";
import { brokenLinks } from "./doc-links.mjs";

const pages: Readonly<Record<string, string>> = {
  "README.md": "# The house\n",
  "docs/air.md": "# Air\n\n## How `warm` is it?\n\n```\n# not a heading\n```\n",
  "docs/picture.png": "",
};
const disk = { exists: (path: string) => path in pages, read: (path: string) => pages[path] ?? "" };
const broken = (text: string) => brokenLinks("docs/air.md", text, disk);

it("follows files, folders above, headings and pictures", () => {
  const text =
    '# Air\n[a](../README.md) [b](../README.md#the-house) [c](#air) ![d](picture.png) <img src="picture.png"> [e](https://example.org/x)';
  expect(broken(text)).toEqual([]);
});

it("finds what leads nowhere", () => {
  expect(broken("[a](nowhere.md)")).toEqual(["nowhere.md"]);
  expect(broken("[a](../README.md#cellar)")).toEqual(["../README.md#cellar"]);
  expect(broken("[a](air.md#not-a-heading)")).toEqual(["air.md#not-a-heading"]);
  expect(broken("[a](../../outside.md)")).toEqual(["../../outside.md"]);
  expect(broken('<img src="gone.png">')).toEqual(["gone.png"]);
});

it("does not take examples in code for links", () => {
  expect(broken("`[a](nowhere.md)`\n```\n[b](nowhere.md)\n```\n")).toEqual([]);
});
