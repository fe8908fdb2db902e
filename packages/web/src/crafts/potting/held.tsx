import type { DayPage } from "@sillwood/bench/crafts/potting";
import pages from "../../pages/pages.module.css";
import { usePottingWords } from "./use-potting.ts";

/** What came off the rail today and what must now leave it alone. */
export function Held({ page }: { readonly page: DayPage }) {
  const words = usePottingWords();
  return (
    <section className={pages["part"]}>
      <h2>{words.held}</h2>
      <ul>
        {page.held.map(({ number, said }) => (
          <li key={number}>
            {number}: {said}
          </li>
        ))}
      </ul>
    </section>
  );
}
