import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What axe finds wrong with the page as it stands, one sentence a place. */
export const accessibilityTroubles = (page: Page): Promise<readonly string[]> =>
  judged(new AxeBuilder({ page }).withTags(rules));

/** Only what depends on colours, for a page whose names and order have been judged. */
export const contrastTroubles = (page: Page): Promise<readonly string[]> =>
  judged(new AxeBuilder({ page }).withRules(["color-contrast"]));

async function judged(builder: AxeBuilder): Promise<readonly string[]> {
  // Our pages hold no frames; without looking for them axe need not open a second page each time.
  const { violations, passes } = await builder.setLegacyMode().analyze();
  // A page on which nothing could be judged has not been judged.
  if (passes.length === 0) throw new Error("axe found nothing to judge on this page");
  return violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${rule.help} at ${node.target.join(" ")}\n  ${node.html}`),
  );
}
