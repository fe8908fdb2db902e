import { useLocation } from "wouter";
import pages from "../../pages/pages.module.css";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useTrim, useTrimWords } from "./use-trim.ts";

const ORDER = { traced: 0, sketched: 1, nothing: 2 } as const;

/** Trimming: which plants are traced, and the way to each. */
export function TrimList() {
  const words = useTrimWords();
  const [, go] = useLocation();
  const { page, refused, error, isMissing } = useTrim({});
  if (!page)
    return (
      <Frame where={words.title}>
        {isMissing && <p className="serif">{words.noPage}</p>}
        {refused !== undefined && <p role="alert">{words.refused(refused)}</p>}
        {!isMissing && refused === undefined && <ReadingNote error={error} />}
      </Frame>
    );
  const rows = page.plants.toSorted((a, b) => ORDER[a.level] - ORDER[b.level]);
  return (
    <Frame where={words.title}>
      <p className={pages["lead"]}>
        <strong>{page.said}</strong>
      </p>
      <Ledger label={words.listTitle}>
        {rows.map(({ plant, number, kind, said }) => (
          <Row key={plant} onOpen={() => go(`/craft/trim/${plant}`)}>
            <span className={pages["number"]}>{number}</span> {kind}{" "}
            <span className={pages["beside"]}>{said}</span>
          </Row>
        ))}
      </Ledger>
    </Frame>
  );
}
