import { type Desk, listColumns, readList } from "@sillwood/bench/pages";
import type { PageQuestions } from "../questions.ts";

/** The ids of new plants are made while reading; what KEEP writes is the very reading that was shown. */
export function listSeen(
  desk: Desk,
  { kind, cells, mapping, bench }: PageQuestions["list"]["args"],
  newId: () => string,
) {
  const preview = readList(desk, kind, cells, {
    ...(mapping ? { mapping } : {}),
    ...(bench ? { bench } : {}),
    newId,
  });
  return { ...preview, columns: listColumns[kind].map(({ key, what, needed }) => ({ key, what, needed })) };
}
