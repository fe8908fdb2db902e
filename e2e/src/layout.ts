import type { Locator, Page } from "playwright-core";

/** How far the page can be pushed sideways; nothing may stick out. */
export function sidewaysScroll_px(page: Page): Promise<number> {
  return page.evaluate(() => {
    const sheet = document.scrollingElement ?? document.documentElement;
    return Math.max(0, sheet.scrollWidth - sheet.clientWidth);
  });
}

/** How far the page as a whole can be pushed down, past its lowest strip; its parts scroll within themselves. */
export function emptyScroll_px(page: Page): Promise<number> {
  return page.evaluate(() => {
    const sheet = document.scrollingElement ?? document.documentElement;
    return Math.max(0, sheet.scrollHeight - sheet.clientHeight);
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

/** Parts of the page that can be pushed sideways, and words that stand beyond its edge, each by what it says. */
export function sidewaysTroubles(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const said = (element: Element) => (element.textContent ?? "").trim().slice(0, 60);
    const seen = [...document.body.querySelectorAll<HTMLElement>("*")].filter(
      (element) =>
        element.checkVisibility({ visibilityProperty: true }) &&
        element.clientWidth > 1 &&
        element.clientHeight > 1,
    );
    const pushed = seen
      .filter((element) => /auto|scroll/.test(getComputedStyle(element).overflowX))
      .filter((element) => element.scrollWidth > element.clientWidth + 1)
      .map((element) => `can be pushed sideways: ${said(element)}`);
    const beyond = seen.flatMap((element) =>
      [...element.childNodes].flatMap((node) => {
        if (node.nodeType !== Node.TEXT_NODE || !node.textContent?.trim()) return [];
        const range = document.createRange();
        range.selectNodeContents(node);
        const sticksOut = [...range.getClientRects()].some(
          ({ left, right, width }) => width > 0 && (right > innerWidth + 1 || left < -1),
        );
        return sticksOut ? [`beyond the edge: ${node.textContent.trim().slice(0, 60)}`] : [];
      }),
    );
    return [...pushed, ...beyond];
  });
}

/** What keeps the main key from the thumb: it must lie wholly in the lowest share of the screen, uncovered. */
export function mainKeyTrouble(page: Page, share_frac = 0.45): Promise<string | undefined> {
  return page.evaluate((share) => {
    const key = document.querySelector<HTMLElement>(
      document.querySelector("dialog[open]") ? "dialog[open] [data-main-key]" : "[data-main-key]",
    );
    if (!key) return "there is no main key";
    const { left, top, bottom, width, height } = key.getBoundingClientRect();
    const where = `${key.textContent?.trim()} stands from ${Math.round(top)} to ${Math.round(bottom)} of ${innerHeight}`;
    if (top < innerHeight * (1 - share) || bottom > innerHeight + 1) return where;
    const corners = [
      [left + width / 2, top + 4],
      [left + width / 2, top + height - 4],
    ] as const;
    const isCovered = corners.some(([x, y]) => !key.contains(document.elementFromPoint(x, y)));
    return isCovered ? `${where}, partly covered` : undefined;
  }, share_frac);
}

/** The share of the view that the keys leave for reading. */
export function readingShare_frac(page: Page): Promise<number> {
  return page.evaluate(() => {
    const main = document.querySelector("[data-main-key]");
    const keys = main?.closest("section");
    return keys ? Math.max(0, keys.getBoundingClientRect().top) / innerHeight : 1;
  });
}

/** Whether something is seen whole before anybody scrolls: within the view and not under the keys. */
export async function isSeenAtOnce(page: Page, target: Locator): Promise<boolean> {
  const box = await target.boundingBox();
  return box !== null && box.y >= 0 && box.y + box.height <= (await readingEnd_px(page));
}

const readingEnd_px = async (page: Page): Promise<number> =>
  (await readingShare_frac(page)) * (page.viewportSize()?.height ?? 0) + 1;

/** Choices of three and more of which one stands alone on the last line, as if it were another question. */
export function loneOptions(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll("fieldset")].flatMap((group) => {
      const options = [...group.querySelectorAll<HTMLElement>("label:has(input[type=radio])")];
      const lastTop = options.at(-1)?.offsetTop;
      const isAlone = options.filter(({ offsetTop }) => offsetTop === lastTop).length === 1;
      return options.length > 2 && isAlone ? [options.at(-1)?.textContent ?? ""] : [];
    }),
  );
}
