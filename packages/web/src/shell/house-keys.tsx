import { useLocation } from "wouter";
import { Ledger, Row } from "../parts/ledger.tsx";
import { Slip } from "../parts/slip.tsx";
import { useSlip } from "../parts/use-slip.ts";
import { useWords } from "../words/words.ts";
import { useKeys } from "./keyboard.ts";
import { lastLine } from "./last-line.ts";
import { typeDigit } from "./number/typed-number.ts";
import { hasPage } from "./routes.ts";

/** Keys that work on every page: digits, U, W, / and ?. */
export function HouseKeys() {
  const { shell } = useWords();
  const [, go] = useLocation();
  const list = useSlip();
  useKeys({
    digit: (event) => {
      typeDigit(event.key);
      go("/number");
    },
    u: () => lastLine()?.undo?.(),
    w: () => document.querySelector<HTMLElement>("[data-working]")?.click(),
    "/": () => {
      const field = document.querySelector<HTMLElement>("[data-find]");
      if (field) field.focus();
      else go(hasPage("/plants") ? "/plants?find" : "/number");
    },
    "?": list.open,
  });
  return (
    <Slip slip={list} title={shell.keysTitle}>
      <Ledger>
        {shell.keyList.map(([key, does]) => (
          <Row key={key}>
            <kbd style={{ minWidth: "7em" }}>{key}</kbd>
            <span>{does}</span>
          </Row>
        ))}
      </Ledger>
    </Slip>
  );
}
