import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** What axe finds wrong with the page as it stands, one sentence a place. */
export async function accessibilityTroubles(page: Page): Promise<readonly string[]> {
  // Our pages hold no frames; without looking for them axe need not open a second page each time.
  const { violations, passes } = await new AxeBuilder({ page }).withTags(rules).setLegacyMode().analyze();
  // A page on which nothing could be judged has not been judged.
  if (passes.length === 0) throw new Error("axe found nothing to judge on this page");
  return violations.flatMap((rule) =>
    rule.nodes.map((node) => `${rule.id}: ${rule.help} at ${node.target.join(" ")}\n  ${node.html}`),
  );
}

declare const axe: typeof import("axe-core");

/**
 * Words that can't be read on one of these papers. A paper changes colours and nothing else, so only they are judged again;
 * the page must have been judged whole before, which also leaves axe on it.
 */
export async function contrastTroubles(page: Page, papers: readonly string[]): Promise<readonly string[]> {
  const judged = await page.evaluate(async (names) => {
    const { dataset } = document.documentElement;
    const before = dataset["paper"];
    const out: { paper: string; passes_n: number; troubles: string[] }[] = [];
    for (const paper of names) {
      dataset["paper"] = paper;
      const { violations, passes } = await axe.run({ runOnly: ["color-contrast"] });
      const troubles = violations.flatMap(({ nodes }) =>
        nodes.map(({ failureSummary, html }) => `on ${paper}: ${failureSummary}\n  ${html}`),
      );
      out.push({ paper, passes_n: passes.length, troubles });
    }
    dataset["paper"] = before;
    return out;
  }, papers);
  const unjudged = judged.find(({ passes_n, troubles }) => passes_n === 0 && troubles.length === 0);
  if (unjudged) throw new Error(`axe found no colours to judge on ${unjudged.paper}`);
  return judged.flatMap(({ troubles }) => troubles);
}
