/** A whole book as lines of JSON: head, entries, the list of files, and an end that counts them. */
export function exportText(
  name: string,
  book: { readonly entries: readonly string[]; readonly files: ReadonlyMap<string, string> },
): string {
  const files = [...book.files].map(([file, text]) => ({
    file,
    size_B: Buffer.byteLength(text),
    type: "text/csv",
  }));
  const head = JSON.stringify({ sillwood: "book", format: 1, book: name });
  const end = JSON.stringify({
    end: { entries_n: book.entries.length, redacted_n: 0, files_n: files.length },
  });
  return `${[head, ...book.entries, ...files.map((file) => JSON.stringify(file)), end].join("\n")}\n`;
}
