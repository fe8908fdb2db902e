import { widthOf } from "./columns.ts";

/** A sentence in lines of at most `width_n` letters; the second and later lines hang by `hang_n`. */
export function wrap(text: string, width_n: number, indent_n = 0, hang_n = indent_n): string[] {
  const lines: string[] = [];
  let line = " ".repeat(indent_n);
  let empty = true;
  for (const word of text.split(/ +|\n/).filter(Boolean)) {
    if (!empty && widthOf(line) + 1 + widthOf(word) > width_n) {
      lines.push(line);
      line = " ".repeat(hang_n);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  if (!empty) lines.push(line);
  return lines;
}
