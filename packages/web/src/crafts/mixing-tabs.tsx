import { useLocation } from "wouter";
import { Choices } from "../pages/fields/choices.tsx";
import { useWords } from "../words/words.ts";

/** What is mixed at the desk of screen 5, and whose page that is. */
const PATHS = { feed: "/craft/feeding", medium: "/craft/potting/mix" } as const;

/** The halves of the mixing desk: one tap from the one to the other. */
export function MixingTabs({ at }: { readonly at: keyof typeof PATHS }) {
  const words = useWords().desk.mixing;
  const [, go] = useLocation();
  return (
    <Choices
      legend={words.what}
      quiet
      options={[
        { value: "feed", said: words.feed },
        { value: "medium", said: words.medium },
      ]}
      value={at}
      onChoose={(tab) => tab !== at && go(PATHS[tab])}
    />
  );
}
