import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What axe finds wrong with the page as it stands, one sentence a place. */
export async function accessibilityTroubles(page: Page): Promise<readonly string[]> {
  const { violations, passes } = await new AxeBuilder({ page }).withTags(rules).analyze();
  // A page on which nothing could be judged has not been judged.
  if (passes.length === 0) throw new Error("axe found nothing to judge on this page");
  return violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${rule.help} at ${node.target.join(" ")}\n  ${node.html}`),
  );
}
