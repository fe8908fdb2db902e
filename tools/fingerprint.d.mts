export function fingerprint(
  paths: readonly string[],
  options?: { readonly alsoUntracked?: boolean; readonly without?: RegExp },
): string;
