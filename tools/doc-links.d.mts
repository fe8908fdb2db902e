export function linksOf(text: string): readonly string[];
export function brokenLinks(
  path: string,
  text: string,
  disk: { readonly exists: (path: string) => boolean; readonly read: (path: string) => string },
): readonly string[];
