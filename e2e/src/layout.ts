import type { Locator, Page } from "playwright-core";

/** How far the page can be pushed sideways; nothing may stick out. */
export function sidewaysScroll_px(page: Page): Promise<number> {
  return page.evaluate(() => {
    const sheet = document.scrollingElement ?? document.documentElement;
    return Math.max(0, sheet.scrollWidth - sheet.clientWidth);
  });
}

/** Words that are cut off by the box they stand in. */
export function clippedWords(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const clips = (overflow: string) => overflow === "hidden" || overflow === "clip";
    const ownWords = (element: Element) =>
      [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim());
    return [...document.body.querySelectorAll<HTMLElement>("*")]
      .filter((element) => ownWords(element) && element.checkVisibility())
      .filter((element) => {
        const style = getComputedStyle(element);
        // Words for screen readers alone stand in a box of one pixel.
        if (element.clientWidth <= 1 || element.clientHeight <= 1) return false;
        const wide = clips(style.overflowX) && element.scrollWidth > element.clientWidth + 1;
        const high = clips(style.overflowY) && element.scrollHeight > element.clientHeight + 1;
        return wide || high;
      })
      .map((element) => element.textContent?.trim() ?? "");
  });
}

/** Whether something lies wholly in the lowest share of the screen, where the thumb is. */
export async function isInLowest(page: Page, target: Locator, share_frac: number): Promise<boolean> {
  const box = await target.boundingBox();
  const size = page.viewportSize();
  if (!box || !size) return false;
  return box.y >= size.height * (1 - share_frac) && box.y + box.height <= size.height + 1;
}

/** Keys and links that are smaller than a thumb needs, each with its size. */
export function smallTargets(page: Page, least_px: number): Promise<readonly string[]> {
  return page.evaluate((least) => {
    const targets = document.querySelectorAll<HTMLElement>(
      "button, select, [role=button], input:not([type=hidden]), summary",
    );
    return [...targets]
      .filter((element) => element.checkVisibility())
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width < least - 0.5 || box.height < least - 0.5)
      .map(
        ({ element, box }) =>
          `${element.textContent?.trim() || element.tagName} ${box.width} x ${box.height}`,
      );
  }, least_px);
}
